import { describe } from '../statistics/describe.ts';
import { type BudgetInput, budgetOf, type Contribution, combined } from './budget.ts';
import type { ReadingsAt } from './readings-flaw.ts';

/** What comes of the repeats at one torque. */
export interface EvaluatedPoint {
  readonly targetNm: number;
  readonly meanReferenceNm: number;
  readonly deviationsPercent: readonly number[];
  readonly meanDeviationPercent: number;
  readonly repeatabilityPercent: number;
  readonly standardUncertaintyPercent: number;
  readonly expandedUncertaintyPercent: number;
  readonly uncertaintyIntervalPercent: number;
  readonly conforms: boolean;
  readonly budget: readonly Contribution[];
}

export interface PointConditions
  extends Pick<BudgetInput, 'resolutionNm' | 'referenceUncertaintyPercent' | 'spreads' | 'spreadsAtNm'> {
  readonly permissiblePercent: number;
  /** Known error of the reference that is not corrected, percent. */
  readonly referenceBiasPercent: number;
}

/** The last binary digits of a quotient never make a wrench fail that lies exactly on its limit. */
const LAST_DIGITS = 1e-12;

/**
 * Deviations of the repeats, their scatter, and the uncertainty with every contribution.
 *
 * a_s = (X_a − X_r)·100/X_r; W = 2·w; W′ = |ā_s| + W + |b_ep|
 *
 * @source ISO 6789-1:2017, 5.1.5: every single deviation is held against the limit; ISO 6789-2:2017, clauses 5 to 7 (from memory)
 */
export function evaluatePoint(point: ReadingsAt, conditions: PointConditions): EvaluatedPoint {
  const { targetNm, indicatedNm, referenceNm } = point;
  const shownNm = referenceNm.map((_, index) => indicatedNm?.[index] ?? targetNm);
  const deviationsPercent = referenceNm.map(
    (reference, index) => (((shownNm[index] ?? 0) - reference) / reference) * 100,
  );
  const scatter = scatterOf(shownNm, referenceNm);
  const meanReferenceNm = describe(referenceNm).mean;
  const budget = budgetOf({ ...conditions, meanReferenceNm, ...scatter, repeats: referenceNm.length });
  const meanDeviationPercent = describe(deviationsPercent).mean;
  const expandedUncertaintyPercent = 2 * combined(budget);
  const limit = conditions.permissiblePercent * (1 + LAST_DIGITS);
  return {
    targetNm,
    meanReferenceNm,
    deviationsPercent,
    meanDeviationPercent,
    repeatabilityPercent: (scatter.standardDeviationNm / meanReferenceNm) * 100,
    standardUncertaintyPercent: combined(budget),
    expandedUncertaintyPercent,
    uncertaintyIntervalPercent:
      Math.abs(meanDeviationPercent) + expandedUncertaintyPercent + Math.abs(conditions.referenceBiasPercent),
    conforms: deviationsPercent.every((deviation) => Math.abs(deviation) <= limit),
    budget,
  };
}

/** What the reference showed, less what the hand put into it by aiming now higher, now lower. */
function scatterOf(
  shownNm: readonly number[],
  referenceNm: readonly number[],
): { readonly standardDeviationNm: number } {
  const aimedNm = describe(shownNm).mean;
  const levelled = referenceNm.map((reference, index) => reference - ((shownNm[index] ?? 0) - aimedNm));
  return { standardDeviationNm: describe(levelled).standardDeviation ?? 0 };
}
