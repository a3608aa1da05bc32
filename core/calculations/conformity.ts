import { z } from 'zod';
import { invalid, ok, type Result } from '../failure/failure.ts';
import type { DecisionRule } from '../joint/joint.ts';
import { acceptanceLimits as limitsOf } from '../verdict/acceptance-limits.ts';
import { conformityOf, type Limits } from '../verdict/conformity.ts';
import { decisionRisk as riskOf } from '../verdict/decision-risk.ts';
import { calculation } from './calculation.ts';

const limit = (which: string) => z.number().describe(`${which}, in the unit of the value`).optional();
const limits = { lower: limit('lower limit'), upper: limit('upper limit') };
const uncertainty = z.number().min(0).describe('standard uncertainty of a measured value, in its unit, 0 or more');
const probability = (what: string) => z.number().describe(`${what}, 0 to 1`);

/** Crossed limits, or none, mean nothing. */
function checked(pair: Limits, lower = 'lower', upper = 'upper'): Result<Limits> {
  if (pair.lower === undefined && pair.upper === undefined)
    return invalid(lower, 'there are no limits', 'a lower limit, an upper limit, or both');
  if (pair.lower !== undefined && pair.upper !== undefined && pair.lower > pair.upper)
    return invalid(lower, `${pair.lower} lies above ${upper} ${pair.upper}`, `at most ${pair.upper}`);
  return ok(pair);
}

interface RuleTold {
  readonly kind: DecisionRule['kind'];
  readonly factor?: number | undefined;
  readonly maximum?: number | undefined;
}

/** The form has a field for each rule; only the one that is chosen wants its figure. */
function ruleOf({ kind, factor, maximum }: RuleTold): Result<DecisionRule> {
  switch (kind) {
    case 'simple':
      return ok({ kind });
    case 'guarded':
      return factor === undefined
        ? invalid('rule.factor', 'It is missing.', 'a factor of U = 2u')
        : ok({ kind, factor });
    case 'risk':
      return maximum === undefined
        ? invalid('rule.maximum', 'It is missing.', 'more than 0, at most 0.5')
        : ok({ kind, maximum });
  }
}

const NORMAL =
  'Holds for values that are normal about what was measured; uncertainty that is wrong makes the chance wrong.';

export const conformity = calculation({
  name: 'conformity',
  title: 'How probably a measured value lies inside its limits',
  cautions: [NORMAL],
  sources: ['JCGM 106:2012, 7.3: conformance probability of a normal distribution'],
  input: z.strictObject({ value: z.number().describe('measured value'), standardUncertainty: uncertainty, ...limits }),
  output: z.strictObject({ probability: probability('chance that the true value lies inside') }),
  example: { value: 3.2, standardUncertainty: 0.5, lower: -4, upper: 4 },
  work: ({ value, standardUncertainty, lower, upper }) => {
    const window = checked({ lower, upper });
    return window.ok ? ok({ probability: conformityOf(value, standardUncertainty, window.value).inside }) : window;
  },
});

export const acceptanceLimits = calculation({
  name: 'acceptance-limits',
  title: 'Between which measured values something is accepted under a decision rule',
  cautions: [NORMAL],
  sources: ['JCGM 106:2012, 8.2 and 8.3: acceptance with and without a guard band', 'ILAC-G8:09/2019'],
  input: z.strictObject({
    ...limits,
    standardUncertainty: uncertainty,
    rule: z
      .strictObject({
        kind: z.enum(['simple', 'guarded', 'risk']).describe('which rule'),
        factor: z.number().gt(0).max(10).describe('with guarded: of the expanded uncertainty U = 2u').optional(),
        maximum: z.number().gt(0).max(0.5).describe('with risk: greatest chance of lying outside').optional(),
      })
      .describe('simple; guarded with a factor of U = 2u; or risk with the greatest chance of lying outside'),
  }),
  output: z.strictObject({
    lower: z.number().describe('lower acceptance limit').optional(),
    upper: z.number().describe('upper acceptance limit').optional(),
    guardBand: z.number().describe('from each limit inwards'),
  }),
  example: { lower: 80, upper: 90, standardUncertainty: 0.6, rule: { kind: 'guarded', factor: 1 } },
  work: ({ lower, upper, standardUncertainty, rule }) => {
    const window = checked({ lower, upper });
    if (!window.ok) return window;
    const decided = ruleOf(rule);
    return decided.ok ? limitsOf(window.value, standardUncertainty, decided.value) : decided;
  },
});

export const decisionRisk = calculation({
  name: 'decision-risk',
  title: 'How often decisions about what a process makes will be wrong',
  cautions: [NORMAL, 'Holds for a process that is normal and stays as it is.'],
  sources: ['JCGM 106:2012, 9.5: global consumer’s and producer’s risk'],
  input: z.strictObject({
    ...limits,
    processMean: z.number().describe('mean of the true values that the process makes'),
    processSd: z.number().min(0).describe('standard deviation of the true values'),
    standardUncertainty: uncertainty,
    acceptLower: limit('lower acceptance limit; the lower limit when left out'),
    acceptUpper: limit('upper acceptance limit; the upper limit when left out'),
  }),
  output: z.strictObject({
    falseAccept: probability('chance that the next one is outside and accepted'),
    falseReject: probability('chance that the next one is inside and rejected'),
  }),
  example: {
    lower: 1499.8,
    upper: 1500.2,
    processMean: 1500,
    processSd: 0.12,
    standardUncertainty: 0.04,
    acceptLower: 1499.88,
    acceptUpper: 1500.12,
  },
  work: ({ lower, upper, processMean: mean, processSd: sd, standardUncertainty, acceptLower, acceptUpper }) => {
    const window = checked({ lower, upper });
    if (!window.ok) return window;
    const accepted = checked(
      { lower: acceptLower ?? lower, upper: acceptUpper ?? upper },
      'acceptLower',
      'acceptUpper',
    );
    return accepted.ok ? ok(riskOf({ mean, sd, standardUncertainty }, window.value, accepted.value)) : accepted;
  },
});
