import type { DecisionRule } from '@clampwright/core/joint';
import { acceptanceLimits, conformityOf } from '@clampwright/core/verdict';

/** Expanded uncertainty of the wrench in the example, as a share of what it shows: a usual calibration, k = 2. */
export const EXAMPLE_SHARE = 0.02;

/** What a decision rule makes of a window with a usual wrench. */
export interface RuleExample {
  /** Between these a pull counts as within; undefined: nothing of the window is left. */
  readonly accepted: { readonly lowerNm: number; readonly upperNm: number } | undefined;
  /** Chance that a pull shown at the upper end of what is accepted lies above the window. */
  readonly chanceAbove: number;
}

/** @param window in N·m */
export function ruleExample(
  { lowerNm: lower, upperNm: upper }: { readonly lowerNm: number; readonly upperNm: number },
  rule: DecisionRule,
): RuleExample {
  const standardUncertainty = (EXAMPLE_SHARE * upper) / 2;
  const limits = acceptanceLimits({ lower, upper }, standardUncertainty, rule);
  if (!limits.ok) return { accepted: undefined, chanceAbove: 1 };
  const { lower: lowerNm = lower, upper: upperNm = upper } = limits.value;
  const { above: chanceAbove } = conformityOf(upperNm, standardUncertainty, { lower, upper });
  return { accepted: { lowerNm, upperNm }, chanceAbove };
}
