import type { ToldPull } from '@clampwright/core/line';
import type { CellState, IncomingPull } from '@clampwright/core/record';

export interface PluggedContext {
  /** Counts when the wrench gave the pull none. */
  readonly id: string;
  readonly cell: CellState;
  readonly wrenchId: string;
  readonly way: 'serial' | 'keyboard';
  /** This device's time. */
  readonly nowIso: string;
}

/** A pull that a wrench at this screen told, for the position that is shown. */
export function pluggedPull(told: ToldPull, { id, cell, wrenchId, way, nowIso }: PluggedContext): IncomingPull {
  const { torque, angle, fastestDegPerS, trace, from } = told;
  const shown = ({ text, unit }: ToldPull['torque']) => ({ text, unit });
  const [detail] = from;
  return {
    kind: 'record-pull',
    id: told.id ?? id,
    ...cell.ref,
    attempt: cell.attemptCount + 1,
    wrenchId,
    source: { kind: way, ...(detail === undefined ? {} : { detail }) },
    takenAt: told.takenAt ?? nowIso,
    shown: { torque: shown(torque), ...(angle ? { angle: shown(angle) } : {}) },
    shownTorqueNm: torque.value,
    ...(angle ? { shownAngleDeg: angle.value } : {}),
    ...(fastestDegPerS === undefined ? {} : { fastestDegPerS }),
    ...(trace ? { trace } : {}),
  };
}
