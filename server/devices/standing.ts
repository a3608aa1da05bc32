import type { DeviceCounts } from '@clampwright/core/device';
import type { DeviceStanding } from '../api/contract.ts';

/** Raw lines that are remembered, for the screen that shows what is understood of them. */
const MOST_RAW = 20;

/** How a device stands: how its connection is, and what it told since it was set up. */
export interface Standing {
  readonly told: () => DeviceStanding;
  readonly state: (state: DeviceStanding['state'], detail?: string, certificate?: string) => void;
  readonly heard: (raw: string, nowIso: string) => void;
  readonly count: (what: 'taken' | 'already' | 'refused' | 'unreadable', by?: number) => void;
  readonly fault: (words: DeviceStanding['lastFault']) => void;
}

/** Of a device that has told nothing yet. */
export const noCounts = (since: string): DeviceCounts => ({
  since,
  taken: 0,
  already: 0,
  refused: 0,
  unreadable: 0,
  reconnections: 0,
  raw: [],
  lastFault: null,
  lastSeenAt: null,
});

/** What of a standing outlives the server: of the raw lines the last one. */
export function countsOf(standing: DeviceStanding): DeviceCounts {
  const { state: _, detail: __, certificate: ___, raw, ...counts } = standing;
  return { ...counts, raw: raw.slice(-1) };
}

/** @param counts what it has told before */
export function standingOf(counts: DeviceCounts): Standing {
  let told: DeviceStanding = { ...counts, raw: [...counts.raw], state: 'waiting', detail: '' };
  let wasConnected = false;
  return {
    told: () => told,
    state: (state, detail = '', certificate) => {
      if (told.state === state && told.detail === detail && told.certificate === certificate) return;
      const { certificate: _, ...rest } = told;
      const reconnections =
        told.reconnections + (state === 'connected' && told.state === 'lost' && wasConnected ? 1 : 0);
      wasConnected ||= state === 'connected';
      told = { ...rest, reconnections, state, detail, ...(certificate === undefined ? {} : { certificate }) };
    },
    heard: (raw, nowIso) => {
      told = { ...told, lastSeenAt: nowIso, raw: raw === '' ? told.raw : [...told.raw.slice(1 - MOST_RAW), raw] };
    },
    count: (what, by = 1) => {
      told = { ...told, [what]: told[what] + by };
    },
    fault: (lastFault) => {
      told = { ...told, lastFault };
    },
  };
}
