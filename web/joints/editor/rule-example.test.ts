import { describe, expect, it } from 'vitest';
import { ruleExample } from './rule-example.ts';

const window = { lowerNm: 90, upperNm: 110 };

describe('the example beside a decision rule', () => {
  it('tells that on the limit itself the chances are even where nothing is guarded', () => {
    expect(ruleExample(window, { kind: 'simple' })).toEqual({
      accepted: { lowerNm: 90, upperNm: 110 },
      chanceAbove: 0.5,
    });
  });

  // one U is two standard uncertainties, and beyond two lies 0.02275 of a normal distribution (any table of it)
  it('takes the guard band off both ends: 1 times U = 2 % of 110 N·m', () => {
    const { accepted, chanceAbove } = ruleExample(window, { kind: 'guarded', factor: 1 });
    expect(accepted?.lowerNm).toBeCloseTo(92.2, 12);
    expect(accepted?.upperNm).toBeCloseTo(107.8, 12);
    expect(chanceAbove).toBeCloseTo(0.02275, 5);
  });

  it('keeps to the chance that is allowed', () => {
    expect(ruleExample(window, { kind: 'risk', maximum: 0.05 }).chanceAbove).toBeCloseTo(0.05, 9);
  });

  it('says so where nothing of the window is left', () => {
    expect(ruleExample({ lowerNm: 100, upperNm: 102 }, { kind: 'guarded', factor: 1 }).accepted).toBeUndefined();
  });
});
