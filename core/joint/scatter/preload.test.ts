import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemblyTorque } from '../torque/assembly-torque.ts';
import { type PreloadInput, preload } from './preload.ts';
import type { Told } from './told.ts';

fc.configureGlobal({ seed: 24 });

const about = (
  value: number,
  standardUncertainty: number,
  distribution: 'normal' | 'rectangular' | 'triangular' = 'normal',
): Told => ({ value, standardUncertainty, distribution });

const M12: PreloadInput = {
  thread: 'M12',
  propertyClass: '8.8',
  torqueNm: 80,
  prevailingTorqueNm: 0,
  threadFriction: 0.12,
  bearingFriction: 0.12,
  sameLubricant: false,
  draws: 0,
  seed: 1,
  significantDigits: 1,
  edition: 'VDI 2230:2001',
};

const worked = (more: Partial<PreloadInput> = {}) => {
  const result = preload({ ...M12, ...more });
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

describe('the preload of a torque', () => {
  it('is the one that the torque was worked out for', () => {
    const input = fc.record({
      thread: fc.constantFrom('M6', 'M12', 'M12x1.25', 'M36', '3/4-10 UNC', '2-8 UN'),
      threadFriction: fc.double({ min: 0.04, max: 0.35, noNaN: true }),
      bearingFriction: fc.double({ min: 0.04, max: 0.35, noNaN: true }),
      preloadN: fc.double({ min: 100, max: 8000, noNaN: true }),
      prevailingTorqueNm: fc.double({ min: 0, max: 20, noNaN: true }),
    });
    const edition = 'VDI 2230:2001';
    fc.assert(
      fc.property(input, ({ preloadN, ...same }) => {
        const there = assemblyTorque({ ...same, preloadN, utilization: 0.9, edition });
        const torqueNm = there.ok ? there.value.torqueNm : Number.NaN;
        const back = preload({ ...M12, ...same, propertyClass: undefined, torqueNm });
        expect(back).toMatchObject({ ok: true });
        expect(back.ok && back.value.preloadN / preloadN).toBeCloseTo(1, 10);
      }),
    );
  });

  it('has no uncertainty when every figure is exact', () => {
    const { standardUncertaintyN, interval95N, preloadN, contributions, agreement } = worked({ draws: 1000 });
    expect(standardUncertaintyN).toBe(0);
    expect(interval95N).toEqual([preloadN, preloadN]);
    expect(contributions).toEqual([]);
    expect(agreement).toMatchObject({ agree: true });
  });
});

describe('the uncertainty of a preload', () => {
  it('adds relative uncertainties of torque and nut factor in squares', () => {
    // F = T/(K·d), so that v_F² = v_T² + v_K².
    const { standardUncertaintyN, preloadN, contributions } = worked({
      torqueNm: about(80, 1.6),
      threadFriction: undefined,
      bearingFriction: undefined,
      nutFactor: about(0.16, 0.016),
    });
    expect(standardUncertaintyN / preloadN).toBeCloseTo(Math.hypot(0.02, 0.1), 12);
    expect(contributions.map(({ quantity, share }) => [quantity, share])).toEqual([
      ['torqueNm', expect.closeTo(0.0004 / 0.0104, 12)],
      ['nutFactor', expect.closeTo(0.01 / 0.0104, 12)],
    ]);
  });

  it('has sensitivities that are the slopes of the preload', () => {
    const names = [
      'torqueNm',
      'prevailingTorqueNm',
      'threadFriction',
      'bearingFriction',
      'pitchDiameterMm',
      'bearingOuterMm',
      'holeMm',
    ] as const;
    const at = {
      torqueNm: 80,
      prevailingTorqueNm: 5,
      threadFriction: 0.12,
      bearingFriction: 0.13,
      pitchDiameterMm: 10.863,
      bearingOuterMm: 16.63,
      holeMm: 13.5,
    };
    const { contributions } = worked(Object.fromEntries(names.map((name) => [name, about(at[name], at[name] / 1000)])));
    expect(contributions.map(({ quantity }) => quantity)).toEqual(names);
    for (const { quantity, value, sensitivity } of contributions) {
      const step = value * 1e-5;
      const up = worked({ ...at, [quantity]: value + step }).preloadN;
      const down = worked({ ...at, [quantity]: value - step }).preloadN;
      expect(sensitivity / ((up - down) / (2 * step))).toBeCloseTo(1, 6);
    }
  });

  it('has contributions that add up to one', () => {
    const coefficient = fc.double({ min: 0.06, max: 0.3, noNaN: true });
    const relative = fc.double({ min: 0.001, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(coefficient, coefficient, relative, relative, fc.boolean(), (g, k, u, v, sameLubricant) => {
        const { contributions } = worked({
          torqueNm: about(80, 80 * v),
          threadFriction: about(g, g * u),
          bearingFriction: about(k, k * u),
          sameLubricant,
        });
        expect(contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is larger when one lubricant is on both surfaces', () => {
    const frictions = { threadFriction: about(0.12, 0.012), bearingFriction: about(0.12, 0.012) };
    const apart = worked({ ...frictions, draws: 100_000 });
    const together = worked({ ...frictions, sameLubricant: true, draws: 100_000 });
    expect(together.propagation.standardUncertaintyN).toBeGreaterThan(1.3 * apart.propagation.standardUncertaintyN);
    expect(together.monteCarlo?.standardUncertaintyN).toBeGreaterThan(
      1.3 * (apart.monteCarlo?.standardUncertaintyN ?? 0),
    );
    expect(together.steps.at(-1)?.formula).toBe('√((u_1 + u_2)²)');
  });
});

describe('propagation and drawing side by side', () => {
  it('agree where the preload is linear: in the torque', () => {
    const { agreement, method, monteCarlo, propagation } = worked({
      torqueNm: about(80, 4),
      draws: 1_000_000,
      significantDigits: 2,
    });
    expect(agreement?.agree).toBe(true);
    expect(method).toBe('propagation');
    expect(monteCarlo?.meanN).toBeCloseTo(propagation.preloadN, -2);
    expect((monteCarlo?.standardUncertaintyN ?? 0) / propagation.standardUncertaintyN).toBeCloseTo(1, 2);
  });

  it('are flagged where they disagree, and then the drawing is told', () => {
    const both = worked({ threadFriction: about(0.12, 0.024), bearingFriction: about(0.12, 0.024), draws: 200_000 });
    expect(both.agreement).toMatchObject({ agree: false });
    expect(both.method).toBe('monte-carlo');
    expect(both.interval95N).toEqual(both.monteCarlo?.interval95N);
    // The reciprocal of a scattered friction leans to high preloads.
    expect(both.monteCarlo?.meanN).toBeGreaterThan(both.preloadN);
    expect(both.interval95N[0]).toBeGreaterThan(both.propagation.interval95N[0]);
  });

  it('give the same figures for the same seed and others for another', () => {
    const drawn = (seed: number) => worked({ torqueNm: about(80, 4), draws: 5000, seed }).monteCarlo?.meanN;
    expect(drawn(3)).toBe(drawn(3));
    expect(drawn(3)).not.toBe(drawn(4));
  });

  it('tell what lies outside of a window', () => {
    const window = { lowerPreloadN: 38_000, upperPreloadN: 45_000 };
    const both = worked({ torqueNm: about(80, 4), draws: 200_000, ...window });
    // 2067 N about 41 342 N: 1.617 standard deviations below, 1.770 above.
    expect(both.propagation).toMatchObject({
      probabilityBelowN: expect.closeTo(0.053, 3),
      probabilityAboveN: expect.closeTo(0.0384, 3),
    });
    expect(both.monteCarlo?.probabilityBelowN).toBeCloseTo(0.053, 2);
    expect(both.monteCarlo?.probabilityAboveN).toBeCloseTo(0.0384, 2);
    expect(worked()).not.toHaveProperty('probabilityBelowN');
  });

  it('draw a picture of nearly all draws', () => {
    const { monteCarlo } = worked({ torqueNm: about(80, 4), draws: 10_000 });
    const counts = monteCarlo?.histogram.counts ?? [];
    expect(counts).toHaveLength(60);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(9990);
  });
});

describe('what cannot be is refused with its field', () => {
  it.each<[string, Partial<PreloadInput>, string, string]>([
    ['a torque below the prevailing torque', { torqueNm: 8, prevailingTorqueNm: 9 }, 'torqueNm', 'nothing is left'],
    [
      'a friction whose distribution reaches zero',
      { threadFriction: about(0.1, 0.06, 'rectangular') },
      'threadFriction.standardUncertainty',
      'reaches zero',
    ],
    [
      'a normal friction with much below zero',
      { bearingFriction: about(0.1, 0.03) },
      'bearingFriction.standardUncertainty',
      'reaches zero',
    ],
    [
      'one lubricant with two distributions',
      {
        sameLubricant: true,
        threadFriction: about(0.12, 0.01),
        bearingFriction: about(0.12, 0.01, 'triangular'),
      },
      'bearingFriction.distribution',
      'one distribution',
    ],
    ['a bearing circle inside of the hole', { bearingOuterMm: about(13, 0.1) }, 'bearingOuterMm', 'inside the hole'],
    ['no friction', { threadFriction: undefined }, 'threadFriction', 'missing'],
    ['friction and nut factor', { nutFactor: 0.2 }, 'nutFactor', 'both'],
    ['a class that does not exist for the size', { thread: 'M20', propertyClass: '9.8' }, 'propertyClass', 'not exist'],
  ])('%s', (_, wrong, field, message) => {
    expect(preload({ ...M12, ...wrong })).toMatchObject({
      failure: { kind: 'invalid', field, message: expect.stringContaining(message) },
    });
  });

  it('but a torque that yields or breaks the bolt is only told, for it may have been applied', () => {
    expect(worked({ torqueNm: 95 }).warnings).toMatchObject([
      { field: 'torqueNm', message: expect.stringContaining('yields') },
    ]);
    expect(worked({ torqueNm: 150 }).warnings).toMatchObject([
      { field: 'torqueNm', message: expect.stringContaining('breaks') },
    ]);
  });
});
