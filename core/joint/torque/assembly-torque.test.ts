import { describe, expect, it } from 'vitest';
import { type AssemblyTorqueInput, assemblyTorque } from './assembly-torque.ts';

const M12: AssemblyTorqueInput = {
  thread: 'M12',
  propertyClass: '8.8',
  threadFriction: 0.12,
  bearingFriction: 0.12,
  utilization: 0.9,
  prevailingTorqueNm: 0,
  edition: 'VDI 2230:2001',
};

const worked = (more: Partial<AssemblyTorqueInput> = {}) => {
  const result = assemblyTorque({ ...M12, ...more });
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

const fields = (more: Partial<AssemblyTorqueInput>) => worked(more).warnings.map(({ field }) => field);

describe('assemblyTorque', () => {
  it('takes head and hole from the standards unless they are told', () => {
    expect(worked()).toMatchObject({ head: 'ISO 4014', bearingOuterMm: 16.63, holeMm: 13.5 });
    expect(worked({ head: 'ISO 4017' })).toMatchObject({ head: 'ISO 4017', bearingOuterMm: 16.63 });
    expect(worked({ head: 'ISO 4762', holeSeries: 'fine' })).toMatchObject({ bearingOuterMm: 17.23, holeMm: 13 });
    const told = worked({ bearingOuterMm: 20, holeMm: 14 });
    expect(told).toMatchObject({ bearingOuterMm: 20, holeMm: 14 });
    expect(told).not.toHaveProperty('head');
  });

  it('reaches the utilization asked for in the equivalent stress', () => {
    expect(worked({ utilization: 0.7 })).toMatchObject({
      utilization: expect.closeTo(0.7, 12),
      vonMisesMPa: expect.closeTo(448, 9),
    });
  });

  it('works without a class from a proof stress, and back from a preload to the same torque', () => {
    const { propertyClass: _, ...bare } = M12;
    const own = assemblyTorque({ ...bare, proofStressMPa: 640 });
    expect(own).toMatchObject({ value: { torqueNm: worked().torqueNm } });
    const { preloadN } = worked();
    expect(assemblyTorque({ ...bare, preloadN })).toMatchObject({
      value: { torqueNm: expect.closeTo(worked().torqueNm, 9) },
    });
  });

  it('puts the prevailing torque on top, and counts its twist in the shank', () => {
    const locking = worked({ prevailingTorqueNm: 10 });
    expect(locking.preloadN).toBeLessThan(worked().preloadN);
    expect(locking.torqueNm).toBeCloseTo(10 + (locking.preloadN * locking.nutFactor * 12) / 1000, 9);
    expect(locking.shares).toEqual(worked().shares);
    expect(locking.utilization).toBeCloseTo(0.9, 12);
  });

  it('takes a nut factor instead of friction', () => {
    const short = worked({ threadFriction: undefined, bearingFriction: undefined, nutFactor: 0.2, preloadN: 30_000 });
    expect(short.torqueNm).toBeCloseTo(0.2 * 0.012 * 30_000, 9);
  });

  it('is weakest where the shank is waisted', () => {
    expect(worked({ shankDiameterMm: 8 }).preloadN).toBeLessThan(0.7 * worked().preloadN);
    expect(worked({ shankDiameterMm: 12 }).preloadN).toBe(worked().preloadN);
  });

  it('knows heads and holes of inch threads', () => {
    expect(worked({ thread: '3/4-10 UNC', propertyClass: 'A325' })).toMatchObject({
      head: 'ASME B18.2.6',
      bearingOuterMm: 1.25 * 25.4 * 0.95,
      holeMm: 0.8125 * 25.4,
    });
  });

  it('shows its working, each line with the numbers put in', () => {
    const { steps, torqueNm, preloadN } = worked();
    expect(steps.map(({ symbol }) => symbol)).toEqual(['D_Km', 'F_M', 'M_A', 'K', 'σ_M', 'τ_M', 'σ_red']);
    expect(steps.find(({ symbol }) => symbol === 'M_A')).toMatchObject({ value: torqueNm, unit: 'N·m' });
    expect(steps.find(({ symbol }) => symbol === 'F_M')).toMatchObject({
      value: preloadN,
      withNumbers: '0.9·640·π/4·10.36²/√(1 + 3·(1.5·10.86/10.36·(1.75/(π·10.86) + 1.155·0.12))²)',
    });
    expect(steps.every(({ withNumbers, source }) => !/[A-Zμσ]_/.test(withNumbers) && source !== '')).toBe(true);
  });
});

describe('what cannot be is refused with its field', () => {
  it.each<[string, Partial<AssemblyTorqueInput>, string, string]>([
    ['a thread that is none', { thread: 'M12.5' }, 'thread', 'no thread known'],
    [
      'a class that does not exist for the size',
      { thread: 'M20', propertyClass: '9.8' },
      'propertyClass',
      'does not exist',
    ],
    ['no strength at all', { propertyClass: undefined }, 'propertyClass', 'missing'],
    ['a bearing circle inside of the hole', { bearingOuterMm: 13 }, 'bearingOuterMm', 'inside the hole'],
    ['a hole smaller than the bolt', { holeMm: 11 }, 'holeMm', 'does not let M12 through'],
    ['a size that the standard of the head does not have', { thread: 'M7' }, 'bearingOuterMm', 'has no head'],
    ['a head of the other system', { head: 'ASME B18.2.6' }, 'bearingOuterMm', 'has no head'],
    ['a preload beyond the ultimate load', { preloadN: 70_000 }, 'preloadN', 'may break at 67413 N'],
    [
      'a preload that no class would bear',
      { propertyClass: undefined, preloadN: 200_000 },
      'preloadN',
      'M12 of the strongest class may break at 102805 N',
    ],
    ['a prevailing torque that twists the bolt off', { prevailingTorqueNm: 200 }, 'prevailingTorqueNm', 'alone'],
    ['no friction', { threadFriction: undefined }, 'threadFriction', 'missing'],
    ['half of the friction', { bearingFriction: undefined }, 'bearingFriction', 'missing'],
    ['friction and nut factor at once', { nutFactor: 0.2 }, 'nutFactor', 'both'],
    [
      'a nut factor below what the pitch takes',
      { threadFriction: undefined, bearingFriction: undefined, nutFactor: 0.02 },
      'nutFactor',
      'without friction',
    ],
    [
      'a nut factor that means friction above 1',
      { threadFriction: undefined, bearingFriction: undefined, nutFactor: 3 },
      'nutFactor',
      'above 1',
    ],
    ['a nut that is none', { nutClass: '7' }, 'nutClass', 'no class of nut'],
  ])('%s', (_, wrong, field, message) => {
    expect(assemblyTorque({ ...M12, ...wrong })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field, message: expect.stringContaining(message) },
    });
  });
});

describe('what is doubtful is told with its field', () => {
  it.each<[string, Partial<AssemblyTorqueInput>, readonly string[]]>([
    ['nothing speaks against a usual bolt', { nutClass: '8' }, []],
    ['a nut weaker than the bolt', { nutClass: '6' }, ['nutClass']],
    ['a thin nut, and a preload above its proof load', { nutClass: '04' }, ['nutClass', 'nutClass']],
    ['a nut stronger than needed is none', { nutClass: '12' }, []],
    ['a preload at which the shank yields', { preloadN: 50_000 }, ['preloadN']],
    ['friction lower than lubricants reach', { threadFriction: 0.03 }, ['threadFriction']],
    ['friction at which surfaces seize', { bearingFriction: 0.4 }, ['bearingFriction']],
    ['a size that the class’s standard does not cover', { thread: 'M42' }, ['propertyClass']],
  ])('%s', (_, doubtful, expected) => {
    expect(fields(doubtful)).toEqual(expected);
  });
});
