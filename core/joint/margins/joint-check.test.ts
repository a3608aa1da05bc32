import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../../failure/parse.ts';
import { jointCheckOf } from './joint-check.ts';
import { CHECKS, type CheckName } from './margin.ts';
import { jointCheckRequestSchema } from './request.ts';

const M12 = {
  thread: 'M12',
  propertyClass: '8.8',
  shank: [{ lengthMm: 20, diameterMm: 12 }],
  layers: [
    { thicknessMm: 25, outerDiameterMm: 40 },
    { thicknessMm: 15, outerDiameterMm: 40 },
  ],
  preloadN: 41_900,
  tighteningFactor: 1.8,
  threadFriction: 0.14,
};

/** Every check at once. */
const LOADED = {
  ...M12,
  axialLoadN: 8000,
  axialLoadLowN: 2000,
  shearLoadN: 800,
  slipFriction: 0.15,
  clampNeededN: 5000,
  gasketAreaMm2: 400,
  gasketSeatingMPa: 20,
  gasketServiceMPa: 10,
  gasketLimitMPa: 150,
  headPartGrade: 'S355',
  nutPartGrade: 'S355',
  nutClass: '8',
  innerTensileMPa: 800,
};

function tried(input: unknown) {
  const request = parse(jointCheckRequestSchema, input);
  return request.ok ? jointCheckOf(request.value) : request;
}

function answer(input: unknown) {
  const result = tried(input);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}

const marginOf = (input: unknown, check: CheckName) => {
  const found = answer(input).margins.find((margin) => margin.check === check);
  if (found === undefined) throw new Error(`no margin ${check}`);
  return found;
};

describe('the forces of a joint check', () => {
  it('come down from the greatest preload by scatter and embedding', () => {
    const { assemblyMaxN, assemblyMinN, embeddingUm, embeddingLossN, preloadMinN, preloadMaxN } = answer({
      ...M12,
      roughnessUm: 8,
    });
    expect([assemblyMaxN, embeddingUm, preloadMaxN]).toEqual([41_900, 9.5, 41_900]);
    expect(assemblyMinN).toBeCloseTo(23_278, 0);
    expect(embeddingLossN).toBeCloseTo(2584.5, 0);
    expect(preloadMinN).toBeCloseTo(assemblyMinN - embeddingLossN, 9);
  });

  it('lie about the mean when a mean or a torque is told', () => {
    const mean = answer({ ...M12, preloadN: 30_000, preloadIs: 'mean' });
    expect(mean.assemblyMaxN / mean.assemblyMinN).toBeCloseTo(1.8, 12);
    expect((mean.assemblyMaxN + mean.assemblyMinN) / 2).toBeCloseTo(30_000, 6);
    const torque = answer({ ...M12, preloadN: undefined, torqueNm: 60, bearingFriction: 0.14 });
    const armMm = 1.75 / (2 * Math.PI) + (0.14 * 10.8634) / Math.sqrt(3) + (0.14 * 15.065) / 2;
    expect((torque.assemblyMaxN + torque.assemblyMinN) / 2).toBeCloseTo(60_000 / armMm, 0);
  });

  it('share an axial load by the load factor', () => {
    const { loadFactor, clampMinN, preloadMinN, boltMaxN, preloadMaxN } = answer({ ...M12, axialLoadN: 8000 });
    expect(clampMinN).toBeCloseTo(preloadMinN - (1 - loadFactor) * 8000, 6);
    expect(boltMaxN).toBeCloseTo(preloadMaxN + loadFactor * 8000, 6);
  });

  it('rise and fall with warmth, and never count what is not there', () => {
    const aluminium = { ...M12, layers: [{ thicknessMm: 40, material: 'aluminium 6061', outerDiameterMm: 40 }] };
    const cold = answer(aluminium);
    const warm = answer({ ...aluminium, boltRiseK: 80, partsRiseK: 80 });
    const frost = answer({ ...aluminium, boltRiseK: -60, partsRiseK: -60 });
    expect(warm.temperatureGainN).toBeGreaterThan(0);
    expect([warm.preloadMinN, warm.preloadMaxN]).toEqual([cold.preloadMinN, cold.preloadMaxN + warm.temperatureGainN]);
    expect(frost.temperatureGainN).toBeLessThan(0);
    expect([frost.preloadMinN, frost.preloadMaxN]).toEqual([
      cold.preloadMinN + frost.temperatureGainN,
      cold.preloadMaxN,
    ]);
  });

  it('take the larger factor of a way of tightening, and say so', () => {
    const { tighteningFactor, assumptions } = answer({
      ...M12,
      tighteningFactor: undefined,
      tighteningMethod: 'Angle controlled',
    });
    expect(tighteningFactor).toBe(1.4);
    expect(assumptions).toContainEqual(
      expect.objectContaining({ code: 'factor-of-method', figures: expect.objectContaining({ factor: 1.4 }) }),
    );
  });
});

describe('the margins of a joint check', () => {
  it('cover every check when all is told, each with its clause', () => {
    const { margins, notChecked } = answer(LOADED);
    expect(notChecked).toEqual([]);
    expect(margins.map(({ check }) => check).toSorted()).toEqual([...CHECKS].toSorted());
    for (const { clause, note, ratio, allowed, actual } of margins) {
      expect(clause.length * note.message.length).toBeGreaterThan(0);
      expect(ratio).toBeCloseTo(allowed / actual, 12);
    }
  });

  it('say first that they are estimates', () => {
    expect(answer(M12).assumptions[0]?.code).toBe('estimate');
  });

  it('name what could not be checked, and the field that would let it', () => {
    expect(
      answer({ ...M12, shearLoadN: 500, gasketSeatingMPa: 20 }).notChecked.map(({ check, field }) => [check, field]),
    ).toEqual([
      ['pressure-under-head', 'headPartGrade'],
      ['pressure-under-nut', 'nutPartGrade'],
      ['thread-engagement', 'innerTensileMPa'],
      ['stripping', 'innerTensileMPa'],
      ['slip', 'slipFriction'],
      ['gasket-seating', 'gasketAreaMm2'],
    ]);
    expect(
      answer({
        ...M12,
        thread: 'M64',
        jointType: 'tapped',
        shank: [],
        layers: [{ thicknessMm: 100 }],
        axialLoadN: 9,
        axialLoadLowN: 1,
        innerTensileMPa: 400,
        propertyClass: undefined,
        yieldStrengthMPa: 640,
        tensileStrengthMPa: 800,
      }).notChecked.map(({ check, field }) => [check, field]),
    ).toEqual([
      ['alternating-load', 'thread'],
      ['pressure-under-head', 'headPartGrade'],
      ['thread-engagement', 'engagementMm'],
      ['stripping', 'engagementMm'],
    ]);
  });

  it('put the bolt of the published table right at 90 % of yield', () => {
    // VDI 2230-1, table A1, M12 8.8, friction 0.14: 41.9 kN (secondary copy, read).
    expect(marginOf(M12, 'yield-at-assembly').ratio).toBeCloseTo(1, 2);
  });

  it('press less where a washer spreads the force', () => {
    const washer = { under: 'head', thicknessMm: 2.5, outerDiameterMm: 24, holeMm: 13 };
    const bare = marginOf(LOADED, 'pressure-under-head');
    const spread = marginOf({ ...LOADED, washers: [washer] }, 'pressure-under-head');
    expect(bare.actual / spread.actual).toBeGreaterThan(2);
    expect(bare.allowed).toBe(760);
    expect(marginOf({ ...LOADED, headPressureLimitMPa: 500 }, 'pressure-under-head').allowed).toBe(500);
  });

  it('find the shank that is thinner than the thread', () => {
    const waisted = { ...M12, preloadN: 30_000, shank: [{ lengthMm: 20, diameterMm: 8 }] };
    expect(marginOf(waisted, 'yield-at-assembly').ratio).toBeLessThan(
      marginOf({ ...M12, preloadN: 30_000 }, 'yield-at-assembly').ratio,
    );
  });

  it('do not let the nut of a tapped joint press or count', () => {
    const checks = answer({ ...LOADED, jointType: 'tapped', engagementMm: 14 }).margins.map(({ check }) => check);
    expect(checks).not.toContain('pressure-under-nut');
    expect(checks).not.toContain('nut-class');
    expect(checks).toContain('stripping');
  });

  it('fall short together when one does', () => {
    expect(answer({ ...LOADED, shearLoadN: 80 }).holds).toBe(true);
    const { holds, margins } = answer({ ...LOADED, shearLoadN: 5000 });
    expect(holds).toBe(false);
    expect(margins.filter((margin) => !margin.holds).map(({ check }) => check)).toEqual(['slip']);
  });

  it('end the working in each margin', () => {
    const { steps, margins, clampMinN } = answer(LOADED);
    expect(steps.find(({ symbol }) => symbol === 'F_KRmin')?.value).toBe(clampMinN);
    expect(steps.slice(-margins.length).map(({ value }) => value)).toEqual(margins.map(({ ratio }) => ratio));
  });

  it('bear less the higher the preload, and hold more', () => {
    const falling = [
      'yield-at-assembly',
      'proof-load',
      'yield-in-service',
      'pressure-under-head',
      'stripping',
      'gasket-crushing',
    ] as const;
    const rising = ['stays-closed', 'clamp-force', 'slip', 'gasket-seating', 'gasket-in-service'] as const;
    const preload = fc.double({ min: 25_000, max: 40_000, noNaN: true });
    fc.assert(
      fc.property(preload, fc.double({ min: 100, max: 4000, noNaN: true }), (preloadN, moreN) => {
        const ratios = (one: number) =>
          new Map(answer({ ...LOADED, preloadN: one }).margins.map(({ check, ratio }) => [check, ratio]));
        const [low, high] = [ratios(preloadN), ratios(preloadN + moreN)];
        const rise = (check: CheckName) => (high.get(check) ?? Number.NaN) - (low.get(check) ?? Number.NaN);
        for (const check of falling) expect(rise(check)).toBeLessThan(0);
        for (const check of rising) expect(rise(check)).toBeGreaterThan(0);
      }),
    );
  });

  it('shrink with scatter, embedding and load', () => {
    const more = { tighteningFactor: 2, embeddingUm: 30, axialLoadN: 12_000 };
    for (const [field, value] of Object.entries(more)) {
      expect(marginOf({ ...LOADED, [field]: value }, 'clamp-force').ratio).toBeLessThan(
        marginOf({ ...LOADED, embeddingUm: 11 }, 'clamp-force').ratio,
      );
    }
  });
});

describe('warnings of a joint check', () => {
  const warned = (change: object) =>
    answer({ ...M12, ...change }).warnings.map(({ field, message }) => [field, message]);

  it.each([
    ['a nut weaker than the bolt', { nutClass: '6' }, 'nutClass', 'weaker than a bolt of 8.8, which wants 8'],
    ['a thin nut', { nutClass: '05' }, 'nutClass', 'thin'],
    ['a joint that may open', { axialLoadN: 40_000 }, 'axialLoadN', 'may open'],
    ['a preload that may be lost', { tighteningFactor: 4, embeddingUm: 60 }, 'tighteningFactor', 'no preload at all'],
    [
      'a grip shorter than the engaged thread',
      { shank: [], layers: [{ thicknessMm: 8 }] },
      'layers',
      'shorter than the engaged thread',
    ],
  ])('tell of %s', (_, change, field, message) => {
    expect(warned(change)).toContainEqual([field, expect.stringContaining(message)]);
  });

  it('are silent about a nut that fits, and about one that no table knows', () => {
    expect(warned({ nutClass: '8' })).toEqual([]);
    expect(warned({ nutClass: '10' })).toEqual([]);
    expect(warned({ propertyClass: 'A4-80', preloadN: 30_000, nutClass: '8' })).toEqual([]);
  });

  it.each([
    ['a preload beyond the ultimate', { preloadN: 60_000 }, 'preloadN', 'breaks'],
    ['a torque beyond it', { preloadN: undefined, torqueNm: 200, bearingFriction: 0.1 }, 'torqueNm', 'breaks'],
    [
      'a class that does not exist for the size',
      { thread: 'M20', propertyClass: '9.8' },
      'propertyClass',
      'does not exist for M20',
    ],
    ['a nut class that does not exist', { nutClass: '7' }, 'nutClass', 'no class of nut'],
    ['no strength', { propertyClass: undefined }, 'propertyClass', 'missing'],
    ['neither preload nor torque', { preloadN: undefined }, 'preloadN', 'missing'],
    ['both', { torqueNm: 70 }, 'torqueNm', 'already'],
    ['a torque without bearing friction', { preloadN: undefined, torqueNm: 70 }, 'bearingFriction', 'missing'],
    [
      'a torque without thread friction',
      { preloadN: undefined, torqueNm: 70, threadFriction: undefined },
      'threadFriction',
      'missing',
    ],
    ['no tightening factor', { tighteningFactor: undefined }, 'tighteningFactor', 'missing'],
    [
      'a way of tightening that is none',
      { tighteningFactor: undefined, tighteningMethod: 'by luck' },
      'tighteningMethod',
      'no way of tightening',
    ],
    ['a factor below one', { tighteningFactor: 0.9 }, 'tighteningFactor', 'too small'],
    ['friction of nothing', { threadFriction: 0 }, 'threadFriction', 'too small'],
    ['friction above one', { slipFriction: 1.1 }, 'slipFriction', 'too large'],
    ['layers that do not add up', { gripMm: 44 }, 'layers', 'add up'],
    ['a bearing circle inside the hole', { bearingOuterMm: 13 }, 'bearingOuterMm', 'inside the hole'],
    [
      'a material that is none',
      { layers: [{ thicknessMm: 40, material: 'cheese' }] },
      'layers[0].material',
      'no material',
    ],
    ['a grade without a limit of pressure', { headPartGrade: 'cheese' }, 'headPartGrade', 'no material'],
    ['the same under the nut', { nutPartGrade: 'cheese' }, 'nutPartGrade', 'no material'],
  ])('refuse %s', (_, change, field, message) => {
    expect(tried({ ...M12, ...change })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field, message: expect.stringContaining(message) },
    });
  });
});
