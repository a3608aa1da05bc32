import { describe, expect, it } from 'vitest';
import { madeCurve } from '../trace/testing/made-curve.ts';
import type { Trace } from './command.ts';
import { done, openedSample, pullOf, taking } from './testing/sample-job.ts';
import { groundCurve, shownTrace } from './trace-shown.ts';

/** 30° of running down, then 2 N·m a degree to 100 N·m. */
const sound: Trace = (() => {
  const made = madeCurve(0.5, 80, (deg) => (deg <= 30 ? 1 : 1 + 2 * (deg - 30)));
  return { ...made, timeS: made.angleDeg.map((_, i) => i / 40) };
})();

const job = done(done(openedSample(), taking), pullOf(200, 100, { trace: sound, position: 1 }));
const pull = (() => {
  const body = job.entries.at(-1)!.body;
  if (body.kind !== 'pull') throw new Error('no pull');
  return body.pull;
})();

describe('the trace of a pull, for drawing', () => {
  it('is torque over the turning of the fastener, ascending, with its slope and snug', () => {
    const { angleDeg, torqueNm, analysis, window } = shownTrace(job.state, pull, sound);
    expect(angleDeg.every((deg, i) => i === 0 || deg >= angleDeg[i - 1]!)).toBe(true);
    expect(Math.max(...torqueNm)).toBeCloseTo(101, 6);
    expect(analysis).toMatchObject({ kind: 'tightening' });
    if (analysis.kind !== 'tightening') return;
    expect(analysis.figures.slopeNmPerDeg).toBeCloseTo(2, 6);
    expect(window.targetNm).toBeGreaterThan(0);
  });

  it('draws loosening forward and upward, and calls it loosening', () => {
    const back = { ...sound, torqueNm: sound.torqueNm.map((nm) => -nm), angleDeg: sound.angleDeg.map((deg) => -deg) };
    const { angleDeg, torqueNm, analysis } = shownTrace(job.state, pull, back);
    expect(analysis.kind).toBe('loosening');
    expect(angleDeg.at(-1)).toBeCloseTo(80, 6);
    expect(Math.max(...torqueNm)).toBeCloseTo(101, 6);
  });

  it('is thinned to about as many points as wanted and keeps the highest torque', () => {
    const shown = shownTrace(job.state, pull, sound);
    const thin = groundCurve(shown, 40)!;
    expect(thin.torqueNm.length).toBeLessThanOrEqual(40);
    expect(Math.max(...thin.torqueNm)).toBe(101);
    expect(thin.fromSnugDeg.some((deg) => deg < 0)).toBe(true);
  });

  it('lies over no other where it is loosening', () => {
    const back = { ...sound, torqueNm: sound.torqueNm.map((nm) => -nm) };
    expect(groundCurve(shownTrace(job.state, pull, back), 40)).toBeUndefined();
  });
});
