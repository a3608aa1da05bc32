import type { ShownTrace } from '@clampwright/core/record';
import { analyseTrace, type Finding, traceOptionsSchema } from '@clampwright/core/trace';
import { describe, expect, it } from 'vitest';
import { nearestIndex, traceDrawing } from './trace-drawing.ts';

/** 30° of running down, then 2 N·m a degree. */
const angleDeg = Float64Array.from({ length: 161 }, (_, i) => i / 2);
const torqueNm = angleDeg.map((deg) => (deg <= 30 ? 1 : 1 + 2 * (deg - 30)));
const shown: ShownTrace = {
  angleDeg,
  torqueNm,
  analysis: analyseTrace({ angleDeg, torqueNm }, traceOptionsSchema.parse({})),
  window: { lowerNm: 90, targetNm: 100, upperNm: 110, lowerDeg: 40, targetDeg: 50, upperDeg: 60 },
  countsFromDeg: 30,
};
const finding: Finding = { kind: 'jerked', confidence: 0.9, atDeg: 50, quantity: 'speed', value: 80, limit: 40 };
const earlier = {
  expected: { basis: 'learned', traces: 9, slopeNmPerDeg: { median: 2, deviation: 0.1 } },
  curves: [{ fromSnugDeg: [-10, 0, 10], torqueNm: [1, 1, 21] }],
} as const;

describe('the drawing of a trace', () => {
  const drawing = traceDrawing(shown, [finding], earlier, 'N·m');

  it('lays earlier curves so that their snug is on this one’s', () => {
    const snug = drawing.marks.find(({ what }) => what.kind === 'snug')!;
    expect(drawing.ground[0]?.deg[1]).toBeCloseTo(snug.deg, 9);
  });

  it('numbers its marks and puts a finding on the curve', () => {
    expect(drawing.marks.map(({ number }) => number)).toEqual(drawing.marks.map((_, i) => i + 1));
    expect(drawing.marks.at(-1)).toMatchObject({ deg: 50, torque: 41, shape: 'diamond' });
  });

  it('widens the expected slope by three deviations to either side', () => {
    const [corner, steep, flat] = drawing.band;
    const slopeTo = (spot = corner) => (spot!.torque - corner!.torque) / (spot!.deg - corner!.deg);
    expect(slopeTo(steep)).toBeCloseTo(2.3, 9);
    expect(slopeTo(flat)).toBeCloseTo(1.7, 9);
  });

  it('counts the window of the angle from where the stage counts', () => {
    expect(drawing.angleLimits).toEqual({ lower: 70, target: 80, upper: 90 });
  });

  it('tells torque in the unit of the joint', () => {
    const inches = traceDrawing(shown, [], earlier, 'lbf·in');
    expect(inches.torqueLimits?.target).toBeCloseTo(885.07, 2);
    expect(inches.curve.torque.at(-1)).toBeCloseTo(101 * 8.850_745_79, 4);
  });
});

describe('the nearest sample', () => {
  it('is found in ascending angles, at both ends too', () => {
    const ascending = Float64Array.of(0, 1, 2, 4);
    expect([-5, 0.4, 0.6, 2.9, 3.1, 99].map((deg) => nearestIndex(ascending, deg))).toEqual([0, 0, 1, 2, 3, 3]);
  });
});
