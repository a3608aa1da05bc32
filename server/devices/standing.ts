import type { DeviceStanding } from '../api/contract.ts';

/** Raw lines that are remembered, for the screen that shows what is understood of them. */
const MOST_RAW = 20;

/** How a device stands: what it told since the server was started. */
export interface Standing {
  readonly told: () => DeviceStanding;
  readonly state: (state: DeviceStanding['state'], detail?: string, certificate?: string) => void;
  readonly heard: (raw: string, nowIso: string) => void;
  readonly count: (what: 'taken' | 'already' | 'refused' | 'unreadable', by?: number) => void;
  readonly fault: (words: DeviceStanding['lastFault']) => void;
}

export function standingOf(): Standing {
  let told: DeviceStanding = {
    state: 'waiting',
    detail: '',
    taken: 0,
    already: 0,
    refused: 0,
    unreadable: 0,
    raw: [],
    lastFault: null,
    lastSeenAt: null,
  };
  return {
    told: () => told,
    state: (state, detail = '', certificate) => {
      const { certificate: _, ...rest } = told;
      told = { ...rest, state, detail, ...(certificate === undefined ? {} : { certificate }) };
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
