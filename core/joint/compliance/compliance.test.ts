import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../../failure/parse.ts';
import { complianceOf } from './compliance.ts';
import { complianceRequestSchema } from './request.ts';

const M12 = {
  thread: 'M12',
  shank: [{ lengthMm: 20, diameterMm: 12 }],
  layers: [
    { thicknessMm: 25, outerDiameterMm: 40 },
    { thicknessMm: 15, outerDiameterMm: 40 },
  ],
  bearingOuterMm: 16.63,
  holeMm: 13.5,
};

function tried(input: unknown) {
  const request = parse(complianceRequestSchema, input);
  return request.ok ? complianceOf(request.value) : request;
}

function answer(input: unknown) {
  const result = tried(input);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}

describe('compliance', () => {
  it('adds up from its sections, whose shares make one', () => {
    const { boltSections, partSections, boltMmPerN, partsMmPerN } = answer(M12);
    for (const [sections, whole] of [
      [boltSections, boltMmPerN],
      [partSections, partsMmPerN],
    ] as const) {
      const sum = (key: 'complianceMmPerN' | 'shareOfWhole') =>
        sections.reduce((total, section) => total + section[key], 0);
      expect(sum('complianceMmPerN')).toBeCloseTo(whole, 18);
      expect(sum('shareOfWhole')).toBeCloseTo(1, 12);
    }
    expect(boltSections.map(({ part }) => part)).toEqual(['head', 'shank', 'thread', 'engaged thread', 'nut']);
  });

  it('shows a working that ends in its figures', () => {
    const { steps, boltMmPerN, partsMmPerN, loadFactor } = answer(M12);
    const valueOf = (symbol: string) => steps.find((step) => step.symbol === symbol)?.value;
    expect([valueOf('δ_S'), valueOf('δ_P'), valueOf('Φ_n')]).toEqual([
      expect.closeTo(boltMmPerN, 18),
      expect.closeTo(partsMmPerN, 18),
      loadFactor,
    ]);
    expect(steps.find(({ symbol }) => symbol === 'δ_S')).toMatchObject({
      formula: 'δ_SK + δ_1 + δ_Gew + δ_G + δ_M',
      withNumbers: '2.588·10⁻⁷ + 8.626·10⁻⁷ + 1.280·10⁻⁶ + 3.839·10⁻⁷ + 2.070·10⁻⁷',
    });
  });

  it('counts a second nut where a stud has no head', () => {
    expect(answer({ ...M12, headForm: 'stud' }).boltSections.map(({ part }) => part)).toEqual([
      'nut',
      'engaged thread',
      'shank',
      'thread',
      'engaged thread',
      'nut',
    ]);
  });

  it('gives a tapped joint one cone and a shorter share of the tapped part', () => {
    const { boltSections, partSections } = answer({ ...M12, jointType: 'tapped', nutModulusMPa: 70_000 });
    expect(boltSections.at(-1)).toMatchObject({ part: 'tapped part', lengthMm: 0.33 * 12, modulusMPa: 70_000 });
    expect(partSections.map(({ shape }) => shape)).toEqual(['cone', 'sleeve', 'sleeve']);
  });

  it('counts washers to the grip', () => {
    const washer = { thicknessMm: 2.5, outerDiameterMm: 24, holeMm: 13 };
    const { gripMm, partSections } = answer({
      ...M12,
      washers: [
        { ...washer, under: 'head' },
        { ...washer, under: 'nut' },
      ],
      gripMm: 45,
    });
    expect(gripMm).toBe(45);
    expect(partSections.at(0)).toMatchObject({ part: 'washer under the head', holeMm: 13 });
    expect(partSections.at(-1)).toMatchObject({ part: 'washer under the nut' });
  });

  it('lays washers of the nut from its face down', () => {
    const washers = [
      { under: 'nut', thicknessMm: 1, outerDiameterMm: 22 },
      { under: 'nut', thicknessMm: 3, outerDiameterMm: 30 },
    ];
    expect(
      answer({ ...M12, washers })
        .partSections.slice(-2)
        .map(({ lengthMm }) => lengthMm),
    ).toEqual([3, 1]);
  });

  it('says what it takes for granted', () => {
    const bare = { thread: 'M12', layers: [{ thicknessMm: 40 }] };
    expect(answer(bare).assumptions.map(({ code }) => code)).toEqual([
      'in-line',
      'bearing-circle-of',
      'hole-iso-273',
      'all-thread',
      'parts-as-cone',
    ]);
    expect(answer(bare).cone).toMatchObject({ form: 'cone' });
  });

  it('takes the bearing circle and the hole of the usual head', () => {
    expect(answer({ ...M12, bearingOuterMm: undefined, holeMm: undefined }).partsMmPerN).toBe(answer(M12).partsMmPerN);
    const socket = answer({ ...M12, headForm: 'socket', bearingOuterMm: undefined });
    expect(socket.assumptions.map(({ message }) => message)).toContain('The bearing circle is ISO 4762’s.');
    const stud = answer({ thread: '7/8-9 UNC', propertyClass: 'B7', headForm: 'stud', layers: [{ thicknessMm: 60 }] });
    expect(stud.assumptions).toContainEqual(
      expect.objectContaining({ code: 'bearing-circle-of', figures: { head: 'ASME B18.2.1 heavy hex' } }),
    );
  });

  it('takes the modulus of a material, and a given one before it', () => {
    const modulusOf = (layer: object) =>
      answer({ ...M12, layers: [{ thicknessMm: 40, ...layer }] }).partSections[0]?.modulusMPa;
    expect(modulusOf({ material: 'Aluminium 6061' })).toBe(69_000);
    expect(modulusOf({ material: 'Aluminium 6061', modulusMPa: 70_000 })).toBe(70_000);
    expect(modulusOf({})).toBe(205_000);
  });

  it('warns of a grip shorter than the engaged thread', () => {
    const thin = { ...M12, shank: [], layers: [{ thicknessMm: 9 }] };
    expect(answer({ ...thin, gripMm: 9 }).warnings).toMatchObject([{ field: 'gripMm' }]);
    expect(answer(thin).warnings).toMatchObject([{ field: 'layers', message: expect.stringContaining('9.6\u00a0mm') }]);
    expect(answer({ ...thin, engagementMm: 8 }).warnings).toEqual([]);
    expect(answer({ ...thin, engagementMm: 24 }).warnings).toHaveLength(1);
  });

  it('says where the figure of the exponential fit comes from, and gives none for mixed parts', () => {
    expect(answer(M12).exponentialFit).toMatchObject({ material: 'steel' });
    const mixed = [{ thicknessMm: 25 }, { thicknessMm: 15, modulusMPa: 70_000 }];
    expect(answer({ ...M12, layers: mixed })).not.toHaveProperty('exponentialFit');
    expect(answer({ ...M12, layers: [{ thicknessMm: 40, modulusMPa: 115_000 }] }).exponentialFit).toMatchObject({
      material: 'copper',
    });
    expect(answer({ ...M12, layers: [{ thicknessMm: 40, modulusMPa: 45_000 }] }).exponentialFit).toMatchObject({
      material: 'any',
    });
  });

  it.each([
    ['layers that do not add up to the grip', { gripMm: 42 }, 'layers', 'add up to 40 mm'],
    ['a shank longer than the grip', { shank: [{ lengthMm: 41, diameterMm: 12 }] }, 'shank', 'thread ends before'],
    ['a grip shorter than the engaged thread', { shank: [], layers: [{ thicknessMm: 5 }] }, 'layers', 'shorter than'],
    ['a measured grip shorter than that', { shank: [], layers: [{ thicknessMm: 5 }], gripMm: 5 }, 'gripMm', 'shorter'],
    ['a bearing circle inside the hole', { bearingOuterMm: 13 }, 'bearingOuterMm', 'inside the hole'],
    ['a bearing circle as wide as the hole', { bearingOuterMm: 13.5 }, 'bearingOuterMm', 'inside the hole'],
    ['a nut’s circle inside the hole', { nutBearingOuterMm: 13 }, 'nutBearingOuterMm', 'inside the hole'],
    ['a hole through which the bolt does not go', { holeMm: 11 }, 'holeMm', 'through'],
    [
      'a layer whose hole swallows the head',
      { layers: [{ thicknessMm: 40, holeMm: 17 }] },
      'layers[0].holeMm',
      'no ring',
    ],
    ['a layer with more hole than part', { layers: [{ thicknessMm: 40, outerDiameterMm: 13 }] }, 'holeMm', 'no ring'],
    [
      'a nut’s washer in a tapped joint',
      { jointType: 'tapped', washers: [{ under: 'nut', thicknessMm: 2, outerDiameterMm: 24 }] },
      'washers[0].under',
      'no nut',
    ],
    ['a thread that is none', { thread: 'M13' }, 'thread', 'no thread known'],
    [
      'a material that is none',
      { layers: [{ thicknessMm: 40, material: 'cheese' }] },
      'layers[0].material',
      'no material',
    ],
    [
      'a size without a usual head',
      { thread: 'M9', shank: [], holeMm: 10, bearingOuterMm: undefined },
      'bearingOuterMm',
      'M9',
    ],
    ['a size without a usual hole', { thread: 'M9', shank: [], holeMm: undefined }, 'holeMm', 'M9'],
    ['a class that the size does not have', { propertyClass: '8.9' }, 'propertyClass', 'no property class'],
    ['no layer', { layers: [] }, 'layers', 'too few'],
    ['a thickness of nothing', { layers: [{ thicknessMm: 0 }] }, 'layers[0].thicknessMm', 'too small'],
    ['a load that enters beyond the head', { loadIntroduction: 1.1 }, 'loadIntroduction', 'too large'],
  ])('refuses %s', (_, change, field, message) => {
    expect(tried({ ...M12, ...change })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field, message: expect.stringContaining(message) },
    });
  });
});

/** Hexagon head (ISO 4014, washer face, product grade A) and medium hole (ISO 273), from memory. */
const SEATS = [
  ['M8', 8, 11.63, 9],
  ['M10', 10, 14.63, 11],
  ['M12', 12, 16.63, 13.5],
  ['M16', 16, 22.49, 17.5],
  ['M20', 20, 28.19, 22],
  ['M24', 24, 33.61, 26],
] as const;

const ordinaryJoint = fc
  .record({
    seat: fc.constantFrom(...SEATS),
    slenderness: fc.double({ min: 2, max: 6, noNaN: true }),
    width: fc.double({ min: 2.5, max: 4, noNaN: true }),
    shank: fc.double({ min: 0, max: 0.8, noNaN: true }),
    modulusMPa: fc.constantFrom(70_000, 110_000, 205_000),
  })
  .map(({ seat: [thread, boltMm, bearingOuterMm, holeMm], slenderness, width, shank, modulusMPa }) => ({
    thread,
    bearingOuterMm,
    holeMm,
    shank: shank > 0 ? [{ lengthMm: shank * slenderness * boltMm, diameterMm: boltMm }] : [],
    layers: [{ thicknessMm: slenderness * boltMm, outerDiameterMm: width * bearingOuterMm, modulusMPa }],
  }));

describe('over ordinary joints', () => {
  it('both methods agree on the parts within the 30 % reported between textbook and finite elements', () => {
    // Lehnhoff, Ko and McKay, J. Mech. Des. 116 (1994) 550, abstract (read): 16 to 30 % between the two.
    fc.assert(
      fc.property(ordinaryJoint, (input) => {
        const { comparison } = answer(input);
        expect(Math.abs(comparison.parts - 1)).toBeLessThan(0.3);
      }),
    );
  });

  it('the cone’s angle lies about the 25° to 33° that the textbook names', () => {
    // Shigley, 9th ed., 8-5, after Osgood (from memory).
    fc.assert(
      fc.property(ordinaryJoint, (input) => {
        const degrees = (Math.atan(answer(input).cone.tangent) * 180) / Math.PI;
        expect(degrees).toBeGreaterThan(25);
        expect(degrees).toBeLessThan(33);
      }),
    );
  });

  it('frusta and exponential fit agree within 5 % for the bearing circle that both stand for', () => {
    // The textbook's own two examples, l/d 2.4 and 2.7, differ by 1.6 and 1.9 %; far from there the two part (15 % at 6).
    fc.assert(
      fc.property(ordinaryJoint, fc.double({ min: 2, max: 2.9, noNaN: true }), (input, slenderness) => {
        const boltMm = Number(input.thread.slice(1));
        const layers = [{ thicknessMm: slenderness * boltMm, modulusMPa: input.layers[0]?.modulusMPa }];
        const { exponentialFit, shigley } = answer({ ...input, shank: [], layers, bearingOuterMm: 1.5 * boltMm });
        const ratio = (exponentialFit?.partsMmPerN ?? 0) / shigley.partsMmPerN;
        expect(Math.abs(ratio - 1)).toBeLessThan(0.05);
      }),
    );
  });

  it('the load factor lies between nothing and all, by either method', () => {
    fc.assert(
      fc.property(ordinaryJoint, fc.double({ min: 0.01, max: 1, noNaN: true }), (input, loadIntroduction) => {
        const { loadFactor, shigley } = answer({ ...input, loadIntroduction });
        for (const factor of [loadFactor, shigley.loadFactor]) {
          expect(factor).toBeGreaterThan(0);
          expect(factor).toBeLessThan(1);
        }
      }),
    );
  });

  it('a longer bolt gives way more', () => {
    fc.assert(
      fc.property(ordinaryJoint, fc.double({ min: 0.1, max: 20, noNaN: true }), (input, moreMm) => {
        const longer = input.layers.map((layer) => ({ ...layer, thicknessMm: layer.thicknessMm + moreMm }));
        expect(answer({ ...input, layers: longer }).boltMmPerN).toBeGreaterThan(answer(input).boltMmPerN);
      }),
    );
  });
});
