import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../../failure/parse.ts';
import { tighteningAngleRequestSchema } from './request.ts';
import { tighteningAngleOf } from './tightening-angle.ts';

const M12 = {
  thread: 'M12',
  propertyClass: '8.8',
  shank: [{ lengthMm: 20, diameterMm: 12 }],
  layers: [{ thicknessMm: 40, outerDiameterMm: 40 }],
  threadFriction: 0.12,
  bearingFriction: 0.12,
  snugTorqueNm: 20,
};

function tried(input: unknown) {
  const request = parse(tighteningAngleRequestSchema, input);
  return request.ok ? tighteningAngleOf(request.value) : request;
}

function answer(input: unknown) {
  const result = tried(input);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}

describe('tightening angle', () => {
  it('is the travel of both springs over the pitch', () => {
    const { angleDeg, snugPreloadN, preloadN, slopeNPerDeg } = answer({ ...M12, preloadN: 35_000 });
    expect(slopeNPerDeg).toBeCloseTo(1322.5, 0);
    expect(angleDeg).toBeCloseTo((35_000 - snugPreloadN) / slopeNPerDeg, 9);
    expect(preloadN).toBe(35_000);
  });

  it('turns further than the bolt alone would ask for', () => {
    const { angleDeg, boltAloneAngleDeg = 0 } = answer({ ...M12, preloadN: 35_000 });
    expect(boltAloneAngleDeg).toBeLessThan(angleDeg);
    expect(boltAloneAngleDeg).toBeGreaterThan(angleDeg / 2);
  });

  it('tells the preload of an angle, the inverse', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12_000, max: 53_000, noNaN: true }),
        fc.constantFrom('bilinear', 'smooth'),
        (preloadN, boltLaw) => {
          const { angleDeg } = answer({ ...M12, boltLaw, preloadN });
          expect(answer({ ...M12, boltLaw, angleDeg }).preloadN / preloadN).toBeCloseTo(1, 8);
        },
      ),
    );
  });

  it('grows in proportion to the preload below yield', () => {
    const input = { ...M12, snugTorqueNm: undefined, snugPreloadN: 0 };
    fc.assert(
      fc.property(fc.double({ min: 100, max: 42_000, noNaN: true }), (preloadN) => {
        const { angleDeg, slopeNPerDeg, isPastYield, stayingMm } = answer({ ...input, preloadN });
        expect([isPastYield, stayingMm]).toEqual([false, 0]);
        expect((angleDeg * slopeNPerDeg) / preloadN).toBeCloseTo(1, 9);
      }),
    );
  });

  it('turns further for the same preload past yield, and says so', () => {
    const elastic = answer({ ...M12, propertyClass: undefined, preloadN: 52_000 });
    const plastic = answer({ ...M12, preloadN: 52_000 });
    expect(plastic.isPastYield).toBe(true);
    expect(plastic.angleDeg).toBeGreaterThan(elastic.angleDeg);
    expect(plastic.stayingMm).toBeGreaterThan(0);
    expect(plastic.warnings).toContainEqual(expect.objectContaining({ code: 'past-yield', field: 'preloadN' }));
    expect(elastic).not.toHaveProperty('yieldPreloadN');
    expect(elastic.assumptions).toContainEqual(expect.objectContaining({ code: 'strength-untold' }));
  });

  it('says which law of the steel it assumes', () => {
    expect(answer({ ...M12, angleDeg: 60 }).assumptions).toContainEqual(
      expect.objectContaining({ code: 'law-bilinear', message: expect.stringMatching(/at 5\u00a0% plastic strain/) }),
    );
    expect(answer({ ...M12, angleDeg: 60, boltLaw: 'smooth' }).assumptions).toContainEqual(
      expect.objectContaining({ code: 'law-smooth' }),
    );
  });

  it('yields sooner when friction twists the bolt', () => {
    const untwisted = answer({
      ...M12,
      threadFriction: undefined,
      bearingFriction: undefined,
      snugTorqueNm: undefined,
      snugPreloadN: 5000,
      angleDeg: 20,
    });
    expect(answer({ ...M12, angleDeg: 20 }).yieldPreloadN).toBeLessThan(untwisted.yieldPreloadN ?? 0);
    expect(untwisted).not.toHaveProperty('finalTorqueNm');
    expect(untwisted.assumptions).toContainEqual(expect.objectContaining({ code: 'torsion-left-out' }));
  });

  it('expects the final torque between the ends of friction, elastic as reckoned by hand', () => {
    const { torqueWindow } = answer({ ...M12, angleDeg: 15, frictionLow: 0.1, frictionHigh: 0.14 });
    const armMm = (mu: number) => 1.75 / (2 * Math.PI) + (mu * 10.8634) / Math.sqrt(3) + (mu * 15.065) / 2;
    const turnN = 15 * 1322.5;
    expect(torqueWindow?.lowNm).toBeCloseTo(20 + (turnN * armMm(0.1)) / 1000, 1);
    expect(torqueWindow?.highNm).toBeCloseTo(20 + (turnN * armMm(0.14)) / 1000, 1);
    expect(torqueWindow?.preloadLowN).toBeCloseTo(20_000 / armMm(0.14) + turnN, -1);
    expect(torqueWindow?.breaks).toBe(false);
  });

  it('keeps the expected torque within its window', () => {
    const friction = fc.double({ min: 0.08, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(friction, friction, fc.integer({ min: 0, max: 90 }), (threadFriction, bearingFriction, angleDeg) => {
        const input = { ...M12, threadFriction, bearingFriction, angleDeg, frictionLow: 0.08, frictionHigh: 0.2 };
        const { finalTorqueNm = 0, torqueWindow, preloadN } = answer(input);
        expect(finalTorqueNm).toBeGreaterThanOrEqual((torqueWindow?.lowNm ?? 0) - 0.05);
        expect(finalTorqueNm).toBeLessThanOrEqual((torqueWindow?.highNm ?? 0) + 0.05);
        expect(preloadN).toBeGreaterThanOrEqual((torqueWindow?.preloadLowN ?? 0) - 0.05);
      }),
    );
  });

  it('warns when friction at its lower end would carry the bolt past yield, or break it', () => {
    const messages = (angleDeg: number) =>
      answer({
        ...M12,
        threadFriction: 0.2,
        bearingFriction: 0.2,
        snugTorqueNm: 70,
        angleDeg,
        frictionLow: 0.06,
        frictionHigh: 0.2,
      }).warnings.map(({ message }) => message);
    expect(messages(10)).toContainEqual(expect.stringContaining('would be past yield'));
    expect(messages(230)).toContainEqual(expect.stringContaining('would break'));
  });

  it('takes the prevailing torque off before it tells a preload', () => {
    const plain = answer({ ...M12, angleDeg: 20 });
    const locking = answer({ ...M12, snugTorqueNm: 28, prevailingTorqueNm: 8, angleDeg: 20 });
    expect(locking.snugPreloadN).toBeCloseTo(plain.snugPreloadN, 6);
    expect(locking.assumptions).toContainEqual(expect.objectContaining({ code: 'prevailing-left-out' }));
    expect(plain.assumptions).not.toContainEqual(expect.objectContaining({ code: 'prevailing-left-out' }));
    expect((locking.finalTorqueNm ?? 0) - (plain.finalTorqueNm ?? 0)).toBeCloseTo(8, 9);
  });

  it('adds what the extension twists to what the wrench must turn', () => {
    const extension = { form: 'round', acrossMm: 12.7, lengthMm: 250 };
    const { angleDeg, windUpDeg, wrenchAngleDeg, finalTorqueNm, snugTorqueNm } = answer({
      ...M12,
      angleDeg: 20,
      toolParts: [extension],
    });
    expect(windUpDeg).toBeCloseTo(((finalTorqueNm ?? 0) - (snugTorqueNm ?? 0)) / 14.139, 3);
    expect(wrenchAngleDeg).toBe(angleDeg + (windUpDeg ?? 0));
    const both = answer({
      ...M12,
      angleDeg: 20,
      toolParts: [extension, { form: 'measured', stiffnessNmPerDeg: 14.139 }],
    });
    expect(both.windUpDeg).toBeCloseTo(2 * (windUpDeg ?? 0), 3);
  });

  it('takes the angle from a code’s table, and checks it', () => {
    const bolt = { thread: 'M24', propertyClass: '10.9', layers: [{ thicknessMm: 60 }], snugPreloadN: 60_000 };
    const en = answer({ ...bolt, turnOfNut: 'EN 1090-2', boltLengthMm: 100 });
    expect(en.angleDeg).toBe(90);
    expect(en.codes).toMatchObject([
      { standard: 'RCSC', angleDeg: 180, row: '> 4 d, ≤ 8 d' },
      { standard: 'EN 1090-2', angleDeg: 90, row: '≥ 2 d, < 6 d', reaches: true, preloadN: en.preloadN },
    ]);
    expect(en.codes[1]?.neededN).toBeCloseTo(247_000, -3);
  });

  it('checks no code whose length is unknown, and says when a class is not its own', () => {
    expect(answer({ thread: 'M12', boltMmPerN: 3e-6, partsMmPerN: 7e-7, angleDeg: 20 }).codes).toEqual([]);
    const [check] = answer({ ...M12, propertyClass: '12.9', angleDeg: 20 }).codes;
    expect(check).toMatchObject({ standard: 'EN 1090-2', angleDeg: 90 });
    expect(check).not.toHaveProperty('neededN');
  });

  it('draws a curve that rises through snug, yield and target', () => {
    const { curve, yieldPreloadN, yieldAngleDeg, snugPreloadN, angleDeg } = answer({ ...M12, preloadN: 50_000 });
    expect(curve[0]).toMatchObject({ angleDeg: 0, preloadN: snugPreloadN });
    expect(curve.map((point) => point.preloadN)).toContain(yieldPreloadN);
    expect(curve.find((point) => point.preloadN === yieldPreloadN)?.angleDeg).toBe(yieldAngleDeg);
    expect(curve.at(-1)?.angleDeg).toBeGreaterThan(angleDeg);
    for (const key of ['angleDeg', 'preloadN', 'torqueNm'] as const) {
      const values = curve.map((point) => point[key] ?? 0);
      expect(values).toEqual(values.toSorted((a, b) => a - b));
    }
  });

  it('shows its working', () => {
    const { steps, angleDeg } = answer({ ...M12, preloadN: 35_000 });
    expect(steps.map(({ symbol }) => symbol)).toEqual(['a', 'F_s', 'T', 'F_y', 'f_el', 'θ']);
    expect(steps.at(-1)).toMatchObject({ value: angleDeg, formula: '360·f_el/P', unit: '°' });
    expect(answer({ ...M12, preloadN: 52_000 }).steps.map(({ symbol }) => symbol)).toContain('f_pl');
  });

  it.each([
    ['a preload beyond the ultimate', { preloadN: 70_000 }, 'preloadN', 'breaks'],
    ['a preload below snug', { preloadN: 2000 }, 'preloadN', 'less than at snug'],
    ['an angle that breaks the bolt', { angleDeg: 720 }, 'angleDeg', 'breaks the bolt'],
    ['no target', {}, 'preloadN', 'No target'],
    ['two targets', { preloadN: 30_000, angleDeg: 30 }, 'preloadN', 'Several targets'],
    [
      'a class that does not exist for the size',
      { thread: 'M20', propertyClass: '9.8', angleDeg: 9 },
      'propertyClass',
      'does not exist for M20',
    ],
    ['friction of nothing', { threadFriction: 0, angleDeg: 9 }, 'threadFriction', 'too small'],
    ['friction above one', { bearingFriction: 1.2, angleDeg: 9 }, 'bearingFriction', 'too large'],
    ['thread friction alone', { bearingFriction: undefined, angleDeg: 9 }, 'bearingFriction', 'missing'],
    ['bearing friction alone', { threadFriction: undefined, angleDeg: 9 }, 'threadFriction', 'missing'],
    [
      'a snug torque without friction',
      { threadFriction: undefined, bearingFriction: undefined, angleDeg: 9 },
      'threadFriction',
      'tells no preload',
    ],
    ['snug told twice', { snugPreloadN: 5000, angleDeg: 9 }, 'snugPreloadN', 'already'],
    ['a range of friction with one end', { frictionLow: 0.1, angleDeg: 9 }, 'frictionHigh', 'missing'],
    ['a range of friction without its lower end', { frictionHigh: 0.1, angleDeg: 9 }, 'frictionLow', 'missing'],
    [
      'a range of friction upside down',
      { frictionLow: 0.2, frictionHigh: 0.1, angleDeg: 9 },
      'frictionLow',
      'above the upper',
    ],
    ['one compliance alone', { boltMmPerN: 3e-6, angleDeg: 9 }, 'partsMmPerN', 'missing'],
    ['the other compliance alone', { partsMmPerN: 3e-6, angleDeg: 9 }, 'boltMmPerN', 'missing'],
    ['neither layers nor compliances', { layers: undefined, angleDeg: 9 }, 'layers', 'missing'],
    [
      'yield strength alone',
      { propertyClass: undefined, yieldStrengthMPa: 640, angleDeg: 9 },
      'tensileStrengthMPa',
      'missing',
    ],
    [
      'tensile strength alone',
      { propertyClass: undefined, tensileStrengthMPa: 640, angleDeg: 9 },
      'yieldStrengthMPa',
      'missing',
    ],
    ['tensile strength below yield', { tensileStrengthMPa: 600, angleDeg: 9 }, 'tensileStrengthMPa', 'not above'],
    [
      'past yield without a length that stretches',
      { layers: undefined, boltMmPerN: 3e-6, partsMmPerN: 7e-7, preloadN: 52_000 },
      'plasticLengthMm',
      'past yield',
    ],
    ['RCSC without the length of the bolt', { turnOfNut: 'RCSC' }, 'boltLengthMm', 'missing'],
    ['RCSC beyond its table', { turnOfNut: 'RCSC', boltLengthMm: 200 }, 'boltLengthMm', 'by a test'],
    [
      'a code’s turn that breaks the bolt',
      { turnOfNut: 'RCSC', boltLengthMm: 140, uniformStrain: 0.01 },
      'turnOfNut',
      'breaks',
    ],
    ['layers that do not add up', { gripMm: 41, angleDeg: 9 }, 'layers', 'add up'],
    [
      'a bar without a diameter',
      { toolParts: [{ form: 'round', lengthMm: 9 }], angleDeg: 9 },
      'toolParts[0].acrossMm',
      'missing',
    ],
    [
      'a bar without a length',
      { toolParts: [{ form: 'square', acrossMm: 9 }], angleDeg: 9 },
      'toolParts[0].lengthMm',
      'missing',
    ],
    [
      'a tube without a wall',
      { toolParts: [{ form: 'round', acrossMm: 9, boreMm: 9, lengthMm: 9 }], angleDeg: 9 },
      'toolParts[0].boreMm',
      'as wide',
    ],
    [
      'a measured part without its stiffness',
      { toolParts: [{ form: 'measured' }], angleDeg: 9 },
      'toolParts[0].stiffnessNmPerDeg',
      'missing',
    ],
  ])('refuses %s', (_, change, field, message) => {
    expect(tried({ ...M12, ...change })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field, message: expect.stringContaining(message) },
    });
  });
});
