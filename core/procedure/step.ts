import type { AngleWindow, Closing, StageKind, TorqueWindow } from './procedure.ts';

/** A window of torque at the fastener as it holds for a pull, N·m. */
export type TorqueLimits = Omit<TorqueWindow, 'typed'>;

/** One round of one stage of one joint, flattened in the order of the work. */
export interface Step {
  readonly stage: number;
  readonly round: number;
  readonly kind: StageKind;
  /** Positions in the order of the round. */
  readonly order: readonly number[];
  /** The stage's window scaled by the round's share. */
  readonly torque: TorqueLimits | undefined;
  /** Where a plan gives each position a window of its own, by position (index 0 is position 1); see `stepAt`. */
  readonly torques?: readonly TorqueLimits[] | undefined;
  readonly angle: Omit<AngleWindow, 'typed'> | undefined;
  readonly angleFromNm: number | undefined;
  readonly speedLimitDegPerS: number | undefined;
  /** Of a round that closes the work. */
  readonly closing?: Closing | undefined;
}

/** A step as it holds for one position, from 1. */
export function stepAt(step: Step, position: number): Step {
  const torque = step.torques?.[position - 1];
  return torque ? { ...step, torque } : step;
}
