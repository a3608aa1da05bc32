import { atLogOdds, logUpperBeta } from '../special/incomplete-beta.ts';
import { deviance, stirlingError } from '../special/log-gamma.ts';
import type { Continuous } from './continuous.ts';
import { logOddsQuantile } from './log-odds-quantile.ts';
import { normal } from './normal.ts';

/** Up to here the tail's power law is the better start, above it the normal distribution. */
const FEW_DEGREES = 8;

/**
 * Student's t distribution.
 *
 * @param degrees degrees of freedom, above 0, need not be whole (JCGM 100:2008, G.4.1)
 * @source NIST Handbook of Mathematical Functions (2010), 8.17: both tails together are I_y(ν/2, ½) at y = ν/(ν + t²);
 *         density by C. Loader's saddle-point expansion (2000)
 */
export function studentT(degrees: number): Continuous {
  const place = (t: number) => atLogOdds(2 * Math.log(t) - Math.log(degrees));
  const above = (t: number): number => {
    if (t === 0) return 0.5;
    if (t < 0) return 1 - above(-t);
    return 0.5 * Math.exp(logUpperBeta(0.5, degrees / 2, place(t)));
  };
  const quantileAbove = (tail: number): number => {
    if (tail === 0.5) return 0;
    if (tail > 0.5) return -quantileAbove(1 - tail);
    return tail === 0 ? Infinity : positiveQuantile(degrees, tail);
  };
  return {
    density: (t) => densityAt(degrees, t),
    below: (t) => above(-t),
    above,
    quantile: (share) => -quantileAbove(share),
    quantileAbove,
  };
}

function densityAt(degrees: number, t: number): number {
  const half = degrees / 2;
  const factor = stirlingError(half + 0.5) - stirlingError(half) - deviance(half, half + 0.5);
  const square = (t / degrees) * t;
  return Math.exp(factor - half * Math.log1p(square)) / Math.sqrt(2 * Math.PI * (1 + square));
}

/** t² is ν times the odds of a beta distribution with ½ and ν/2. */
function positiveQuantile(degrees: number, tail: number): number {
  const start = degrees > FEW_DEGREES ? 2 * Math.log(normal.quantileAbove(tail)) - Math.log(degrees) : undefined;
  const logOdds = logOddsQuantile(0.5, degrees / 2, 1 - 2 * tail, 2 * tail, start);
  return Math.sqrt(degrees) * Math.exp(logOdds / 2);
}
