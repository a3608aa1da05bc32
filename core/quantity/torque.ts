import { invalid, ok, type Result } from '../failure/failure.ts';
import { convertTorque } from './convert.ts';
import type { Language } from './language.ts';
import { readNumber } from './read-number.ts';
import { showNumber } from './show-number.ts';
import { isTorqueUnit, type TorqueUnit, type Unit, unitsOf } from './unit.ts';

export interface TorqueRange {
  readonly lowestNm: number;
  readonly highestNm: number;
}

/**
 * What hands and a torque multiplier can mean: from a small instrument screw to the largest multipliers of the trade
 * (common practice). A figure outside is a slip of unit or decimal sign.
 */
export const HAND_TORQUE: TorqueRange = { lowestNm: 0.001, highestNm: 20_000 };

/** Units taken for one another; too large a figure is tried from the first on, too small a one from the last. */
const OFTEN_MISTAKEN: Readonly<Record<TorqueUnit, readonly TorqueUnit[]>> = {
  N·m: ['lbf·in', 'cN·m', 'kgf·cm', 'dN·m', 'ozf·in', 'lbf·ft', 'kgf·m', 'kN·m'],
  cN·m: ['N·m', 'ozf·in', 'dN·m'],
  dN·m: ['N·m', 'cN·m'],
  kN·m: ['N·m', 'lbf·ft', 'cN·m'],
  lbf·ft: ['lbf·in', 'N·m', 'ozf·in', 'kgf·m'],
  lbf·in: ['lbf·ft', 'N·m', 'ozf·in'],
  ozf·in: ['lbf·in', 'cN·m', 'lbf·ft'],
  kgf·m: ['kgf·cm', 'N·m', 'cN·m'],
  kgf·cm: ['kgf·m', 'N·m', 'cN·m'],
};

/**
 * The unit that was likely meant when a figure makes no sense in its own.
 *
 * @param torque    figure as typed, above 0
 * @param unit      unit that it was taken in
 * @param plausible what makes sense for the fastener at hand
 */
export function likelyUnit(torque: number, unit: TorqueUnit, plausible: TorqueRange): TorqueUnit | undefined {
  const isPlausible = (other: TorqueUnit): boolean => {
    const torqueNm = convertTorque(torque, other, 'N·m');
    return torqueNm >= plausible.lowestNm && torqueNm <= plausible.highestNm;
  };
  const others = OFTEN_MISTAKEN[unit];
  return convertTorque(torque, unit, 'N·m') > plausible.highestNm
    ? others.find(isPlausible)
    : others.findLast(isPlausible);
}

/**
 * Refuses a torque that is negative, or that makes no sense and then names the likely slip.
 *
 * @param torque    figure as typed
 * @param unit      its unit
 * @param plausible what makes sense; what hands can do when nothing more is known
 * @param field     named in the refusal
 * @returns the torque, N·m
 */
export function checkTorque(
  torque: number,
  unit: TorqueUnit,
  plausible: TorqueRange = HAND_TORQUE,
  field = 'torque',
): Result<number> {
  const torqueNm = convertTorque(torque, unit, 'N·m');
  const makesSense = torqueNm >= plausible.lowestNm && torqueNm <= plausible.highestNm;
  return makesSense || torque === 0
    ? ok(torqueNm)
    : invalid(field, whyNot(torque, unit, plausible), expectedRange(unit, plausible));
}

function whyNot(torque: number, unit: TorqueUnit, plausible: TorqueRange): string {
  const shown = `${showNumber(torque, 'en')} ${unit}`;
  if (torque < 0) return `${shown} is negative. A torque is told by its size; the direction stands elsewhere.`;
  const size = convertTorque(torque, unit, 'N·m') > plausible.highestNm ? 'more' : 'less';
  return `${shown} is ${size} than makes sense here. ${slip(torque, unit, plausible)}`;
}

/**
 * Reads a typed torque.
 *
 * @param text     figure without its unit
 * @param unit     unit that stands beside the figure
 * @param language whose decimal sign counts
 * @returns the torque, N·m; refused when it is no number, negative or absurd, with the likely slip named
 */
export function readTorque(text: string, unit: Unit, language: Language, field = 'torque'): Result<number> {
  if (!isTorqueUnit(unit)) {
    return invalid(field, `${unit} is no unit of torque.`, `a unit of torque: ${unitsOf('torque').join(', ')}`);
  }
  const torque = readNumber(text, language, field);
  return torque.ok ? checkTorque(torque.value, unit, HAND_TORQUE, field) : torque;
}

function slip(torque: number, unit: TorqueUnit, plausible: TorqueRange): string {
  const meant = likelyUnit(torque, unit, plausible);
  if (meant === undefined) return 'Look at the decimal sign and the unit.';
  const figure = showNumber(torque, 'en');
  const inUnit = showNumber(convertTorque(torque, meant, unit), 'en', { significant: 4 });
  return `Was the figure in ${meant}? ${figure} ${meant} is ${inUnit} ${unit}.`;
}

function expectedRange(unit: TorqueUnit, { lowestNm, highestNm }: TorqueRange): string {
  const shown = (torqueNm: number) => showNumber(convertTorque(torqueNm, 'N·m', unit), 'en', { significant: 3 });
  return `${lowestNm === 0 ? '0' : `0, or from ${shown(lowestNm)}`} to ${shown(highestNm)} ${unit}`;
}
