import { convertTorque } from '../quantity/convert.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showAngle, showTorque } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import type { Reason } from '../verdict/verdict.ts';
import { sayChance } from './chance.ts';
import { say } from './say.ts';

/**
 * Says why a verdict is what it is: `Torque 92.4 N·m is above the upper limit 88.0 N·m.`
 *
 * @param torqueUnit unit of the work
 */
export function sayReason(reason: Reason, language: Language, torqueUnit: TorqueUnit): string {
  const what = say(language, `the.${reason.quantity ?? 'torque'}`);
  const [value, limit] = figures(reason, language, torqueUnit);
  const sentence = tidy(say(language, `reason.${reason.code}`, { what, value, limit }));
  return [sentence, ...sayBeyond(reason, language)].join(' ');
}

/** How probably it lies beyond the limit that it is too near to, where that was told. */
function sayBeyond({ value, limit, probability }: Reason, language: Language): readonly string[] {
  if (probability === undefined || value === undefined || limit === undefined) return [];
  const chance = sayChance(probability, language);
  return [say(language, value <= limit ? 'reason.chance-above' : 'reason.chance-below', { chance })];
}

/** Where a figure is not told, the gap closes. */
const tidy = (sentence: string): string => sentence.replaceAll(/ +(?=[ .,;)]|$)/g, '');

function figures(reason: Reason, language: Language, unit: TorqueUnit): readonly [string, string] {
  const { value, limit } = reason;
  const show = (figure: number | undefined) =>
    figure === undefined ? '' : shown(figure, reason.quantity, language, unit);
  const both = [show(value), show(limit)] as const;
  if (value === undefined || limit === undefined || value === limit || both[0] !== both[1]) return both;
  return toldApart(value, limit, reason.quantity, language, unit);
}

function shown(figure: number, quantity: Reason['quantity'], language: Language, unit: TorqueUnit): string {
  switch (quantity) {
    case 'torque':
    case undefined:
      return showTorque(figure, unit, language);
    case 'angle':
      return showAngle(figure, language);
    case 'speed':
      return `${showAngle(figure, language)}/s`;
    case 'slope':
      return `${showTorque(figure, unit, language)}/°`;
  }
}

/** Verdicts are given on unrounded figures: where rounding hides the difference, it takes more decimals to tell it. */
function toldApart(
  value: number,
  limit: number,
  quantity: Reason['quantity'],
  language: Language,
  unit: TorqueUnit,
): readonly [string, string] {
  const isTorque = quantity === undefined || quantity === 'torque' || quantity === 'slope';
  const inUnit = (figure: number) => (isTorque ? convertTorque(figure, 'N·m', unit) : figure);
  const tail = isTorque ? `\u00a0${unit}${quantity === 'slope' ? '/°' : ''}` : quantity === 'speed' ? '°/s' : '°';
  const withDecimals = (figure: number, decimals: number) =>
    `${showNumber(inUnit(figure), language, { decimals })}${tail}`;
  for (let decimals = 2; decimals < 15; decimals++) {
    const both = [withDecimals(value, decimals), withDecimals(limit, decimals)] as const;
    if (both[0] !== both[1]) return both;
  }
  return [withDecimals(value, 15), withDecimals(limit, 15)];
}
