import { invalid, ok, type Result } from '../failure/failure.ts';
import type { DecisionRule } from '../joint/joint.ts';
import { shareBelow } from '../statistics/distributions/normal.ts';
import type { Limits } from './conformity.ts';

export interface AcceptanceLimits {
  readonly lower?: number;
  readonly upper?: number;
  /** From each limit inwards to what is accepted. */
  readonly guardBand: number;
}

/**
 * Between which measured values something is accepted, so that its decision rule holds.
 *
 * guarded: w = factor·U, U = 2u; risk: w at which the chance of lying outside is the maximum
 *
 * @returns refused with field `standardUncertainty` where the guard bands leave nothing of the window
 * @source JCGM 106:2012, 8.2 (simple acceptance), 8.3.2 (guard band as a multiple of U), 8.4 and 7.3 (by chance)
 */
export function acceptanceLimits(
  { lower, upper }: Limits,
  standardUncertainty: number,
  rule: DecisionRule,
): Result<AcceptanceLimits> {
  const width = (upper ?? Number.POSITIVE_INFINITY) - (lower ?? Number.NEGATIVE_INFINITY);
  const guardBand = guardBandOf(width, standardUncertainty, rule);
  if (guardBand === undefined || 2 * guardBand > width)
    return invalid(
      'standardUncertainty',
      `a standard uncertainty of ${standardUncertainty} leaves nothing of a window ${width} wide`,
      'a smaller uncertainty, a wider window or a milder rule',
    );
  return ok({
    ...(lower === undefined ? {} : { lower: lower + guardBand }),
    ...(upper === undefined ? {} : { upper: upper - guardBand }),
    guardBand,
  });
}

/** @returns undefined where no value inside is good enough */
function guardBandOf(width: number, u: number, rule: DecisionRule): number | undefined {
  switch (rule.kind) {
    case 'simple':
      return 0;
    case 'guarded':
      return rule.factor * 2 * u;
    case 'risk':
      return bandForRisk(width, u, rule.maximum);
  }
}

/** A binary fraction has so many digits. */
const HALVINGS = 60;

/** The chance of lying outside falls from a limit to the middle of the window; it is met by halving. */
function bandForRisk(width: number, u: number, maximum: number): number | undefined {
  const outside = (band: number) => shareBelow(-band / u) + (width === Infinity ? 0 : shareBelow((band - width) / u));
  if (u === 0) return 0;
  let [less, more] = [0, Math.min(width / 2, 40 * u)];
  if (outside(more) > maximum) return undefined;
  if (outside(less) <= maximum) return 0;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (less + more) / 2;
    if (outside(middle) > maximum) less = middle;
    else more = middle;
  }
  return more;
}
