import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMeasured, showMeasured } from './measured.ts';

const DISTRIBUTIONS = ['normal', 'rectangular', 'triangular'];

describe('readMeasured', () => {
  it.each([
    ['80', 80],
    ['80 ± 1,6', { value: 80, standardUncertainty: 1.6 }],
    ['0,12±0,012 rectangular', { value: 0.12, standardUncertainty: 0.012, distribution: 'rectangular' }],
    ['80 +/- 2 Triangular', { value: 80, standardUncertainty: 2, distribution: 'triangular' }],
    ['80 ±', undefined],
    ['± 2', undefined],
    ['80 ± 2 ± 3', undefined],
    ['80 ± 2 square', undefined],
    ['many', undefined],
  ])('reads “%s”', (typed, expected) => {
    expect(readMeasured(typed, DISTRIBUTIONS, 'de')).toEqual(expected);
  });

  it('reads what was shown, in every language', () => {
    const figure = fc.integer({ min: 1, max: 1e7 }).map((thousandths) => thousandths / 1000);
    const measured = fc.oneof(
      figure,
      fc.record({ value: figure, standardUncertainty: figure, distribution: fc.constantFrom(...DISTRIBUTIONS) }),
    );
    fc.assert(
      fc.property(measured, fc.constantFrom('en', 'de', 'fr', 'es'), (given, language) => {
        expect(readMeasured(showMeasured(given, language), DISTRIBUTIONS, language)).toEqual(given);
      }),
      { seed: 7 },
    );
  });
});
