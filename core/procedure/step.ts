import type { AngleWindow, StageKind, TorqueWindow } from './procedure.ts';

/** One round of one stage of one joint, flattened in the order of the work. */
export interface Step {
  readonly stage: number;
  readonly round: number;
  readonly kind: StageKind;
  /** Positions in the order of the round. */
  readonly order: readonly number[];
  /** The stage's window scaled by the round's share. */
  readonly torque: Omit<TorqueWindow, 'typed'> | undefined;
  readonly angle: Omit<AngleWindow, 'typed'> | undefined;
  readonly angleFromNm: number | undefined;
  readonly speedLimitDegPerS: number | undefined;
}
