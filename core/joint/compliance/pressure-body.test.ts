import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inSeries, type Layer, pressureBody } from './pressure-body.ts';

const plate = (thicknessMm: number, outerMm: number, modulusMPa = 205_000): Layer => ({
  name: 'plate',
  thicknessMm,
  modulusMPa,
  holeMm: 13.5,
  outerMm,
});

const complianceMmPerN = (layers: readonly Layer[], tangent = 0.5, nutMm: number | undefined = 16.63) =>
  inSeries(pressureBody(layers, { headMm: 16.63, nutMm }, tangent));

const shapes = (layers: readonly Layer[], tangent = 0.5) =>
  pressureBody(layers, { headMm: 16.63, nutMm: 16.63 }, tangent).map(({ shape, lengthMm }) => [
    shape,
    Number(lengthMm.toFixed(3)),
  ]);

describe('the body under pressure', () => {
  it('is two cones that meet in the middle of wide parts', () => {
    expect(shapes([plate(40, Infinity)])).toEqual([
      ['cone', 20],
      ['cone', 20],
    ]);
  });

  it('goes on as a sleeve where the cone has reached the edge', () => {
    expect(shapes([plate(40, 26.63)])).toEqual([
      ['cone', 10],
      ['sleeve', 10],
      ['sleeve', 10],
      ['cone', 10],
    ]);
  });

  it('is a sleeve alone in parts narrower than the bearing circle', () => {
    expect(shapes([plate(40, 16)])).toEqual([
      ['sleeve', 20],
      ['sleeve', 20],
    ]);
  });

  it('is one cone in a tapped joint', () => {
    const pieces = pressureBody([plate(40, Infinity)], { headMm: 16.63 }, 0.5);
    expect(pieces).toMatchObject([{ shape: 'cone', lengthMm: 40, fromMm: 16.63, toMm: expect.closeTo(56.63, 9) }]);
  });

  it('meets nearer to the wider of two bearing circles', () => {
    const pieces = pressureBody([plate(40, Infinity)], { headMm: 16.63, nutMm: 20.63 }, 0.5);
    expect(pieces.map(({ lengthMm, toMm }) => [lengthMm, toMm])).toEqual([
      [22, expect.closeTo(38.63, 9)],
      [18, expect.closeTo(38.63, 9)],
    ]);
  });

  it('widens again below a narrow washer', () => {
    const pieces = pressureBody([plate(3, 18), plate(40, Infinity)], { headMm: 16.63 }, 0.5);
    expect(
      pieces.map(({ shape, fromMm, toMm }) => [shape, Number(fromMm.toFixed(2)), Number(toMm.toFixed(2))]),
    ).toEqual([
      ['cone', 16.63, 18],
      ['sleeve', 18, 18],
      ['cone', 18, 58],
    ]);
  });

  it('does not mind into how many layers a part is cut', () => {
    const thickness = fc.double({ min: 0.5, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(thickness, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(20, 30, Infinity),
        (parts, outerMm) => {
          const gripMm = parts.reduce((sum, part) => sum + part, 0);
          const cut = complianceMmPerN(parts.map((part) => plate(part, outerMm)));
          expect(cut / complianceMmPerN([plate(gripMm, outerMm)])).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('gives way more the longer, the softer, the narrower it is', () => {
    const whole = complianceMmPerN([plate(40, 60)]);
    expect(complianceMmPerN([plate(41, 60)])).toBeGreaterThan(whole);
    expect(complianceMmPerN([plate(40, 60, 70_000)])).toBeCloseTo((whole * 205) / 70, 12);
    expect(complianceMmPerN([plate(40, 24)])).toBeGreaterThan(whole);
    expect(complianceMmPerN([plate(40, 60)], 0.4)).toBeGreaterThan(whole);
  });
});
