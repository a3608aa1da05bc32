import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Figures, type ReadingOptions, readCurve } from './figures.ts';
import { typed } from './samples.ts';
import { HALF_SLOPE_DEG, madeCurve, PREVAILING_NM, SLOPE, SNUG_DEG } from './testing/made-curve.ts';

fc.configureGlobal({ seed: 24 });

const OPTIONS: ReadingOptions = { yieldFraction: 0.5 };
const read = (samples: Parameters<typeof typed>[0], options = OPTIONS): Figures =>
  readCurve(typed(samples), options).figures;

describe('figures of a made curve', () => {
  it('are those of its formula', () => {
    const figures = read(madeCurve(), { yieldFraction: 0.5, yieldOffsetDeg: 8, targetNm: 130 });
    expect(figures.slopeNmPerDeg).toBeCloseTo(SLOPE, 9);
    expect(figures.prevailingTorqueNm).toBeCloseTo(PREVAILING_NM, 9);
    expect(figures.snug?.angleDeg).toBeCloseTo(SNUG_DEG, 6);
    expect(figures.elasticOriginDeg).toBeCloseTo(102.5, 6);
    expect(figures.clampOriginDeg).toBeCloseTo(105, 6);
    // 8° offset: the curve lies 8 · 1.6 N·m under its line at 208.935°
    expect(Math.abs((figures.offsetYield?.angleDeg ?? 0) - 208.935)).toBeLessThan(1);
    // within the window of the slope
    expect(Math.abs((figures.yield?.angleDeg ?? 0) - HALF_SLOPE_DEG)).toBeLessThan(1.5);
    expect(figures.jointRate?.from10Deg).toBeCloseTo(75.38, 2);
    expect(figures.jointRate?.from50Deg).toBeCloseTo(40.62, 1);
    expect(figures.peakTorqueNm).toBeCloseTo(165.338, 3);
    expect(figures.finalAngleDeg).toBe(230);
    expect(figures.angleFromSnugDeg).toBeCloseTo(125, 6);
  });

  it('do not change where the angle is counted from elsewhere', () => {
    const { angleDeg, torqueNm } = madeCurve();
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), (offset) => {
        const moved = read({ angleDeg: angleDeg.map((deg) => deg + offset), torqueNm });
        const still = read({ angleDeg, torqueNm });
        expect(moved.slopeNmPerDeg).toBeCloseTo(still.slopeNmPerDeg ?? 0, 6);
        expect((moved.snug?.angleDeg ?? 0) - offset).toBeCloseTo(still.snug?.angleDeg ?? 0, 4);
        expect(moved.angleFromSnugDeg).toBeCloseTo(still.angleFromSnugDeg ?? 0, 4);
      }),
      { numRuns: 30 },
    );
  });

  it('grow with the unit of torque', () => {
    const { angleDeg, torqueNm } = madeCurve();
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (factor) => {
        const scaled = read({ angleDeg, torqueNm: torqueNm.map((nm) => nm * factor) });
        const own = read({ angleDeg, torqueNm });
        expect((scaled.slopeNmPerDeg ?? 0) / factor).toBeCloseTo(own.slopeNmPerDeg ?? 0, 6);
        expect((scaled.yield?.torqueNm ?? 0) / factor).toBeCloseTo(own.yield?.torqueNm ?? 0, 4);
        expect(scaled.snug?.angleDeg).toBeCloseTo(own.snug?.angleDeg ?? 0, 4);
      }),
      { numRuns: 30 },
    );
  });

  it('hardly change with the rate of sampling, and with repeated samples not at all', () => {
    for (const stepDeg of [0.02, 0.1, 0.25, 1, 2]) {
      const figures = read(madeCurve(stepDeg));
      expect(figures.slopeNmPerDeg).toBeCloseTo(SLOPE, 2);
      expect(Math.abs((figures.snug?.angleDeg ?? 0) - SNUG_DEG)).toBeLessThan(1);
      expect(Math.abs((figures.yield?.torqueNm ?? 0) - 150.5)).toBeLessThan(4.5);
    }
    const { angleDeg, torqueNm } = madeCurve();
    const twice = (values: readonly number[]) => values.flatMap((value) => [value, value]);
    const repeated = read({ angleDeg: twice(angleDeg), torqueNm: twice(torqueNm) });
    expect(repeated.slopeNmPerDeg).toBeCloseTo(SLOPE, 9);
    expect(repeated.snug?.angleDeg).toBeCloseTo(SNUG_DEG, 6);
  });
});

/** Lets go at an angle and takes the pull up again, as `back` tells of the angle. */
function letGoAt(atDeg: number, back: (deg: number, share: number, nm: number) => readonly [number, number][]) {
  const { angleDeg, torqueNm } = madeCurve();
  const samples: [number, number][] = [];
  for (const [i, deg] of angleDeg.entries()) {
    samples.push([deg, torqueNm[i]!]);
    if (deg === atDeg) samples.push(...back(deg, 0, torqueNm[i]!));
  }
  return { angleDeg: samples.map(([deg]) => deg), torqueNm: samples.map(([, nm]) => nm) };
}
const ramp = (from: number, to: number, steps: number): readonly number[] =>
  Array.from({ length: steps }, (_, i) => from + ((to - from) * (i + 1)) / steps);

describe('strokes', () => {
  const JOINED = { strokes: 1, slope: true, snug: true, end: true };
  const joined = (samples: Parameters<typeof typed>[0]) => {
    const { reseatStrokes, slopeNmPerDeg = 0, snug, finalAngleDeg } = read(samples);
    return {
      strokes: reseatStrokes,
      slope: Math.abs(slopeNmPerDeg / SLOPE - 1) < 0.005,
      snug: Math.abs((snug?.angleDeg ?? 0) - SNUG_DEG) < 1,
      end: Math.abs(finalAngleDeg - 230) < 1,
    };
  };

  it('join where the angle stands while torque is let go', () => {
    const stands = letGoAt(150, (deg, _, nm) =>
      [...ramp(nm, 0, 10), 0, 0, ...ramp(0, nm, 10)].map((torque) => [deg, torque] as [number, number]),
    );
    expect(joined(stands)).toEqual(JOINED);
  });

  it('join where the wrench unwinds and winds up again', () => {
    const windsUp = letGoAt(150, (deg, _, nm) =>
      [...ramp(nm, 0, 10), 0, 0, ...ramp(0, nm, 10)].map(
        (torque) => [deg - (nm - torque) / 15, torque] as [number, number],
      ),
    );
    expect(joined(windsUp)).toEqual(JOINED);
  });

  it('join where the ratchet runs back and the next stroke begins lower', () => {
    const { angleDeg, torqueNm } = letGoAt(150, (deg, _, nm) => [
      ...ramp(nm, 0, 10).map((torque) => [deg, torque] as [number, number]),
      ...ramp(0, -40, 20).map((way) => [deg + way, 0] as [number, number]),
      ...ramp(0, nm, 10).map((torque) => [deg - 40, torque] as [number, number]),
    ]);
    const last = angleDeg.lastIndexOf(110);
    expect(joined({ angleDeg: angleDeg.map((deg, i) => (i > last ? deg - 40 : deg)), torqueNm })).toEqual(JOINED);
  });

  it('join where the wrench counts its wind-up once more', () => {
    const { angleDeg, torqueNm } = letGoAt(150, (deg, _, nm) => [
      ...ramp(nm, 0, 10).map((torque) => [deg, torque] as [number, number]),
      ...ramp(0, nm, 20).map((torque) => [deg + torque / 15, torque] as [number, number]),
    ]);
    const more = 76 / 15;
    const last = angleDeg.findIndex((deg, i) => i > 300 && deg === 150 + more);
    expect(joined({ angleDeg: angleDeg.map((deg, i) => (i > last ? deg + more : deg)), torqueNm })).toEqual(JOINED);
  });

  it('are none where only samples dropped out', () => {
    const { angleDeg, torqueNm } = madeCurve();
    const holes = torqueNm.map((nm, i) => (i % 40 === 5 || i % 40 === 6 ? 0 : nm));
    const figures = read({ angleDeg, torqueNm: holes });
    expect(figures.reseatStrokes).toBe(0);
    expect(Math.abs((figures.slopeNmPerDeg ?? 0) / SLOPE - 1)).toBeLessThan(0.005);
  });

  it('leave out the tail of the release', () => {
    const { angleDeg, torqueNm } = madeCurve();
    const figures = read({
      angleDeg: [...angleDeg, ...ramp(230, 222, 20), 222, 222],
      torqueNm: [...torqueNm, ...ramp(165, 0, 20), 0, 0],
    });
    expect(figures.finalAngleDeg).toBe(230);
    expect(figures.finalTorqueNm).toBeCloseTo(165.338, 2);
    expect(figures.reseatStrokes).toBe(0);
  });
});
