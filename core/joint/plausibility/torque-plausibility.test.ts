import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertTorque } from '../../quantity/convert.ts';
import { readLubricant } from './read-lubricant.ts';
import { type PlausibilityInput, torquePlausibility } from './torque-plausibility.ts';

fc.configureGlobal({ seed: 24 });

const M12: PlausibilityInput = {
  thread: 'M12',
  propertyClass: '8.8',
  torqueNm: 80,
  prevailingTorqueNm: 0,
  lubrication: 'unknown',
};

const judged = (more: Partial<PlausibilityInput>) => {
  const result = torquePlausibility({ ...M12, ...more });
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

describe('torquePlausibility', () => {
  it.each([
    [5, 'low'],
    [20, 'usual'],
    [80, 'usual'],
    [93, 'usual'],
    [114, 'high'],
    [150, 'beyond-yield'],
    [300, 'beyond-ultimate'],
  ])('%d N·m on M12 8.8 is %s', (torqueNm, assessment) => {
    expect(judged({ torqueNm }).assessment).toBe(assessment);
  });

  it('uses more of the bolt the lower the friction', () => {
    const { utilization, preloadLowestN, preloadHighestN } = judged({});
    expect(utilization.lowest).toBeLessThan(utilization.usual);
    expect(utilization.usual).toBeLessThan(utilization.highest);
    expect(preloadLowestN).toBeLessThan(preloadHighestN);
  });

  it('gets worse and never better with the torque', () => {
    const order = ['low', 'usual', 'high', 'beyond-yield', 'beyond-ultimate'];
    const torque = fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(torque, torque, (a, b) => {
        const place = (torqueNm: number) => order.indexOf(judged({ torqueNm }).assessment);
        expect(place(Math.min(a, b))).toBeLessThanOrEqual(place(Math.max(a, b)));
      }),
    );
  });

  it('tells the torque of 90 % at usual friction', () => {
    const { fullTorqueNm } = judged({});
    expect(judged({ torqueNm: fullTorqueNm }).utilization.usual).toBeCloseTo(0.9, 12);
  });

  it('takes a strength of one’s own, from where it yields to where it breaks', () => {
    const own = { propertyClass: undefined, proofStressMPa: 250, tensileStrengthMPa: 420 };
    expect(judged({ ...own, torqueNm: 45 })).toMatchObject({
      assessment: 'high',
      propertyClass: 'of 250 MPa yield strength',
    });
    const breaking = (tensileStrengthMPa?: number) => judged({ ...own, tensileStrengthMPa, torqueNm: 160 }).assessment;
    expect([breaking(420), breaking()]).toEqual(['beyond-ultimate', 'beyond-yield']);
    expect(judged({ propertyClass: '8.8', tensileStrengthMPa: 700, torqueNm: 210 }).assessment).toBe('beyond-ultimate');
    expect(judged({ propertyClass: '8.8', torqueNm: 210 }).assessment).toBe('beyond-yield');
    const input = { ...M12, ...own, tensileStrengthMPa: 200 };
    expect(torquePlausibility(input)).toMatchObject({ failure: { field: 'tensileStrengthMPa' } });
  });

  it('judges a bolt thicker than any class goes', () => {
    const thread = { designation: 'Anchor 150', system: 'Unified', majorDiameterMm: 150, pitchMm: 6 } as const;
    expect(judged({ thread, propertyClass: undefined, torqueNm: 9000 }).assessment).toBe('usual');
  });

  it('takes friction of one’s own', () => {
    expect(judged({ lowestFriction: 0.1, highestFriction: 0.14 }).friction).toEqual({
      lowest: 0.1,
      usual: expect.closeTo(0.12, 12),
      highest: 0.14,
    });
  });

  it('tells of an unknown class only what breaks or yields the strongest', () => {
    const { propertyClass: _, ...bare } = M12;
    const of = (torqueNm: number) => torquePlausibility({ ...bare, torqueNm });
    expect(of(3)).toMatchObject({ value: { assessment: 'usual', propertyClass: '12.9' } });
    expect(of(1000)).toMatchObject({ value: { assessment: 'beyond-ultimate' } });
  });

  it('takes a usual face where the standard of the head has no such size', () => {
    expect(judged({ thread: 'M7', torqueNm: 15 }).assessment).toBe('usual');
  });
});

const inUnit = (figure: number, unit: Parameters<typeof convertTorque>[1]) => convertTorque(figure, unit, 'N·m');

describe('the likely slip', () => {
  it.each<[string, Partial<PlausibilityInput>, string, string]>([
    ['N·m taken for lbf·ft', { torqueNm: inUnit(84, 'lbf·ft'), typedUnit: 'lbf·ft' }, 'unit', 'N·m'],
    ['the same, the unit not told', { torqueNm: inUnit(84, 'lbf·ft') }, 'unit', 'N·m'],
    ['lbf·in taken for lbf·ft', { torqueNm: inUnit(720, 'lbf·ft'), typedUnit: 'lbf·ft' }, 'unit', 'lbf·in'],
    ['the same, the unit not told', { torqueNm: inUnit(720, 'lbf·ft') }, 'unit', 'lbf·in'],
    ['lbf·ft taken for lbf·in', { torqueNm: inUnit(60, 'lbf·in'), typedUnit: 'lbf·in' }, 'unit', 'lbf·ft'],
    ['kgf·m taken for N·m', { torqueNm: 8.2, typedUnit: 'N·m' }, 'unit', 'kgf·m'],
    ['the same, the unit not told', { torqueNm: 8.2 }, 'unit', 'kgf·m'],
    ['the figure of M12 on M10', { thread: 'M10', torqueNm: 80 }, 'size', 'M12'],
    ['the figure of M16 on M12', { torqueNm: 200 }, 'size', 'M16'],
    ['the figure of M10 fine on M8 fine', { thread: 'M8x1', torqueNm: 50 }, 'size', 'M10x1'],
    ['a dry figure on a lubricated bolt', { torqueNm: 101, lubrication: 'lubricated' }, 'dry-figure', 'dry'],
  ])('is %s', (_, slipped, kind, meant) => {
    const [likely] = judged(slipped).slips;
    expect(likely).toMatchObject({ kind, meant });
    expect(judged(slipped).message).toContain(likely?.message);
  });

  it('may be the figure of another class', () => {
    const { slips } = judged({ torqueNm: 130 });
    expect(slips.filter(({ kind }) => kind === 'class').map(({ meant }) => meant)).toContain('10.9');
  });

  it('is none for a usual torque', () => {
    expect(judged({}).slips).toEqual([]);
  });

  it('always makes the torque usual', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1e5, noNaN: true }), (torqueNm) => {
        const { slips } = judged({ torqueNm });
        expect(slips.every(({ utilization }) => utilization >= 0.5 && utilization <= 1)).toBe(true);
      }),
    );
  });
});

describe('what cannot be is refused with its field', () => {
  it.each<[string, Partial<PlausibilityInput>, string]>([
    ['an unknown thread', { thread: 'M12.5' }, 'thread'],
    ['a class that does not exist for the size', { thread: 'M20', propertyClass: '9.8' }, 'propertyClass'],
    ['a bearing circle inside of the hole', { bearingOuterMm: 13 }, 'bearingOuterMm'],
    ['friction upside down', { lowestFriction: 0.2, highestFriction: 0.1 }, 'lowestFriction'],
    ['a torque below the prevailing torque', { prevailingTorqueNm: 90 }, 'torqueNm'],
  ])('%s', (_, wrong, field) => {
    expect(torquePlausibility({ ...M12, ...wrong })).toMatchObject({ failure: { kind: 'invalid', field } });
  });
});

describe('readLubricant', () => {
  it.each([
    ['Oil', 'lubricated'],
    ['MoS₂ paste', 'lubricated'],
    ['Schmierfett', 'lubricated'],
    ['leicht geölt', 'lubricated'],
    ['huile moteur', 'lubricated'],
    ['aceite', 'lubricated'],
    ['dry', 'dry'],
    ['without oil', 'dry'],
    ['trocken', 'dry'],
    ['a sec', 'dry'],
    ['sin lubricante', 'dry'],
    ['', 'unknown'],
    ['as delivered', 'unknown'],
  ])('“%s” is %s', (text, state) => {
    expect(readLubricant(text)).toBe(state);
  });
});
