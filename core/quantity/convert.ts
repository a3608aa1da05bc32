import { invalid, ok, type Result } from '../failure/failure.ts';
import { quantityOf, type TorqueUnit, UNITS, type Unit, unitsOf } from './unit.ts';

interface Ratio {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

function ratioOfDecimal(text: string): Ratio {
  const [whole = '', fraction = ''] = text.split('.');
  return { numerator: BigInt(whole + fraction), denominator: 10n ** BigInt(fraction.length) };
}

const times = (a: Ratio, b: Ratio): Ratio => ({
  numerator: a.numerator * b.numerator,
  denominator: a.denominator * b.denominator,
});

const inverse = ({ numerator, denominator }: Ratio): Ratio => ({ numerator: denominator, denominator: numerator });

/** `4.4482216152605*0.0254/16` as a fraction of whole numbers, nothing lost. */
function ratioOf(exact: string): Ratio {
  const [first = '1', ...steps] = exact.split(/(?=[*/])/);
  return steps.reduce((ratio, step) => {
    const factor = ratioOfDecimal(step.slice(1));
    return times(ratio, step.startsWith('*') ? factor : inverse(factor));
  }, ratioOfDecimal(first));
}

const greatestCommonDivisor = (a: bigint, b: bigint): bigint => (b === 0n ? a : greatestCommonDivisor(b, a % b));

interface Factor {
  readonly up: number;
  readonly down: number;
}

/**
 * In lowest terms, so that 1 lbf·ft is 12 lbf·in and not 12.000000000000002; as one nearest double when the terms
 * are too long to be exact themselves.
 */
function factorBetween(from: Ratio, to: Ratio): Factor {
  const { numerator, denominator } = times(from, inverse(to));
  const common = greatestCommonDivisor(numerator, denominator);
  const [up, down] = [numerator / common, denominator / common];
  if (isExact(up) && isExact(down)) return { up: Number(up), down: Number(down) };
  return { up: Number((up << 256n) / down) / 2 ** 256, down: 1 };
}

const isExact = (whole: bigint): boolean => BigInt(Number(whole)) === whole;

const factors: ReadonlyMap<Unit, ReadonlyMap<Unit, Factor>> = new Map(
  UNITS.map((from) => {
    const kin = UNITS.filter((to) => to.quantity === from.quantity);
    return [from.name, new Map(kin.map((to) => [to.name, factorBetween(ratioOf(from.exact), ratioOf(to.exact))]))];
  }),
);

/** The same torque in another unit. */
export const convertTorque = (torque: number, from: TorqueUnit, to: TorqueUnit): number => scaled(torque, from, to);

/**
 * Turns a figure from one unit into another of the same quantity, correct to the last digits of a double.
 *
 * @param value any finite number
 * @returns the figure in `to`; refused when the two units measure different things
 */
export function convert(value: number, from: Unit, to: Unit): Result<number> {
  const quantity = quantityOf(from);
  if (quantity !== quantityOf(to)) {
    const message = `${from} is a unit of ${quantity}, ${to} one of ${quantityOf(to)}; they cannot be converted.`;
    return invalid('to', message, `a unit of ${quantity}: ${unitsOf(quantity).join(', ')}`);
  }
  const converted = Number.isFinite(value) ? scaled(value, from, to) : value;
  if (!Number.isFinite(converted)) return invalid('value', `${value} is too large or no number.`, 'a finite number');
  return ok(converted);
}

function scaled(value: number, from: Unit, to: Unit): number {
  const factor = factors.get(from)?.get(to);
  if (factor === undefined) throw new Error(`${from} and ${to} measure different things`);
  return (value * factor.up) / factor.down;
}
