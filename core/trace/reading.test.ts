import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingOf, type TraceSamples } from './reading.ts';

fc.configureGlobal({ seed: 24 });

interface Motion {
  readonly seconds: number;
  readonly degPerS: number;
}

/** A pull at so many samples a second, shown in steps of the angle's resolution; torque rises 2 N·m a degree. */
function pulled(motions: readonly Motion[], rate = 1000, resolutionDeg = 0): TraceSamples {
  const [timeS, angleDeg, torqueNm]: [number[], number[], number[]] = [[0], [0], [0]];
  let turnedDeg = 0;
  for (const { seconds, degPerS } of motions) {
    for (let i = 0; i < Math.round(seconds * rate); i++) {
      turnedDeg += degPerS / rate;
      timeS.push(timeS.length / rate);
      angleDeg.push(resolutionDeg > 0 ? Math.floor(turnedDeg / resolutionDeg + 1e-9) * resolutionDeg : turnedDeg);
      torqueNm.push(turnedDeg * 2);
    }
  }
  return { timeS, angleDeg, torqueNm };
}

describe('reading of a trace', () => {
  it('is its peak torque, its final angle and its fastest turning', () => {
    const reading = readingOf(
      pulled([
        { seconds: 1, degPerS: 30 },
        { seconds: 0.5, degPerS: 80 },
      ]),
    );
    expect(reading.peakTorqueNm).toBeCloseTo(140, 6);
    expect(reading.finalAngleDeg).toBeCloseTo(70, 6);
    expect(reading.fastestDegPerS).toBeCloseTo(80, 1);
  });

  it('keeps the peak where torque fell again', () => {
    const reading = readingOf({ timeS: [0, 1, 2], angleDeg: [0, 10, 20], torqueNm: [0, 90, 40] });
    expect(reading).toEqual({ peakTorqueNm: 90, finalAngleDeg: 20, fastestDegPerS: 10 });
  });

  it('takes nothing off for the backward strokes of a ratchet, and does not time the way back up', () => {
    const strokes = [
      { seconds: 1, degPerS: 30 },
      { seconds: 0.2, degPerS: -140 },
      { seconds: 0.1, degPerS: 280 },
    ];
    const reading = readingOf(pulled([...strokes, { seconds: 1, degPerS: 40 }]));
    expect(reading.finalAngleDeg).toBeCloseTo(70, 6);
    expect(reading.fastestDegPerS).toBeCloseTo(40, 1);
  });

  it('shows a jerk that is shorter than the window', () => {
    const jerk = [
      { seconds: 1, degPerS: 0 },
      { seconds: 0.03, degPerS: 300 },
      { seconds: 1, degPerS: 10 },
    ];
    const reading = readingOf(pulled(jerk));
    // 9 degrees in 30 ms, then 0.2 in the 20 ms after: 184 a second over 50 ms; at the least what fell inside
    expect(reading.fastestDegPerS).toBeGreaterThan(170);
    expect(reading.fastestDegPerS).toBeLessThan(190);
  });

  it('is not fooled by a display of whole degrees', () => {
    const speed = fc.double({ min: 5, max: 200, noNaN: true });
    fc.assert(
      fc.property(speed, (degPerS) => {
        const { fastestDegPerS } = readingOf(pulled([{ seconds: 2, degPerS }], 1000, 1));
        expect(fastestDegPerS / degPerS).toBeGreaterThan(0.95);
        expect(fastestDegPerS / degPerS).toBeLessThan(1.05);
      }),
    );
  });

  it('stays finite where time stamps repeat or run back', () => {
    const reading = readingOf({
      timeS: [0, 0.1, 0.1, 0.1, 0.2, 0.05, 0.15],
      angleDeg: [0, 2, 3, 4, 6, 7, 9],
      torqueNm: [0, 1, 2, 3, 4, 5, 6],
    });
    expect(reading.finalAngleDeg).toBe(9);
    expect(reading.fastestDegPerS).toBeGreaterThan(15);
    expect(reading.fastestDegPerS).toBeLessThanOrEqual(40);
  });

  it('never tells more than the angle turned in all over the window', () => {
    const sample = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: -5, max: 90, noNaN: true }));
    fc.assert(
      fc.property(fc.array(sample, { minLength: 1, maxLength: 40 }), (samples) => {
        const angleDeg = samples.map(([, angle]) => angle);
        const reading = readingOf({ timeS: samples.map(([time]) => time), angleDeg, torqueNm: angleDeg });
        expect(reading.finalAngleDeg).toBe(Math.max(...angleDeg));
        expect(reading.peakTorqueNm).toBe(Math.max(...angleDeg));
        expect(reading.fastestDegPerS).toBeGreaterThanOrEqual(0);
        expect(reading.fastestDegPerS).toBeLessThanOrEqual((reading.finalAngleDeg - angleDeg[0]!) / 0.05 + 1e-6);
      }),
    );
  });

  it('of a pull shorter than the window tells at least what was turned', () => {
    expect(readingOf(pulled([{ seconds: 0.02, degPerS: 100 }])).fastestDegPerS).toBeCloseTo(40, 6);
  });

  it('takes typed arrays as well', () => {
    const { timeS, angleDeg, torqueNm } = pulled([{ seconds: 1, degPerS: 20 }]);
    const typed = {
      timeS: Float64Array.from(timeS),
      angleDeg: Float64Array.from(angleDeg),
      torqueNm: Float64Array.from(torqueNm),
    };
    expect(readingOf(typed)).toEqual(readingOf({ timeS, angleDeg, torqueNm }));
  });
});
