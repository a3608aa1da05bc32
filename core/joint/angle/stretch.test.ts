import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boltLaw } from './bolt-law.ts';
import { preloadAtTravelN, type Stretch, travelMm, twistOf, ultimatePreloadN, yieldPreloadN } from './stretch.ts';

const M12_8_8 = { yieldMPa: 640, tensileMPa: 800 };
const stretch = (kind: 'bilinear' | 'smooth', twist = 1): Stretch => ({
  elasticMmPerN: 3.68e-6,
  sections: [{ lengthMm: 26, areaMm2: 84.27, twist }],
  strength: M12_8_8,
  law: boltLaw(kind, M12_8_8, 0.05),
});

describe('the law of the steel', () => {
  it.each(['bilinear', 'smooth'] as const)('%s gives the uniform strain at the tensile strength', (kind) => {
    expect(boltLaw(kind, M12_8_8, 0.05)(800)).toBeCloseTo(0.05, 12);
  });

  it('gives 0.2 % at yield where it is smooth, and nothing where it is bilinear', () => {
    expect(boltLaw('smooth', M12_8_8, 0.05)(640)).toBe(0.002);
    expect(boltLaw('bilinear', M12_8_8, 0.05)(640)).toBe(0);
  });
});

describe('a bolt that is stretched', () => {
  it('yields and breaks at its strength over its area, sooner when twisted', () => {
    expect(yieldPreloadN(stretch('bilinear'))).toBeCloseTo(640 * 84.27, 6);
    expect(ultimatePreloadN(stretch('bilinear'))).toBeCloseTo(800 * 84.27, 6);
    expect(yieldPreloadN(stretch('bilinear', 1.25))).toBeCloseTo((640 * 84.27) / 1.25, 6);
  });

  it('is twisted as the guideline’s assembly stress: M12, friction 0.14 gives 41.9 kN at 90 % of 640 MPa', () => {
    // VDI 2230-1, table A1, M12 8.8 (secondary copy, read).
    const d0 = Math.sqrt((4 * 84.27) / Math.PI);
    const armMm = 1.75 / (2 * Math.PI) + (0.14 * 10.863) / Math.sqrt(3);
    expect((0.9 * 640 * 84.27) / twistOf(d0, armMm) / 41_900).toBeCloseTo(1, 2);
  });

  it('stretches in proportion below yield', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 53_000, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (preloadN, part) => {
          const joint = stretch('bilinear');
          expect(travelMm(joint, part * preloadN) / travelMm(joint, preloadN)).toBeCloseTo(part, 12);
        },
      ),
    );
  });

  it.each(['bilinear', 'smooth'] as const)('gives the preload back from its travel, %s', (kind) => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 67_000, noNaN: true }), (preloadN) => {
        const joint = stretch(kind);
        expect(preloadAtTravelN(joint, travelMm(joint, preloadN)) / preloadN).toBeCloseTo(1, 9);
      }),
    );
  });

  it('takes no more than what breaks it', () => {
    expect(preloadAtTravelN(stretch('smooth'), 50)).toBeCloseTo(800 * 84.27, 6);
  });

  it('stretches ever more for the same rise', () => {
    const joint = stretch('smooth');
    const travels = [10_000, 30_000, 50_000, 60_000, 65_000].map(
      (preloadN) => travelMm(joint, preloadN + 1) - travelMm(joint, preloadN),
    );
    expect(travels).toEqual(travels.toSorted((a, b) => a - b));
  });
});
