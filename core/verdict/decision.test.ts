import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DecisionRule } from '../joint/joint.ts';
import { acceptanceLimits } from './acceptance-limits.ts';
import { conformityOf } from './conformity.ts';
import { decisionRisk } from './decision-risk.ts';
import { quadrature } from './quadrature.ts';

fc.configureGlobal({ seed: 24 });

const rule = fc.oneof(
  fc.constant<DecisionRule>({ kind: 'simple' }),
  fc.double({ min: 0.01, max: 2, noNaN: true }).map((factor): DecisionRule => ({ kind: 'guarded', factor })),
  fc.double({ min: 1e-6, max: 0.5, noNaN: true }).map((maximum): DecisionRule => ({ kind: 'risk', maximum })),
);
const limit = fc.double({ min: -1000, max: 1000, noNaN: true });

describe('acceptance limits', () => {
  it('lie inside the limits, and hold what the rule promises', () => {
    fc.assert(
      fc.property(
        limit,
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 1e-3, max: 50, noNaN: true }),
        rule,
        (lower, width, u, decided) => {
          const window = { lower, upper: lower + width };
          const limits = acceptanceLimits(window, u, decided);
          if (!limits.ok) return;
          expect(limits.value.lower).toBeGreaterThanOrEqual(window.lower);
          expect(limits.value.upper).toBeLessThanOrEqual(window.upper);
          if (decided.kind !== 'risk' || u === 0) return;
          const { below, above } = conformityOf(limits.value.upper!, u, window);
          expect(below + above).toBeLessThanOrEqual(decided.maximum * (1 + 1e-6) + 1e-9);
        },
      ),
    );
  });

  it('on one side stand z times the uncertainty off the limit', () => {
    const limits = acceptanceLimits({ upper: 10 }, 1, { kind: 'risk', maximum: 0.05 });
    // 95 % quantile of the normal distribution, from memory: 1.6448536269514722
    expect(limits).toEqual({
      ok: true,
      value: { upper: expect.closeTo(10 - 1.6448536269514722, 11), guardBand: expect.closeTo(1.6448536269514722, 11) },
    });
  });

  it('are refused where nothing of the window is left', () => {
    const refused = { ok: false, failure: { kind: 'invalid', field: 'standardUncertainty' } };
    expect(acceptanceLimits({ lower: 0, upper: 3 }, 1, { kind: 'guarded', factor: 1 })).toMatchObject(refused);
    expect(acceptanceLimits({ lower: 0, upper: 3 }, 1, { kind: 'risk', maximum: 0.05 })).toMatchObject(refused);
  });
});

describe('decision risk', () => {
  const window = { lower: -1, upper: 1 };

  it('is nothing where measuring is exact and accepts what is good', () => {
    expect(decisionRisk({ mean: 0.3, sd: 0.7, standardUncertainty: 0 }, window, window)).toEqual({
      falseAccept: 0,
      falseReject: 0,
    });
  });

  it('of one known thing is the chance of measuring it wrong', () => {
    const { above } = conformityOf(0.9, 0.2, window);
    const { falseAccept, falseReject } = decisionRisk({ mean: 0.9, sd: 0, standardUncertainty: 0.2 }, window, window);
    expect(falseAccept).toBe(0);
    expect(falseReject).toBeCloseTo(above, 12);
  });

  it('accepts less that is bad and rejects more that is good as the guard band grows', () => {
    const positive = fc.double({ min: 0.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -2, max: 2, noNaN: true }), positive, positive, (mean, sd, standardUncertainty) => {
        const at = (band: number) =>
          decisionRisk({ mean, sd, standardUncertainty }, window, { lower: -1 + band, upper: 1 - band });
        const [plain, guarded] = [at(0), at(0.3)];
        expect(guarded.falseAccept).toBeLessThanOrEqual(plain.falseAccept + 1e-13);
        expect(guarded.falseReject).toBeGreaterThanOrEqual(plain.falseReject - 1e-13);
        for (const { falseAccept, falseReject } of [plain, guarded]) {
          expect(falseAccept).toBeLessThanOrEqual(1 - conformityOf(mean, sd, window).inside + 1e-12);
          expect(falseReject).toBeLessThanOrEqual(conformityOf(mean, sd, window).inside + 1e-12);
        }
      }),
    );
  });

  it('holds where measuring is far finer than the process, and far coarser', () => {
    const fine = decisionRisk({ mean: 0, sd: 1, standardUncertainty: 1e-6 }, { upper: 1 }, { upper: 1 });
    // first order: density at the limit times u/√(2π)
    const firstOrder = ((Math.exp(-0.5) / Math.sqrt(2 * Math.PI)) * 1e-6) / Math.sqrt(2 * Math.PI);
    expect(fine.falseAccept / firstOrder).toBeCloseTo(1, 5);
    const coarse = decisionRisk({ mean: 0, sd: 1e-6, standardUncertainty: 1 }, { upper: 1e-6 }, { upper: 0 });
    expect(coarse.falseReject).toBeCloseTo(0.5 * conformityOf(0, 1e-6, { upper: 1e-6 }).inside, 5);
  });
});

describe('quadrature', () => {
  it('is exact for a polynomial of degree 31', () => {
    expect(quadrature((x) => x ** 31 + 7 * x ** 8, 0, 1)).toBeCloseTo(1 / 32 + 7 / 9, 13);
  });
});
