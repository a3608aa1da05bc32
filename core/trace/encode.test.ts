import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeSamples, encodeSamples, type KeptSamples } from './encode.ts';
import { madeCurve } from './testing/made-curve.ts';

fc.configureGlobal({ seed: 24 });

const samplesOf = (figure: fc.Arbitrary<number>) =>
  fc.array(fc.tuple(figure, figure, figure), { maxLength: 60 }).map(
    (rows): KeptSamples => ({
      timeS: rows.map(([time]) => time),
      angleDeg: rows.map(([, angle]) => angle),
      torqueNm: rows.map(([, , torque]) => torque),
    }),
  );
// JSON, in which records are written, knows no negative zero either
const plain = (value: number): number => value + 0;
const figure = fc.double({ noNaN: true, noDefaultInfinity: true }).map(plain);
const stepped = fc
  .tuple(fc.integer({ min: -2_000_000, max: 2_000_000 }), fc.integer({ min: 0, max: 6 }))
  .map(([steps, decimals]) => plain(steps / 10 ** decimals));

describe('kept samples', () => {
  it('come back to the last digit, whatever they are', () => {
    fc.assert(
      fc.property(fc.oneof(samplesOf(figure), samplesOf(stepped)), (samples) => {
        expect(decodeSamples(encodeSamples(samples))).toEqual({ ok: true, value: samples });
      }),
    );
  });

  it('are refused where bytes are cut, added or of another form, and never break', () => {
    const { angleDeg, torqueNm } = madeCurve(5);
    const bytes = encodeSamples({ timeS: angleDeg.map((deg) => deg / 20), angleDeg, torqueNm });
    for (let length = 0; length < bytes.length; length++) {
      expect(decodeSamples(bytes.slice(0, length)).ok).toBe(false);
    }
    expect(decodeSamples(Uint8Array.of(...bytes, 0)).ok).toBe(false);
    expect(decodeSamples(Uint8Array.of(9, ...bytes.slice(1)))).toMatchObject({ failure: { field: 'samples' } });
    fc.assert(fc.property(fc.uint8Array({ maxLength: 200 }), (any) => typeof decodeSamples(any).ok === 'boolean'));
  });

  it('take under five bytes a sample where a device tells tenths', () => {
    const { angleDeg, torqueNm } = madeCurve(0.1);
    const tenths = (values: readonly number[]) => values.map((value) => Math.round(value * 10) / 10);
    const timeS = angleDeg.map((_, i) => i / 1000);
    const samples = { timeS, angleDeg: tenths(angleDeg), torqueNm: tenths(torqueNm) };
    const bytes = encodeSamples(samples);
    expect(bytes.length / timeS.length).toBeLessThan(5);
    expect(bytes.length).toBeLessThan(JSON.stringify(samples).length / 4);
  });
});
