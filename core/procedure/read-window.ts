import { invalid, ok, type Result } from '../failure/failure.ts';
import { convert } from '../quantity/convert.ts';
import type { Language } from '../quantity/language.ts';
import { readNumber } from '../quantity/read-number.ts';
import { readUnit } from '../quantity/read-unit.ts';
import { checkTorque } from '../quantity/torque.ts';
import { isTorqueUnit, quantityOf, type Unit, unitsOf } from '../quantity/unit.ts';
import type { AngleWindow, TorqueWindow, TypedWindow } from './procedure.ts';

type Measured = 'torque' | 'angle';

/**
 * Reads a window as a manual prints it: target and ± percent, target and ± value, or lower to upper (the target is then
 * the middle). What was typed is kept beside the converted figures.
 *
 * @param measured what the window is of; its unit must fit
 * @param language whose decimal sign counts
 * @returns N·m or degrees; refused with the field that is wrong: `unit`, `target`, `percent`, `plusMinus`, `lower`, `upper`
 */
export function readWindow(typed: TypedWindow, measured: 'torque', language: Language): Result<TorqueWindow>;
export function readWindow(typed: TypedWindow, measured: 'angle', language: Language): Result<AngleWindow>;
export function readWindow(
  typed: TypedWindow,
  measured: Measured,
  language: Language,
): Result<TorqueWindow | AngleWindow> {
  const unit = unitOf(typed.unit, measured);
  if (!unit.ok) return unit;
  const limits = limitsOf(typed, unit.value, language);
  if (!limits.ok) return limits;
  const { lower, target, upper } = limits.value;
  return ok(
    measured === 'torque'
      ? { lowerNm: lower, targetNm: target, upperNm: upper, typed }
      : { lowerDeg: lower, targetDeg: target, upperDeg: upper, typed },
  );
}

interface Limits {
  readonly lower: number;
  readonly target: number;
  readonly upper: number;
}

function unitOf(text: string, measured: Measured): Result<Unit> {
  const unit = readUnit(text);
  if (!unit.ok || quantityOf(unit.value) === measured) return unit;
  return invalid(
    'unit',
    `${unit.value} is a unit of ${quantityOf(unit.value)}`,
    `a unit of ${measured}: ${unitsOf(measured).join(', ')}`,
  );
}

function limitsOf(typed: TypedWindow, unit: Unit, language: Language): Result<Limits> {
  switch (typed.form) {
    case 'percent':
      return aroundTarget(typed.target, readShare(typed.percent, language), unit, language);
    case 'plus-minus':
      return aroundTarget(typed.target, readDeviation(typed.plusMinus, language), unit, language);
    case 'limits':
      return betweenLimits(typed.lower, typed.upper, unit, language);
  }
}

/** How far the limits lie from a target, in the unit of the target. */
type Deviation = Result<(target: number) => number>;

function readShare(text: string, language: Language): Deviation {
  const percent = readNumber(text, language, 'percent');
  if (!percent.ok) return percent;
  if (percent.value < 0 || percent.value > 100)
    return invalid('percent', `${text} percent of the target`, '0 to 100 percent');
  return ok((target) => Math.min(target, (target * percent.value) / 100));
}

function readDeviation(text: string, language: Language): Deviation {
  const plusMinus = readNumber(text, language, 'plusMinus');
  if (!plusMinus.ok) return plusMinus;
  if (plusMinus.value < 0) return invalid('plusMinus', `${text} is negative`, '0 or more');
  return ok(() => plusMinus.value);
}

function aroundTarget(text: string, deviation: Deviation, unit: Unit, language: Language): Result<Limits> {
  const target = readFigure(text, unit, language, 'target');
  if (!target.ok) return target;
  if (!deviation.ok) return deviation;
  const half = deviation.value(target.value);
  if (target.value === 0) return invalid('target', 'a target of 0', 'more than 0');
  if (half > target.value)
    return invalid('plusMinus', `${half} takes the lower limit below 0`, `at most the target, ${text}`);
  return ok(converted({ lower: target.value - half, target: target.value, upper: target.value + half }, unit));
}

function betweenLimits(lowerText: string, upperText: string, unit: Unit, language: Language): Result<Limits> {
  const lower = readFigure(lowerText, unit, language, 'lower');
  if (!lower.ok) return lower;
  const upper = readFigure(upperText, unit, language, 'upper');
  if (!upper.ok) return upper;
  if (lower.value > upper.value)
    return invalid('lower', `${lowerText} lies above the upper limit ${upperText}`, `at most ${upperText}`);
  if (upper.value === 0) return invalid('upper', 'an upper limit of 0', 'more than 0');
  return ok(converted({ lower: lower.value, target: (lower.value + upper.value) / 2, upper: upper.value }, unit));
}

/** Ten turns; more is a slip of unit. */
const MOST_DEG = 3600;

/** One figure of the window, 0 or more, in the unit it was typed in. */
function readFigure(text: string, unit: Unit, language: Language, field: string): Result<number> {
  const figure = readNumber(text, language, field);
  if (!figure.ok) return figure;
  if (isTorqueUnit(unit)) {
    const checked = checkTorque(figure.value, unit, undefined, field);
    return checked.ok ? figure : checked;
  }
  if (figure.value < 0) return invalid(field, `${text} ${unit} is negative`, '0 or more');
  if (inBase(figure.value, unit) <= MOST_DEG) return figure;
  return invalid(field, `${text} ${unit} is more than ten turns; is the unit right?`, `up to ${MOST_DEG}°`);
}

const converted = ({ lower, target, upper }: Limits, unit: Unit): Limits => ({
  lower: inBase(lower, unit),
  target: inBase(target, unit),
  upper: inBase(upper, unit),
});

/** In N·m or degrees. */
function inBase(figure: number, unit: Unit): number {
  const base = convert(figure, unit, isTorqueUnit(unit) ? 'N·m' : 'deg');
  if (!base.ok) throw new Error(`${unit} was found to be a unit of torque or angle`);
  return base.value;
}
