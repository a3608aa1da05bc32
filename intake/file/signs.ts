import { invalid, ok, type Result } from '@clampwright/core/failure';
import { checkTorque, HAND_TORQUE, isTorqueUnit } from '@clampwright/core/quantity';
import type { Figure } from './figures.ts';
import type { Mapping } from './mapping.ts';

const LOOSENING: Readonly<Record<Mapping['signs'], string>> = {
  'positive-tightens': 'The torque is negative: this is a loosening, not a pull that tightens.',
  'negative-tightens': 'The torque is positive, and in this mapping a negative one tightens: this is a loosening.',
};

/** 1 or -1: what a torque of the file is multiplied with so that tightening is positive. */
export const signOf = ({ signs }: Mapping): 1 | -1 => (signs === 'negative-tightens' ? -1 : 1);

export const loosening = ({ signs }: Mapping) => invalid('torque', LOOSENING[signs], 'a torque that tightens');

/** A torque that tightens and makes sense, N·m; a loosening and an absurd figure are refused, the likely slip named. */
export function tighteningNm(mapping: Mapping, figure: Figure): Result<number> {
  const sign = signOf(mapping);
  if (sign * figure.value < 0) return loosening(mapping);
  const sizeNm = Math.abs(figure.value);
  // `checkTorque` words its refusal beforehand, which takes longer than all the rest of a row.
  if (sizeNm >= HAND_TORQUE.lowestNm && sizeNm <= HAND_TORQUE.highestNm) return ok(sizeNm);
  if (!isTorqueUnit(figure.unit)) throw new Error(`${figure.unit} was read as a unit of torque`);
  return checkTorque(Math.abs(figure.number), figure.unit);
}

/** An angle that tightens, degrees. Where negative torque tightens, angles are counted either way: their size is taken. */
export function tighteningDeg(mapping: Mapping, figure: Figure): Result<number> {
  if (figure.value >= 0 || mapping.signs === 'negative-tightens') return ok(Math.abs(figure.value));
  return invalid('angle', 'The angle is negative while the torque tightens.', 'an angle from 0');
}
