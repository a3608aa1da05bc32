import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { preloadAtStress, shankStress } from './shank-stress.ts';
import type { Friction, ThreadAndBearing } from './thread-and-bearing.ts';
import { torqueArms } from './thread-and-bearing.ts';
import { frictionForNutFactor, nutFactorOf, preloadForTorque, torqueForPreload } from './torque-for-preload.ts';

fc.configureGlobal({ seed: 24 });

const coefficient = fc.double({ min: 0.01, max: 0.5, noNaN: true });
const frictions = fc.record({ thread: coefficient, bearing: coefficient });
const preloads = fc.double({ min: 100, max: 1e6, noNaN: true });

/** Any thread of sense: pitch a tenth to a fifth of the diameter, bearing ring of a head. */
const geometries: fc.Arbitrary<ThreadAndBearing> = fc
  .record({
    d: fc.double({ min: 3, max: 100, noNaN: true }),
    pitchShare: fc.double({ min: 0.04, max: 0.2, noNaN: true }),
    hole: fc.double({ min: 1, max: 1.3, noNaN: true }),
    face: fc.double({ min: 1.05, max: 2, noNaN: true }),
  })
  .map(({ d, pitchShare, hole, face }) => ({
    majorDiameterMm: d,
    pitchMm: d * pitchShare,
    pitchDiameterMm: d * (1 - 0.649519 * pitchShare),
    sectionDiameterMm: d * (1 - 0.938194 * pitchShare),
    holeMm: d * hole,
    bearingOuterMm: d * hole * face,
  }));

const M12: ThreadAndBearing = {
  majorDiameterMm: 12,
  pitchMm: 1.75,
  pitchDiameterMm: 10.8633,
  sectionDiameterMm: 10.3582,
  bearingOuterMm: 16.63,
  holeMm: 13.5,
};

describe('torque and preload', () => {
  it('are inverses', () => {
    fc.assert(
      fc.property(geometries, frictions, preloads, (geometry, friction, preloadN) => {
        const { torqueNm } = torqueForPreload(preloadN, geometry, friction);
        expect(preloadForTorque(torqueNm, geometry, friction) / preloadN).toBeCloseTo(1, 12);
      }),
    );
  });

  it('rise with friction for the torque and fall for the preload', () => {
    const more = fc.double({ min: 0.001, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(geometries, frictions, more, more, (geometry, friction, thread, bearing) => {
        for (const rougher of [
          { ...friction, thread: friction.thread + thread },
          { ...friction, bearing: friction.bearing + bearing },
        ] satisfies Friction[]) {
          expect(torqueForPreload(1e4, geometry, rougher).torqueNm).toBeGreaterThan(
            torqueForPreload(1e4, geometry, friction).torqueNm,
          );
          expect(preloadForTorque(100, geometry, rougher)).toBeLessThan(preloadForTorque(100, geometry, friction));
        }
      }),
    );
  });

  it('divide into shares that add up to one, none of them negative', () => {
    fc.assert(
      fc.property(geometries, frictions, (geometry, friction) => {
        const { pitch, thread, bearing } = torqueForPreload(1, geometry, friction).shares;
        expect(pitch + thread + bearing).toBeCloseTo(1, 14);
        expect(Math.min(pitch, thread, bearing)).toBeGreaterThan(0);
      }),
    );
  });
});

describe('the nut factor', () => {
  it('is T over F times d, and leads back to the friction when both are alike', () => {
    fc.assert(
      fc.property(geometries, coefficient, (geometry, both) => {
        const friction = { thread: both, bearing: both };
        const nutFactor = nutFactorOf(geometry, friction);
        expect((1000 * torqueForPreload(1, geometry, friction).torqueNm) / geometry.majorDiameterMm).toBeCloseTo(
          nutFactor,
          12,
        );
        expect(frictionForNutFactor(nutFactor, geometry)).toBeCloseTo(both, 12);
      }),
    );
  });
});

describe('the preload at a stress', () => {
  it('brings exactly that stress, also with a prevailing torque', () => {
    const share = fc.double({ min: 0, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        geometries,
        frictions,
        share,
        fc.constantFrom('VDI 2230:2001', 'VDI 2230:1986'),
        (geometry, friction, prevailing, edition) => {
          const limitMPa = 500;
          const { pitchMm, threadMm } = torqueArms(geometry, friction);
          // The twist that alone would give the limit, times the share.
          const divisor = edition === 'VDI 2230:2001' ? 12 : 16;
          const wholeNm = (limitMPa * Math.PI * geometry.sectionDiameterMm ** 3) / (Math.sqrt(3) * divisor * 1000);
          const prevailingNm = prevailing * wholeNm;
          const preloadN = preloadAtStress(limitMPa, pitchMm + threadMm, prevailingNm, geometry, edition) ?? Number.NaN;
          const twistNm = (preloadN * (pitchMm + threadMm)) / 1000 + prevailingNm;
          expect(shankStress(preloadN, twistNm, geometry, edition).vonMisesMPa / limitMPa).toBeCloseTo(1, 10);
        },
      ),
    );
  });

  it('falls with friction and with the prevailing torque', () => {
    const at = (friction: number, prevailingNm: number) => {
      const { pitchMm, threadMm } = torqueArms(M12, { thread: friction, bearing: friction });
      return preloadAtStress(576, pitchMm + threadMm, prevailingNm, M12) ?? 0;
    };
    expect(at(0.1, 0)).toBeGreaterThan(at(0.14, 0));
    expect(at(0.1, 0)).toBeGreaterThan(at(0.1, 10));
  });

  it('is none when the prevailing torque alone twists the shank to its limit', () => {
    expect(preloadAtStress(576, 1, 500, M12)).toBeUndefined();
  });

  it('was smaller in the edition of 1986, which reckoned the torsion elastic', () => {
    const { pitchMm, threadMm } = torqueArms(M12, { thread: 0.12, bearing: 0.12 });
    const of = (edition: 'VDI 2230:2001' | 'VDI 2230:1986') =>
      preloadAtStress(576, pitchMm + threadMm, 0, M12, edition) ?? 0;
    expect(of('VDI 2230:1986') / of('VDI 2230:2001')).toBeCloseTo(0.927, 3);
  });
});
