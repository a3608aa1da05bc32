import { ok, type Result } from '@clampwright/core/failure';
import { type Language, readNumber, readTorque, type TorqueUnit } from '@clampwright/core/quantity';
import type { CellState, IncomingPull } from '@clampwright/core/record';

/** What stands in the fields. */
export interface TypedFigures {
  readonly torque: string;
  /** Undefined where the stage does not want an angle. */
  readonly angle: string | undefined;
}

/** What the screen knows beside the figures. */
export interface PullContext {
  readonly id: string;
  readonly cell: CellState;
  readonly wrenchId: string;
  readonly unit: TorqueUnit;
  readonly language: Language;
  /** This device's time. */
  readonly nowIso: string;
}

/**
 * A pull from what was typed. The figures are kept as typed beside the converted ones; nothing is guessed.
 *
 * @returns refused with `torque` or `angle` as the field
 */
export function typedPull(typed: TypedFigures, context: PullContext): Result<IncomingPull> {
  const { cell, unit, language } = context;
  const torqueNm = readTorque(typed.torque, unit, language);
  if (!torqueNm.ok) return torqueNm;
  const angleDeg = typed.angle === undefined ? undefined : readNumber(typed.angle, language, 'angle');
  if (angleDeg && !angleDeg.ok) return angleDeg;
  return ok({
    kind: 'record-pull',
    id: context.id,
    ...cell.ref,
    attempt: cell.attemptCount + 1,
    wrenchId: context.wrenchId,
    source: { kind: 'typed' },
    takenAt: context.nowIso,
    shown: {
      torque: { text: typed.torque.trim(), unit },
      ...(typed.angle === undefined ? {} : { angle: { text: typed.angle.trim(), unit: 'deg' } }),
    },
    shownTorqueNm: torqueNm.value,
    ...(angleDeg ? { shownAngleDeg: angleDeg.value } : {}),
  });
}
