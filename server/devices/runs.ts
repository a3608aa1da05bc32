import type { DeviceStanding } from '../api/contract.ts';

/** A device at work: how it stands, and the way to end it. */
export interface RunningDevice {
  readonly standing: () => DeviceStanding;
  readonly close: () => Promise<void>;
}
