import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EngagedThread, neededEngagementMm, strippingLoad } from './stripping.ts';

const M12: EngagedThread = {
  majorMm: 12,
  pitchMm: 1.75,
  pitchDiameterMm: 10.863,
  minorMm: 10.106,
  boltShearMPa: 520,
  innerShearMPa: 360,
};

describe('stripping', () => {
  it('is the shear area times shear strength, less what bending takes: worked by hand', () => {
    const innerMm = ((Math.PI * 12) / 1.75) * (0.875 + 1.137 * Math.tan(Math.PI / 6));
    const boltMm = ((Math.PI * 10.106) / 1.75) * (0.875 + 0.757 * Math.tan(Math.PI / 6));
    const ratio = (360 * innerMm) / (520 * boltMm);
    expect(ratio).toBeCloseTo(0.9595, 4);
    const bending = 0.728 + 1.769 * ratio - 2.896 * ratio ** 2 + 1.296 * ratio ** 3;
    expect(strippingLoad(M12, 12)).toEqual({
      loadN: expect.closeTo((12 - 1.4) * 360 * innerMm * bending, 6),
      first: 'inner thread',
    });
  });

  it('begins in the bolt where the nut is hard', () => {
    expect(strippingLoad({ ...M12, innerShearMPa: 700 }, 12).first).toBe('bolt thread');
  });

  it('comes sooner in a nut that is pressed open', () => {
    const tapped = strippingLoad(M12, 12).loadN;
    expect(strippingLoad({ ...M12, acrossFlatsMm: 18 }, 12).loadN / tapped).toBeCloseTo(
      3.8 * 1.5 - 1.5 ** 2 - 2.61,
      12,
    );
    expect(strippingLoad({ ...M12, acrossFlatsMm: 40 }, 12).loadN).toBeCloseTo(tapped, 6);
  });

  it('bends without a step where the stronger thread changes sides', () => {
    const load = (innerShearMPa: number) => strippingLoad({ ...M12, innerShearMPa }, 12).loadN;
    const even = 360 / 0.9595;
    expect(load(even * 1.001) / load(even * 0.999)).toBeCloseTo(1, 2);
  });

  it('needs the engagement at which it equals the bolt’s breaking load', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10_000, max: 100_000, noNaN: true }),
        fc.double({ min: 100, max: 900, noNaN: true }),
        (breakingN, innerShearMPa) => {
          const thread = { ...M12, innerShearMPa };
          expect(strippingLoad(thread, neededEngagementMm(thread, breakingN)).loadN / breakingN).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('asks about 0.8 diameters of a nut as hard as the bolt, as standard nuts are high', () => {
    // ISO 4032, m about 0.8 to 0.9 d (from memory).
    const needed = neededEngagementMm({ ...M12, innerShearMPa: 520, acrossFlatsMm: 18 }, 800 * 84.27);
    expect(needed / 12).toBeGreaterThan(0.5);
    expect(needed / 12).toBeLessThan(0.9);
  });
});
