import { uuidV7 } from '@clampwright/core/record';
import type { Store } from '@clampwright/store';
import type { Logger } from 'pino';
import type { LiveReading } from './api/contract.ts';
import type { DeviceRuns } from './devices/device-runs.ts';
import type { Attempts } from './guard/attempts.ts';
import type { Listeners } from './live/listeners.ts';
import type { WrenchPorts } from './wrenches/ports.ts';

/** What every route may rely on; nothing here is global. */
export interface Deps {
  readonly store: Store;
  readonly now: () => Date;
  /** So many random bytes. */
  readonly random: (count: number) => Uint8Array;
  readonly attempts: Attempts;
  readonly listeners: Listeners;
  /** Calibrations that listen to a wrench or to a device, by its identity. */
  readonly readings: Listeners<LiveReading>;
  readonly ports: WrenchPorts;
  readonly devices: DeviceRuns;
  /** What belongs to this installation and is no data of the trade lies here, such as certificates. */
  readonly dataFolder: string;
  readonly logger: Logger;
  /** Aborted when the server closes. */
  readonly closing: AbortSignal;
}

/** A new identity. */
export const newId = ({ now, random }: Pick<Deps, 'now' | 'random'>): string => uuidV7(now().getTime(), random(10));
