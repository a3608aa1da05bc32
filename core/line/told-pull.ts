import type { Trace } from '../record/command.ts';

/** A figure as a device told it, with what it comes to. */
export interface ToldFigure {
  readonly text: string;
  readonly unit: string;
  /** Converted: N·m, or degrees. */
  readonly value: number;
}

/** A pull as a device tells it: what it showed, not yet placed in a job nor judged. */
export interface ToldPull {
  /** Follows from what the device said, where it says enough to tell one pull from the next; told twice, it is the same. */
  readonly id?: string | undefined;
  /** What the device names as the origin of the pull; the serial number of the wrench may be among it. */
  readonly from: readonly string[];
  readonly position?: number | undefined;
  /** The device's own clock, UTC with three decimals; without one the time of arrival counts. */
  readonly takenAt?: string | undefined;
  readonly torque: ToldFigure;
  readonly angle?: ToldFigure | undefined;
  readonly fastestDegPerS?: number | undefined;
  /** Only when every sample came. */
  readonly trace?: Trace | undefined;
  readonly samplesLost: number;
}
