import { type LineFit, leastSquares, robustLine } from '@clampwright/core/trace';
import { describe, expect, it } from 'vitest';
import { FITTED_WINDOWS } from './made/line-fit-table.ts';

const TOLERANCE = 1e-9;

const relative = (ours: number, theirs: number): number => Math.abs(ours - theirs) / Math.abs(theirs);

// scipy.stats.linregress and scipy.optimize.least_squares with Huber's loss; the version stands in the table
describe.each(FITTED_WINDOWS)('window from $fromDeg° in steps of $stepDeg°', (window) => {
  const y = Float64Array.from(window.torqueNm);
  const x = Float64Array.from(y, (_, i) => Number((window.fromDeg + i * window.stepDeg).toFixed(6)));
  const fitted = (fit: (...given: Parameters<typeof leastSquares>) => LineFit) => fit(x, y, 0, x.length);

  it('has scipy’s slope and standard error', () => {
    const { slope, slopeStandardError } = fitted(leastSquares);
    expect(relative(slope, window.slope)).toBeLessThan(TOLERANCE);
    // on an exact line both errors are what rounding leaves, which is no figure to compare
    const leftover = 1e-8;
    const bound = TOLERANCE * window.slopeStandardError + leftover * Number(window.slopeStandardError < leftover);
    expect(Math.abs(slopeStandardError - window.slopeStandardError)).toBeLessThan(bound);
  });

  it('has scipy’s robust slope', () => {
    expect(relative(fitted(robustLine).slope, window.robustSlope)).toBeLessThan(TOLERANCE);
  });
});
