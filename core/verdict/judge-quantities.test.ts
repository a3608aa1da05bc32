import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeQuantities, type Quantity } from './judge-quantities.ts';
import type { Verdict } from './verdict.ts';

fc.configureGlobal({ seed: 24 });

const judged = <Name extends string>(...quantities: readonly Quantity<Name>[]) => {
  const judgement = judgeQuantities(quantities);
  if (!judgement.ok) throw new Error(JSON.stringify(judgement.failure));
  return judgement.value;
};
const torque = (value: number, guardBand = 0): Quantity => ({
  name: 'torque',
  value,
  lower: 95,
  upper: 105,
  guardBand,
});

describe('one quantity', () => {
  it.each([
    [94.999_999_999, 'under', 'below-lower', 95],
    [95, 'within', 'inside', undefined],
    [100, 'within', 'inside', undefined],
    [105, 'within', 'inside', undefined],
    [105.000_000_001, 'over', 'above-upper', 105],
  ] as const)('%d N·m against 95 to 105 is %s', (value, verdict, code, limit) => {
    const judgement = judged(torque(value));
    expect(judgement.verdict).toBe(verdict);
    expect(judgement.reasons).toEqual([{ code, quantity: 'torque', value, ...(limit === undefined ? {} : { limit }) }]);
  });

  // Deviation of a wrench in percent, limits ± 4, U 1, guard band U: ILAC-G8, zones (rule read, figures computed).
  it.each([
    [2.9, 'within'],
    [3, 'within'],
    [-3, 'within'],
    [3.2, 'doubtful'],
    [-3.2, 'doubtful'],
    [4, 'doubtful'],
    [4.5, 'over'],
    [-5.2, 'under'],
  ] as const)('with a guard band of 1, %d against ± 4 is %s', (value, verdict) => {
    expect(judged({ name: 'deviation', value, lower: -4, upper: 4, guardBand: 1 }).verdict).toBe(verdict);
  });

  it('names the nearer limit where the guard band leaves it in doubt', () => {
    expect(judged(torque(104, 2)).reasons).toEqual([
      { code: 'inside-guard-band', quantity: 'torque', value: 104, limit: 105 },
    ]);
    expect(judged(torque(96, 2)).reasons).toEqual([
      { code: 'inside-guard-band', quantity: 'torque', value: 96, limit: 95 },
    ]);
  });

  it('may have a limit on one side only', () => {
    expect(judged({ name: 'angle', value: 1e6, lower: 30 }).verdict).toBe('within');
    expect(judged({ name: 'angle', value: 29, lower: 30, guardBand: 2 }).verdict).toBe('under');
    expect(judged({ name: 'angle', value: -5, upper: 30, guardBand: 2 }).verdict).toBe('within');
    expect(judged({ name: 'angle', value: 29, upper: 30, guardBand: 2 }).verdict).toBe('doubtful');
  });

  it('that was not measured is doubtful', () => {
    expect(judged({ name: 'angle', lower: 30 })).toEqual({
      verdict: 'doubtful',
      reasons: [{ code: 'not-measured', quantity: 'angle' }],
    });
  });
});

describe('several quantities', () => {
  const made: Readonly<Record<Verdict, Quantity>> = {
    over: torque(120),
    under: torque(20),
    doubtful: torque(96, 2),
    within: torque(100),
  };
  const worstFirst = ['over', 'under', 'doubtful', 'within'] as const;

  it('give the worst verdict, in whatever order, and a reason each', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...worstFirst), { minLength: 1, maxLength: 8 }), (verdicts) => {
        const judgement = judged(...verdicts.map((verdict) => made[verdict]));
        expect(judgement.verdict).toBe(worstFirst.find((verdict) => verdicts.includes(verdict)));
        expect(judgement.reasons).toHaveLength(verdicts.length);
      }),
    );
  });

  it('never get better by a wider guard band', () => {
    const figure = fc.double({ min: 80, max: 120, noNaN: true });
    const band = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(figure, band, band, (value, a, b) => {
        const rank = (guardBand: number) => worstFirst.indexOf(judged(torque(value, guardBand)).verdict);
        expect(rank(Math.max(a, b))).toBeLessThanOrEqual(rank(Math.min(a, b)));
      }),
    );
  });
});

describe('refusals', () => {
  it.each<[string, readonly Quantity<string>[], string]>([
    ['nothing to judge', [], 'quantities'],
    ['no limits at all', [torque(100), { name: 'angle', value: 40 }], 'quantities[1]'],
    ['lower above upper', [torque(100), { name: 'angle', value: 40, lower: 50, upper: 30 }], 'quantities[1].lower'],
    ['a value that is no number', [{ name: 'torque', value: Number.NaN, lower: 1 }], 'quantities[0].value'],
    ['a limit that is no number', [{ name: 'torque', value: 1, upper: Number.NaN }], 'quantities[0].upper'],
    ['an endless limit', [{ name: 'torque', value: 1, upper: Number.POSITIVE_INFINITY }], 'quantities[0].upper'],
    ['a negative guard band', [{ name: 'torque', value: 1, upper: 2, guardBand: -1 }], 'quantities[0].guardBand'],
  ])('name the field: %s', (_, quantities, field) => {
    expect(judgeQuantities(quantities)).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });
});
