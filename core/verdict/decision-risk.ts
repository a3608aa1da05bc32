import { conformityOf, type Limits } from './conformity.ts';
import { panelsOf, quadrature } from './quadrature.ts';

/** How things are made, and how they are measured; both normal. */
export interface Process {
  readonly mean: number;
  readonly sd: number;
  readonly standardUncertainty: number;
}

export interface DecisionRisk {
  /** Chance that the next thing is outside its limits and accepted all the same. */
  readonly falseAccept: number;
  /** Chance that it is inside and rejected. */
  readonly falseReject: number;
}

/** So many standard deviations out, a normal distribution has less than 1e-19 left. */
const REACH = 9;

/**
 * How often a decision about the next thing that a process makes will be wrong; joint chances, not shares of the
 * accepted or rejected ones.
 *
 * R_C = ∫ outside g0(x)·F(x) dx, R_P = ∫ inside g0(x)·(1 − F(x)) dx, F(x) the chance that a true x is accepted
 *
 * @param tolerance what must hold of the true value
 * @param accepted  between which measured values it is accepted
 * @returns within 1e-12
 * @source JCGM 106:2012, 9.5.2 and 9.5.3, consumer's and producer's global risk
 */
export function decisionRisk(process: Process, tolerance: Limits, accepted: Limits): DecisionRisk {
  const { mean, sd, standardUncertainty: u } = process;
  const [low, high] = [mean - REACH * sd, mean + REACH * sd];
  if (sd === 0) return ofOne(mean, u, tolerance, accepted);
  const density = (x: number) => Math.exp(-0.5 * ((x - mean) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI));
  const acceptance = (x: number) => conformityOf(x, u, accepted);
  const cuts = cutsOf(tolerance, accepted, u).filter((cut) => cut > low && cut < high);
  const [from, to] = [tolerance.lower ?? low, tolerance.upper ?? high];
  let [falseAccept, falseReject] = [0, 0];
  for (const [left, right] of panelsOf([low, ...cuts, high], sd, u)) {
    const middle = (left + right) / 2;
    if (middle < from || middle > to) falseAccept += quadrature((x) => density(x) * acceptance(x).inside, left, right);
    else
      falseReject += quadrature(
        (x) => {
          const { below, above } = acceptance(x);
          return density(x) * (below + above);
        },
        left,
        right,
      );
  }
  return { falseAccept: clamped(falseAccept), falseReject: clamped(falseReject) };
}

const clamped = (chance: number): number => Math.min(1, Math.max(0, chance));

/** A process that makes one thing only: either every decision about it may be wrong, or none of that kind. */
function ofOne(value: number, u: number, tolerance: Limits, accepted: Limits): DecisionRisk {
  const isGood = conformityOf(value, 0, tolerance).inside === 1;
  const { inside, below, above } = conformityOf(value, u, accepted);
  return isGood ? { falseAccept: 0, falseReject: below + above } : { falseAccept: inside, falseReject: 0 };
}

/** Where the integrand bends: at the tolerance limits, and about the acceptance limits as far as measuring blurs them. */
function cutsOf(tolerance: Limits, accepted: Limits, u: number): readonly number[] {
  const limits = [tolerance.lower, tolerance.upper].filter((limit) => limit !== undefined);
  const blurred = [accepted.lower, accepted.upper]
    .filter((limit) => limit !== undefined)
    .flatMap((limit) => [limit - REACH * u, limit, limit + REACH * u]);
  return [...limits, ...blurred];
}
