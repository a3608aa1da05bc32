import { convertTorque } from './convert.ts';
import type { Language } from './language.ts';
import { showNumber } from './show-number.ts';
import type { TorqueUnit } from './unit.ts';

const NO_BREAK_SPACE = '\u00a0';

/** Decimals by size: three to four digits that mean something on a hand wrench. */
function decimalsOf(size: number): number {
  if (size >= 1000) return 0;
  if (size >= 10) return 1;
  if (size >= 1) return 2;
  return size >= 0.1 ? 3 : 4;
}

/** The figure of a torque alone, for tables whose head has the unit. */
export function showTorqueFigure(torqueNm: number, unit: TorqueUnit, language: Language): string {
  const torque = convertTorque(torqueNm, 'N·m', unit);
  return showNumber(torque, language, { decimals: decimalsOf(Math.abs(torque)) });
}

/** A torque with its unit, as screen, report and command line show it: `84.7 N·m`. */
export const showTorque = (torqueNm: number, unit: TorqueUnit, language: Language): string =>
  `${showTorqueFigure(torqueNm, unit, language)}${NO_BREAK_SPACE}${unit}`;

/** An angle as screen, report and command line show it: `61.5°`. */
export const showAngle = (angleDeg: number, language: Language): string =>
  `${showNumber(angleDeg, language, { decimals: 1 })}°`;

/** A share of a whole in percent, three digits: `38.2 %`. */
export const showShare = (share: number, language: Language): string =>
  `${showNumber(Number((share * 100).toPrecision(3)), language)}${NO_BREAK_SPACE}%`;
