import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elasticInteraction, elasticInteractionRequestSchema } from '../interaction/elastic-interaction.ts';
import { RING_OF_EIGHT, STAR_OF_EIGHT } from '../testing/ring-of-eight.ts';
import { type RoundTargets, roundTargets, roundTargetsRequestSchema } from './round-targets.ts';

fc.configureGlobal({ seed: 24 });

const order = [...STAR_OF_EIGHT];
const soft = { model: RING_OF_EIGHT, order, finalN: 100 };

const answered = (request: object) => roundTargets(roundTargetsRequestSchema.parse(request));
const planned = (request: object): RoundTargets => {
  const answer = answered(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  return answer.value;
};

describe('a plan in one round', () => {
  it('aims at what another program finds for a soft flange', () => {
    // numpy 2.4: S = U·F with M = Uᵀ·D·U in the order of the pulls
    const { targetsN, finalN } = planned({ ...soft, rounds: 1 });
    expect(targetsN[0]?.map((force) => Number(force.toFixed(3)))).toEqual([
      135.294, 135.602, 158.422, 160.783, 67.863, 62.993, 100.382, 100,
    ]);
    for (const force of finalN) expect(force / 100).toBeCloseTo(1, 9);
  });

  it('ends even to a billionth for any joint, order and final forces', () => {
    const joints = fc.record({
      neighbour: fc.double({ min: -0.15, max: 0.35, noNaN: true }),
      decay: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
      order: fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7, 8, 9], { minLength: 9 }),
      finalN: fc.array(fc.double({ min: 90, max: 110, noNaN: true }), { minLength: 9, maxLength: 9 }),
      rounds: fc.integer({ min: 1, max: 4 }),
      atOnce: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(joints, ({ neighbour, decay, ...rest }) => {
        const model = { kind: 'neighbours', arrangement: 'circle', count: 9, neighbour, decay };
        const { targetsN } = planned({ model, ...rest });
        const request = { model, order: rest.order, targetsN, atOnce: rest.atOnce };
        const played = elasticInteraction(elasticInteractionRequestSchema.parse(request));
        if (!played.ok) throw new Error(JSON.stringify(played.failure));
        played.value.finalN.forEach((force, index) => {
          expect(Math.abs(force / rest.finalN[index]! - 1)).toBeLessThan(1e-9);
        });
      }),
    );
  });
});

describe('a plan for any joint at all', () => {
  it('ends even or is refused, however its bolts take part in each other', () => {
    const joints = fc.record({
      angles: fc.array(fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 99 })), {
        minLength: 2,
        maxLength: 6,
      }),
      rounds: fc.integer({ min: 1, max: 3 }),
      atOnce: fc.integer({ min: 1, max: 3 }),
      seatingN: fc.constantFrom(undefined, 5),
    });
    fc.assert(
      fc.property(joints, ({ angles, ...rest }) => {
        const complianceMmPerN = angles.map(([a, b], i) =>
          angles.map(([c, d], j) => Math.sin(a) * Math.sin(c) + Math.sin(b) * Math.sin(d) + (i === j ? 0.1 : 0)),
        );
        const plan = answered({ complianceMmPerN, order: angles.map((_, i) => i + 1), finalN: 100, ...rest });
        expect(plan.ok ? plan.value.spread : 0).toBeLessThan(1e-9);
      }),
      { numRuns: 400 },
    );
  });

  it('is refused where a nut would have to be turned back between rounds', () => {
    // the outer bolts open the joint under the second: its nut goes down as the forces go up, though it is pulled last
    const complianceMmPerN = [
      [1, -0.9, 0.5],
      [-0.9, 1.7, -0.9],
      [0.5, -0.9, 1],
    ];
    const request = { complianceMmPerN, order: [1, 3, 2], finalN: 100 };
    expect(answered({ ...request, rounds: 1 })).toMatchObject({ ok: true });
    expect(answered({ ...request, rounds: 2, roundShares: [0.5, 1] })).toMatchObject({
      ok: false,
      failure: { field: 'rounds', expected: '1 round' },
    });
  });
});

describe('a plan for several wrenches at once', () => {
  it('aims at what another program finds, group by group', () => {
    // numpy 2.4: u = M·F; each group carries the share of M_TT⁻¹·u_T with T the bolts tight by then
    const { targetsN, finalN } = planned({ ...soft, rounds: 1, atOnce: 2 });
    expect(targetsN[0]?.map((force) => Number(force.toFixed(3)))).toEqual([
      135.602, 135.602, 160.783, 160.783, 62.993, 62.993, 100, 100,
    ]);
    for (const force of finalN) expect(force / 100).toBeCloseTo(1, 9);
  });

  it('needs no more than the final force where all are pulled together', () => {
    const model = { kind: 'neighbours', arrangement: 'circle', count: 4, neighbour: 0.3, decay: 0.2 };
    const { targetsN, peakN } = planned({ model, order: [1, 3, 2, 4], finalN: 100, rounds: 1, atOnce: 4 });
    expect(targetsN[0]!.map((force) => Number(force.toFixed(9)))).toEqual([100, 100, 100, 100]);
    expect(peakN).toBeCloseTo(100, 9);
  });

  it('holds a ceiling that one wrench in one round does not, and still ends even', () => {
    const capped = planned({ ...soft, rounds: 2, atOnce: 2, ceilingN: 112 });
    expect(Math.max(...capped.targetsN.flat())).toBeLessThanOrEqual(112 * (1 + 1e-9));
    expect(capped.spread).toBeLessThan(1e-9);
  });

  it('says that the wrenches begin and end together, and scatters as groups do', () => {
    const { assumptions, scatter = [] } = planned({ ...soft, rounds: 2, atOnce: 4, frictionScatter: 0.25, draws: 100 });
    expect(assumptions.map(({ code }) => code)).toContain('pulled-together');
    expect(scatter[0]?.spreadOnPaper).toBeLessThan(1e-9);
    expect(scatter[2]?.pulls).toBe(40);
  });
});

describe('a plan under a ceiling', () => {
  it('never aims above it and still ends even', () => {
    const { targetsN, spread, warnings } = planned({ ...soft, rounds: 2, ceilingN: 115 });
    expect(Math.max(...targetsN.flat())).toBeLessThanOrEqual(115);
    expect(spread).toBeLessThan(1e-9);
    expect(warnings[0]?.field).toBe('ceilingN');
  });

  it('comes to the lowest ceiling that a linear program finds', () => {
    // scipy 1.17, linprog over all travels of two and three rounds: 111.511 and 102.187
    const lowest = (rounds: number) => Math.max(...planned({ ...soft, rounds, ceilingN: 120 }).targetsN.flat());
    expect(lowest(2)).toBeCloseTo(111.511, 1);
    expect(Math.max(...planned({ ...soft, rounds: 3, ceilingN: 110 }).targetsN.flat())).toBeCloseTo(102.187, 1);
  });

  it.each([115, 104, 101, 100.1])('says how many rounds hold %f N, and no more than are needed', (ceilingN) => {
    const refused = answered({ ...soft, rounds: 1, ceilingN });
    const told = refused.ok || refused.failure.kind !== 'invalid' ? '' : refused.failure.expected;
    const enough = Number(/or (\d+) rounds/.exec(told)?.[1]);
    expect(answered({ ...soft, rounds: enough, ceilingN }).ok).toBe(true);
    expect(answered({ ...soft, rounds: enough - 1, ceilingN }).ok).toBe(false);
  });

  it('ends every round even where the ceiling allows it', () => {
    const { roundShares, peakN } = planned({ ...soft, rounds: 3, ceilingN: 120 });
    expect(roundShares?.at(-1)).toBe(1);
    expect(peakN).toBeLessThan(120);
  });

  it.each([50, 60, 62])('keeps every pull above %i N, which seats the joint', (seatingN) => {
    const { targetsN } = planned({ ...soft, rounds: 5, seatingN });
    expect(Math.min(...targetsN.flat())).toBeGreaterThanOrEqual(seatingN * (1 - 1e-9));
  });

  it.each<[string, object, string, string]>([
    ['a final force above it', { rounds: 2, ceilingN: 90 }, 'finalN', 'at most 90 N'],
    [
      'one of the final forces above it',
      { rounds: 2, ceilingN: 100, finalN: [1, 1, 101, 1, 1, 1, 1, 1] },
      'finalN[2]',
      'at most',
    ],
    ['too few rounds', { rounds: 1, ceilingN: 115 }, 'ceilingN', 'or 2 rounds'],
    ['a final force that does not seat', { rounds: 2, seatingN: 120 }, 'finalN', 'at least 120 N'],
    ['a first pull that cannot seat', { rounds: 1, seatingN: 90 }, 'seatingN', 'at most 62 N'],
    ['shares that fall', { rounds: 3, roundShares: [0.7, 0.3, 1] }, 'roundShares[1]', 'at least 0.7'],
    ['shares that end early', { rounds: 2, roundShares: [0.3, 0.9] }, 'roundShares[1]', '1'],
    ['shares for other rounds', { rounds: 2, roundShares: [0.3, 0.7, 1] }, 'roundShares', '2'],
    ['final forces of other positions', { rounds: 1, finalN: [1, 2] }, 'finalN', '8'],
    ['friction without a thread', { rounds: 1, nutFactor: 0.2 }, 'thread', 'M24'],
    ['a thread without friction', { rounds: 1, thread: 'M24' }, 'threadFriction', 'coefficient'],
  ])('refuses %s', (_, more, field, expected) => {
    expect(answered({ ...soft, ...more })).toMatchObject({
      ok: false,
      failure: { field, expected: expect.stringContaining(expected) },
    });
  });
});

describe('a plan for the wrench', () => {
  it('tells torques and settings of each pull', () => {
    const plan = { ...soft, finalN: 100_000, rounds: 1, thread: 'M27', nutFactor: 0.18, leverMm: 900, adapterMm: 100 };
    const { targetsN, torquesNm, settingsNm } = planned(plan);
    expect(torquesNm?.[0]?.[0]).toBeCloseTo((0.18 * 27 * targetsN[0]![0]!) / 1000, 6);
    expect(settingsNm?.[0]?.[7]).toBeCloseTo(486 * 0.9, 6);
    // square to the handle an adapter adds no arm
    expect(planned({ ...plan, adapterAngleDeg: 90 }).settingsNm?.[0]?.[7]).toBeCloseTo(486, 6);
  });

  it('shows a plan in one round for what it is once friction scatters', () => {
    const { scatter = [] } = planned({ ...soft, rounds: 1, frictionScatter: 0.25, draws: 300 });
    const [once, , plain] = scatter;
    expect(once?.spreadOnPaper).toBeLessThan(1e-9);
    expect(once?.spreadMean).toBeGreaterThan(plain?.spreadMean ?? 1);
    expect(plain?.spreadOnPaper).toBeGreaterThan(0.01);
  });

  it('draws the same for the same seed', () => {
    const drawn = (seed: number) => planned({ ...soft, rounds: 1, frictionScatter: 0.25, draws: 50, seed }).scatter;
    expect(drawn(5)).toEqual(drawn(5));
    expect(drawn(5)).not.toEqual(drawn(6));
  });

  it('scatters by what is told', () => {
    const alone = { complianceMmPerN: [[1]], order: [1], finalN: 100, rounds: 1, frictionScatter: 0.3, draws: 20_000 };
    const [drawn] = planned(alone).scatter ?? [];
    // log-normal with mean 1 and standard deviation 0.3/1.96: exp(1.645·σ − σ²/2), σ² = ln(1 + 0.153²)
    expect(drawn?.peak95N).toBeCloseTo(126.97, -0.3);
    // one in twenty lies below exp(−1.645·σ − σ²/2), and the mean is 1
    expect(drawn?.minOverTarget05).toBeCloseTo(0.7697, 1.7);
    expect(drawn?.minOverTargetMean).toBeCloseTo(1, 2);
  });
});
