import { invalid, ok, type Result } from '../../failure/failure.ts';
import { HALF_WIDTH } from '../../statistics/distribution.ts';
import type { Uncertain } from '../../statistics/monte-carlo.ts';

/** A figure, or what is known of it. */
export type Told = number | Uncertain;

export const valueOf = (told: Told): number => (typeof told === 'number' ? told : told.value);

export const uncertainOf = (told: Told): Uncertain =>
  typeof told === 'number' ? { value: told, standardUncertainty: 0, distribution: 'normal' } : told;

/** Of a normal distribution 3 draws in 100 000 lie further out; more would tell of friction below nothing. */
const NORMAL_REACH = 4;

/**
 * Refuses an uncertainty that lets a quantity reach zero, which none of those of a fastener can.
 *
 * @param field path of the quantity
 */
export function staysPositive(told: Told, field: string): Result<Uncertain> {
  const uncertain = uncertainOf(told);
  const { value, standardUncertainty, distribution } = uncertain;
  const reach = distribution === 'normal' ? NORMAL_REACH : HALF_WIDTH[distribution];
  if (standardUncertainty === 0 || reach * standardUncertainty < value) return ok(uncertain);
  const message = `A ${distribution} distribution about ${value} with this uncertainty reaches zero or less.`;
  return invalid(`${field}.standardUncertainty`, message, `less than ${(value / reach).toPrecision(3)}`);
}
