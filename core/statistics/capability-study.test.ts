import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CapabilityInput, capabilityStudy } from './capability-study.ts';
import { normal } from './distributions/normal.ts';

fc.configureGlobal({ seed: 24 });

const study = (input: CapabilityInput) => {
  const result = capabilityStudy(input);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

const series = fc
  .array(fc.double({ min: 50, max: 150, noNaN: true }), { minLength: 5, maxLength: 80 })
  .filter((values) => new Set(values.map((value) => value.toFixed(3))).size > 3);

const NORMAL = Array.from({ length: 60 }, (_, i) => 100 + 2 * normal.quantile((((i * 37) % 60) + 0.5) / 60));

describe('capability', () => {
  it('is the same in any unit of the values', () => {
    fc.assert(
      fc.property(series, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (values, factor) => {
        const plain = study({ values, lower: 40, upper: 160 });
        const other = study({ values: values.map((value) => value * factor), lower: 40 * factor, upper: 160 * factor });
        expect(other.cp).toBeCloseTo(plain.cp ?? 0, 8);
        expect(other.cpk).toBeCloseTo(plain.cpk, 8);
        expect(other.cpkLower95).toBeCloseTo(plain.cpkLower95, 8);
        expect(other.normality.statistic).toBeCloseTo(plain.normality.statistic, 8);
      }),
    );
  });

  it('never calls the process better than its spread or its confidence allow', () => {
    fc.assert(
      fc.property(series, (values) => {
        const {
          cp = 0,
          cpk,
          cpkLower95,
          cpkInterval95,
          expectedAbovePpm = 0,
        } = study({ values, lower: 40, upper: 160 });
        expect(cpk).toBeLessThanOrEqual(cp + 1e-12);
        expect(cpkLower95).toBeLessThan(cpk);
        expect(cpkInterval95[0]).toBeLessThan(cpkLower95);
        expect(expectedAbovePpm).toBeGreaterThanOrEqual(0);
        expect(expectedAbovePpm).toBeLessThanOrEqual(1e6);
      }),
    );
  });

  it('takes one limit, and then tells no Cp', () => {
    const { cp, cpk, cpLower, expectedBelowPpm } = study({ values: NORMAL, upper: 106 });
    expect([cp, cpLower, expectedBelowPpm]).toEqual([undefined, undefined, undefined]);
    expect(cpk).toBeCloseTo(1, 1);
  });

  it('says what it rests on: enough values, normal, steady', () => {
    expect(study({ values: NORMAL, lower: 90, upper: 110 }).warnings).toEqual([]);
    const skewed = NORMAL.map((value) => Math.exp(value - 100));
    expect(study({ values: skewed, lower: 0 }).warnings.map(({ code }) => code)).toContain('not-normal');
    const wandering = NORMAL.toSorted((a, b) => a - b);
    expect(study({ values: wandering, lower: 90 }).warnings.map(({ code }) => code)).toEqual(['unsteady']);
    expect(study({ values: NORMAL.slice(0, 9), lower: 90 }).warnings.map(({ code }) => code)).toContain('few-values');
  });

  it('counts every value once in its histogram', () => {
    fc.assert(
      fc.property(series, (values) => {
        const { histogram } = study({ values, lower: 0 });
        expect(histogram.counts.reduce((sum, count) => sum + count, 0)).toBe(values.length);
      }),
    );
  });

  it.each<[string, CapabilityInput, string]>([
    ['no limit', { values: [1, 2, 3] }, 'lower'],
    ['crossed limits', { values: [1, 2, 3], lower: 5, upper: 4 }, 'lower'],
    ['values all the same', { values: [2, 2, 2], lower: 1 }, 'values'],
  ])('refuses %s', (_, input, field) => {
    expect(capabilityStudy(input)).toMatchObject({ ok: false, failure: { field } });
  });

  it('takes the Anderson-Darling test where Shapiro-Wilk ends', () => {
    const many = Array.from({ length: 5001 }, (_, i) => normal.quantile((i + 0.5) / 5001));
    expect(study({ values: many, upper: 4 }).normality).toMatchObject({
      test: 'anderson-darling',
      p: expect.closeTo(1, 2),
    });
  });
});
