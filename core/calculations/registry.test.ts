import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { CALCULATIONS, calculate, calculateMany, inputJsonSchema, outputJsonSchema } from './registry.ts';

const answer = (name: Parameters<typeof calculate>[0], input: unknown) => {
  const result = calculate(name, input);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

describe('every calculation', () => {
  it.each(CALCULATIONS)(
    '$name answers its example with what its output schema promises',
    ({ name, example, output }) => {
      expect(output.safeParse(answer(name, example))).toMatchObject({ success: true });
    },
  );

  it.each(CALCULATIONS)('$name tells title, cautions and sources', ({ title, cautions, sources }) => {
    expect([title, ...cautions, ...sources].every((text) => text.length > 10)).toBe(true);
    expect(cautions.length * sources.length).toBeGreaterThan(0);
  });

  it.each(CALCULATIONS)('$name describes each field that it takes', ({ name }) => {
    const schema = inputJsonSchema(name);
    expect(schema.type).toBe('object');
    for (const field of Object.values(schema.properties ?? {})) expect(field).toHaveProperty('description');
  });

  it.each(CALCULATIONS)('$name refuses what is no object, a field too many and a field too few', ({ name }) => {
    for (const input of [undefined, null, 5, 'M10', [], {}, { surplus: 1 }]) {
      expect(calculate(name, input)).toMatchObject({ ok: false, failure: { kind: 'invalid' } });
    }
  });

  it('has a name of its own', () => {
    expect(new Set(CALCULATIONS.map(({ name }) => name)).size).toBe(CALCULATIONS.length);
  });

  it('shows its output as JSON Schema', () => {
    expect(outputJsonSchema('wrench-setting')).toMatchObject({ properties: { settingNm: { type: 'number' } } });
  });
});

describe('calculateMany', () => {
  it('puts the error in the place of each input that is refused', () => {
    const inputs = [
      { value: 1, from: 'lbf.ft', to: 'lbf.in' },
      { value: 1, from: 'furlong', to: 'm' },
      { value: 2, from: 'turn', to: 'deg' },
    ];
    expect(calculateMany('convert', inputs)).toEqual([
      { value: 12 },
      { error: expect.objectContaining({ kind: 'invalid', field: 'from' }) },
      { value: 720 },
    ]);
  });

  it('answers nothing with nothing', () => {
    expect(calculateMany('convert', [])).toEqual([]);
  });
});

describe('convert', () => {
  it.each([
    [{ value: 1, from: 'N.m', to: 'mm' }, 'to', 'unit of torque'],
    [{ value: 1, from: 'parsec', to: 'mm' }, 'from', 'no unit known here'],
    [{ value: '1', from: 'm', to: 'mm' }, 'value', 'not a number'],
    [{ value: 1, from: 'm' }, 'to', 'missing'],
  ])('refuses %j, naming %s', (input, field, message) => {
    expect(calculate('convert', input)).toMatchObject({
      failure: { field, message: expect.stringContaining(message) },
    });
  });
});

describe('fastener', () => {
  it('answers geometry alone without a class', () => {
    expect(answer('fastener', { thread: '1/4-28 UNF' })).not.toHaveProperty('proofLoadN');
  });

  it.each([
    [{ thread: 'M13' }, 'thread', 'M12 or M14'],
    [{ thread: 'M10', propertyClass: '8.9' }, 'propertyClass', 'one of 4.6'],
    [{ thread: 10 }, 'thread', 'designation, such as M12'],
  ])('refuses %j, naming %s', (input, field, expected) => {
    expect(calculate('fastener', input)).toMatchObject({
      failure: { field, expected: expect.stringContaining(expected) },
    });
  });
});

const at = (adapterAngleDeg: number) =>
  answer('wrench-setting', { torqueNm: 80, leverMm: 400, adapterMm: 50, adapterAngleDeg });

describe('wrench-setting and applied-torque', () => {
  it('give the torque itself without an adapter', () => {
    expect(answer('wrench-setting', { torqueNm: 80, leverMm: 400 })).toEqual({ settingNm: 80, factor: 1 });
  });

  it('give factor 1 square to the handle and more beyond', () => {
    expect(at(90)).toEqual({ settingNm: 80, factor: 1 });
    expect(at(135)).toMatchObject({ settingNm: expect.closeTo(87.7567, 4) });
  });

  it.each([
    ['wrench-setting', { torqueNm: -5, leverMm: 400 }, 'torqueNm', 'negative'],
    ['wrench-setting', { torqueNm: 85_000, leverMm: 400 }, 'torqueNm', 'Was the figure in lbf·in?'],
    ['wrench-setting', { torqueNm: 80, leverMm: 0 }, 'leverMm', 'too small'],
    [
      'wrench-setting',
      { torqueNm: 80, leverMm: 400, adapterMm: 400, adapterAngleDeg: 180 },
      'adapterMm',
      'under the hand',
    ],
    ['wrench-setting', { torqueNm: 80 }, 'leverMm', 'missing'],
    ['applied-torque', { readingNm: -5, leverMm: 400 }, 'readingNm', 'negative'],
    ['applied-torque', { readingNm: 1e6, leverMm: 400 }, 'readingNm', 'makes sense'],
  ] as const)('%s refuses %j', (name, input, field, message) => {
    expect(calculate(name, input)).toMatchObject({ failure: { field, message: expect.stringContaining(message) } });
  });
});

describe('tightening-order', () => {
  it('goes crosswise round eight bolts', () => {
    expect(answer('tightening-order', { layout: 'circle', count: 8, method: 'star' })).toEqual({
      order: [1, 5, 3, 7, 2, 6, 4, 8],
    });
  });

  it.each([
    [{ layout: 'circle', count: 1, method: 'star' }, 'count'],
    [{ layout: 'circle', count: 201, method: 'star' }, 'count'],
    [{ layout: 'circle', count: 4.5, method: 'star' }, 'count'],
    [{ layout: 'rectangle', rows: 3, method: 'from-the-middle' }, 'columns'],
    [{ layout: 'ring', count: 8, method: 'star' }, 'layout'],
    [{ layout: 'circle', count: 8, method: 'spiral' }, 'method'],
  ])('refuses %j, naming %s', (input, field) => {
    expect(calculate('tightening-order', input)).toMatchObject({ failure: { field } });
  });
});

const judged = (...quantities: readonly unknown[]) => calculate('verdict', { quantities });

describe('verdict', () => {
  it('says in a sentence why, with every digit of the figures', () => {
    expect(judged({ name: 'torque', value: 89.99999, lower: 90, upper: 110 })).toMatchObject({
      value: { verdict: 'under', reasons: ['Torque 89.99999 is below the lower limit 90.'] },
    });
  });

  it('lets one quantity over outweigh one under', () => {
    expect(judged({ name: 'torque', value: 120, upper: 110 }, { name: 'angle', value: 5, lower: 10 })).toMatchObject({
      value: {
        verdict: 'over',
        findings: [
          { code: 'above-upper', limit: 110 },
          { code: 'below-lower', limit: 10 },
        ],
      },
    });
  });

  it.each([
    [[{ name: 'torque', value: 1, lower: 5, upper: 2 }], 'quantities[0].lower'],
    [[{ name: 'torque', value: 1 }], 'quantities[0]'],
    [[{ name: 'torque', value: 'x', lower: 1 }], 'quantities[0].value'],
    [[], 'quantities'],
  ])('refuses %j, naming %s', (quantities, field) => {
    expect(judged(...quantities)).toMatchObject({ failure: { field } });
  });
});

const BOLT = { thread: 'M12', propertyClass: '8.8', threadFriction: 0.12, bearingFriction: 0.12 };

describe('assembly-torque, preload, friction and torque-plausibility', () => {
  it('lead from torque to preload and back', () => {
    const { torqueNm, preloadN } = z
      .object({ torqueNm: z.number(), preloadN: z.number() })
      .parse(answer('assembly-torque', BOLT));
    expect(answer('preload', { ...BOLT, torqueNm, draws: 0 })).toMatchObject({
      preloadN: expect.closeTo(preloadN, 6),
      utilization: expect.closeTo(0.9, 9),
    });
    expect(answer('friction', { thread: 'M12', torqueNm, preloadN })).toMatchObject({ total: expect.closeTo(0.12, 9) });
    expect(answer('torque-plausibility', { thread: 'M12', propertyClass: '8.8', torqueNm })).toMatchObject({
      assessment: 'usual',
    });
  });

  it.each([
    ['assembly-torque', { ...BOLT, threadFriction: 0 }, 'threadFriction', '0 is too small'],
    ['assembly-torque', { ...BOLT, bearingFriction: 1.2 }, 'bearingFriction', 'too large'],
    ['assembly-torque', { ...BOLT, utilization: 1.1 }, 'utilization', 'too large'],
    ['assembly-torque', { ...BOLT, preloadN: -1 }, 'preloadN', 'too small'],
    ['assembly-torque', { ...BOLT, preloadN: 90_000 }, 'preloadN', 'may break'],
    ['assembly-torque', { ...BOLT, bearingOuterMm: 13 }, 'bearingOuterMm', 'inside the hole'],
    ['preload', { ...BOLT, torqueNm: 80, threadFriction: 0 }, 'threadFriction', 'too small'],
    ['preload', { ...BOLT, torqueNm: { value: 80 } }, 'torqueNm.standardUncertainty', 'missing'],
    [
      'preload',
      { ...BOLT, torqueNm: { value: 80, standardUncertainty: -1 } },
      'torqueNm.standardUncertainty',
      'too small',
    ],
    ['preload', { ...BOLT, torqueNm: 80, draws: 10 }, 'draws', 'Too few'],
    ['preload', { ...BOLT, torqueNm: 80, seed: 0.5 }, 'seed', 'not an int'],
    ['friction', { thread: 'M12', torqueNm: 80, preloadN: 40 }, 'torqueNm', 'above 1'],
    ['friction', { thread: 'M12', tests: [] }, 'tests', 'too few'],
    ['torque-plausibility', { thread: 'M12', torqueNm: 0 }, 'torqueNm', 'too small'],
    ['torque-plausibility', { thread: 'M12', torqueNm: 80, typedUnit: 'kN' }, 'typedUnit', 'not among'],
    ['torque-plausibility', { thread: 'M12', torqueNm: 80, lowestFriction: 0 }, 'lowestFriction', 'too small'],
  ] as const)('%s refuses %j, naming %s', (name, input, field, message) => {
    expect(calculate(name, input)).toMatchObject({ failure: { field, message: expect.stringContaining(message) } });
  });
});
