import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../../failure/parse.ts';
import { RING_OF_EIGHT, STAR_OF_EIGHT } from '../testing/ring-of-eight.ts';
import {
  type ElasticInteraction,
  type ElasticInteractionRequest,
  elasticInteraction,
  elasticInteractionRequestSchema,
} from './elastic-interaction.ts';
import { simulate } from './simulate.ts';
import { matrixOf } from './square-matrix.ts';

fc.configureGlobal({ seed: 24 });

const order = [...STAR_OF_EIGHT];

const played = (request: Omit<ElasticInteractionRequest, 'atOnce' | 'everyPull'>, more = {}): ElasticInteraction => {
  const answer = elasticInteraction(elasticInteractionRequestSchema.parse({ ...request, ...more }));
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  return answer.value;
};

const rounded = (forces: readonly number[] | undefined) => forces?.map((force) => Number(force.toFixed(2)));

describe('rounds on a soft flange of eight', () => {
  const rounds = (count: number) => ({
    model: RING_OF_EIGHT,
    order,
    targetsN: Array.from({ length: count }, () => 100),
  });

  // Reference: numpy 2.4, the matrix of tight bolts inverted anew at each pull.
  it('leave what another program finds, star after star', () => {
    const { afterEachPull } = played(rounds(4));
    expect(rounded(afterEachPull?.[7])).toEqual([46.6, 129.21, 32.21, 99.62, 43.63, 136.94, 27.71, 100]);
    expect(rounded(afterEachPull?.[15])).toEqual([96.33, 114.68, 78.09, 99.85, 98.45, 114.71, 79.94, 100]);
    expect(rounded(afterEachPull?.[31])).toEqual([104.23, 107, 99.28, 99.99, 104.22, 108.51, 99.31, 100]);
  });

  it('tell the coefficients with all bolts tight', () => {
    const first = played(rounds(1)).interaction.map((row) => row[0]);
    expect(first.map((one) => Number(one?.toFixed(4)))).toEqual([
      1, -0.3953, 0.1843, -0.0195, -0.0038, -0.0195, 0.1843, -0.3953,
    ]);
  });

  it('count pulls, and those that turned nothing', () => {
    const { pulls, idlePulls, afterEachPull, afterEachRound } = played(rounds(3));
    expect({ pulls, rows: afterEachPull?.length, rounds: afterEachRound.length }).toEqual({
      pulls: 24,
      rows: 24,
      rounds: 3,
    });
    expect(idlePulls).toBeGreaterThan(0);
  });

  it('end the same from the coefficients as from the compliance', () => {
    const whole = played(rounds(3));
    const fromCoefficients = played({
      interaction: whole.interaction.map((row) => [...row]),
      order,
      targetsN: [100, 100, 100],
    });
    fromCoefficients.finalN.forEach((force, index) => expect(force).toBeCloseTo(whole.finalN[index]!, 9));
  });

  it('go on from forces that are there already', () => {
    const once = played(rounds(1));
    const twice = played({ ...rounds(1), startN: [...once.finalN] });
    expect(rounded(twice.finalN)).toEqual([96.33, 114.68, 78.09, 99.85, 98.45, 114.71, 79.94, 100]);
  });

  it('end more even round the circle than in a star on a soft gasket', () => {
    const circular = played({ ...rounds(3), order: [1, 2, 3, 4, 5, 6, 7, 8] });
    expect(circular.coefficientOfVariation).toBeLessThan(played(rounds(3)).coefficientOfVariation);
  });

  it('bring two wrenches pulling at once to their targets together', () => {
    const { afterEachPull } = played({ ...rounds(1) }, { atOnce: 2 });
    expect(afterEachPull).toHaveLength(4);
    expect(afterEachPull?.[3]?.[3]).toBeCloseTo(100, 9);
    expect(afterEachPull?.[3]?.[7]).toBeCloseTo(100, 9);
  });
});

it('reckons with the pressed gasket from the second round on', () => {
  const first = matrixOf(2, (i, j) => (i === j ? 1 : 0.5));
  const later = matrixOf(2, (i, j) => (i === j ? 1 : 0));
  const round = { bolts: [0, 1], targetsN: [100, 100] };
  expect([...simulate({ first, later }, [round]).finalN]).toEqual([50, 100]);
  expect([...simulate({ first, later }, [round, round]).finalN]).toEqual([100, 100]);
});

describe('a slack bolt', () => {
  // Two bolts that share nearly all of their compliance: the second closes the joint under the first.
  const complianceMmPerN = [
    [1, 0.9, 0],
    [0.9, 1, 0],
    [0, 0, 1],
  ];

  it('carries nothing, never less', () => {
    const { afterEachPull } = played({ complianceMmPerN, order: [1, 2, 3], targetsN: [[10, 100, 10]] });
    expect(afterEachPull).toEqual([
      [10, 0, 0],
      [0, 100, 0],
      [0, 100, 10],
    ]);
  });

  it('has all its slack to take up before it carries again', () => {
    // With the travel of the second bolt kept (100), the first must come to 0.9·100 before it carries.
    const { finalN } = played({
      complianceMmPerN,
      order: [1, 2, 3],
      targetsN: [
        [10, 100, 10],
        [50, 1, 1],
      ],
    });
    expect(finalN).toEqual([50, expect.closeTo(100 - 0.9 * 50, 9), 10]);
  });
});

/** Symmetric and positive definite: G·Gᵀ, and each bolt's own compliance. */
const compliance = fc.integer({ min: 1, max: 7 }).chain((size) =>
  fc
    .tuple(
      fc.array(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: size, maxLength: size }), {
        minLength: size,
        maxLength: size,
      }),
      fc.double({ min: 0.05, max: 2, noNaN: true }),
    )
    .map(([g, own]) =>
      g.map((row, i) => g.map((other, j) => row.reduce((sum, one, k) => sum + one * other[k]!, i === j ? own : 0))),
    ),
);

const rounds = compliance.chain((complianceMmPerN) =>
  fc.record({
    complianceMmPerN: fc.constant(complianceMmPerN),
    order: fc.shuffledSubarray(
      complianceMmPerN.map((_, index) => index + 1),
      { minLength: complianceMmPerN.length },
    ),
    targetsN: fc.array(fc.double({ min: 1, max: 1000, noNaN: true }), { minLength: 1, maxLength: 5 }),
  }),
);

describe('any joint', () => {
  it('never shows a negative force', () => {
    fc.assert(
      fc.property(rounds, (request) => {
        const { afterEachPull } = played(request);
        expect(afterEachPull?.flat().every((force) => force >= 0)).toBe(true);
      }),
    );
  });

  it('carries the target after each pull, or more where it carried more', () => {
    fc.assert(
      fc.property(rounds, (request) => {
        const { afterEachPull = [] } = played(request);
        const count = request.order.length;
        for (const [step, forces] of afterEachPull.entries()) {
          const bolt = request.order[step % count]! - 1;
          const target = request.targetsN[Math.floor(step / count)]!;
          const before = step === 0 ? 0 : afterEachPull[step - 1]![bolt]!;
          expect(forces[bolt]).toBe(Math.max(before, target));
        }
      }),
    );
  });

  it('leaves all bolts as they were pulled where none takes part in another', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.1, max: 9, noNaN: true }), { minLength: 1, maxLength: 9 }), (own) => {
        const complianceMmPerN = own.map((one, i) => own.map((_, j) => (i === j ? one : 0)));
        const order = own.map((_, index) => own.length - index);
        const { finalN, spread, minOverTarget } = played({ complianceMmPerN, order, targetsN: [30, 100] });
        expect({ finalN, spread, minOverTarget }).toEqual({ finalN: own.map(() => 100), spread: 0, minOverTarget: 1 });
      }),
    );
  });

  it('comes to even forces when rounds go on, where no bolt is lifted above its target', () => {
    const neighbours = { kind: 'neighbours', arrangement: 'circle', count: 12, neighbour: 0.3, decay: 0.2 } as const;
    const twelve = Array.from({ length: 12 }, (_, index) => index + 1);
    const { spread } = played({ model: neighbours, order: twelve, targetsN: Array.from({ length: 40 }, () => 50) });
    expect(spread).toBeLessThan(0.001);
  });
});

describe('refusals', () => {
  const two = {
    complianceMmPerN: [
      [2, 1],
      [1, 2],
    ],
    order: [1, 2],
    targetsN: [100],
  };

  it.each<[string, object, string]>([
    [
      'a matrix that is not square',
      {
        complianceMmPerN: [
          [2, 1],
          [1, 2, 3],
        ],
      },
      'complianceMmPerN[1]',
    ],
    ['a matrix of another size', { complianceMmPerN: [[2]] }, 'complianceMmPerN'],
    [
      'a matrix that is not symmetric',
      {
        complianceMmPerN: [
          [2, 1],
          [1.1, 2],
        ],
      },
      'complianceMmPerN[1][0]',
    ],
    [
      'a matrix that is not positive definite',
      {
        complianceMmPerN: [
          [1, 2],
          [2, 1],
        ],
      },
      'complianceMmPerN',
    ],
    [
      'a bolt that does not give way',
      {
        complianceMmPerN: [
          [1, 0],
          [0, 0],
        ],
      },
      'complianceMmPerN[1][1]',
    ],
    [
      'two descriptions',
      {
        interaction: [
          [1, 0],
          [0, 1],
        ],
      },
      'interaction',
    ],
    ['no description', { complianceMmPerN: undefined }, 'complianceMmPerN'],
    [
      'coefficients of unlike sign',
      {
        complianceMmPerN: undefined,
        interaction: [
          [1, 0.2],
          [-0.2, 1],
        ],
      },
      'interaction[1][0]',
    ],
    [
      'a coefficient without its counterpart',
      {
        complianceMmPerN: undefined,
        interaction: [
          [1, 0.2],
          [0, 1],
        ],
      },
      'interaction[1][0]',
    ],
    [
      'a diagonal that is not 1',
      {
        complianceMmPerN: undefined,
        interaction: [
          [1, 0.1],
          [0.1, 2],
        ],
      },
      'interaction[1][1]',
    ],
    [
      'coefficients beyond any joint',
      {
        complianceMmPerN: undefined,
        interaction: [
          [1, 1.2],
          [1.2, 1],
        ],
      },
      'interaction',
    ],
    ['a position twice', { order: [2, 2] }, 'order[1]'],
    ['a gap', { order: [2] }, 'order'],
    ['a position that is not there', { order: [1, 3] }, 'order[1]'],
    ['an order for each round but one', { order: [[1, 2]], targetsN: [50, 100] }, 'order'],
    [
      'a fault in the order of a round',
      {
        order: [
          [1, 2],
          [1, 1],
        ],
        targetsN: [50, 100],
      },
      'order[1][1]',
    ],
    ['figures for other pulls', { targetsN: [50, [1, 2, 3]] }, 'targetsN[1]'],
    ['no round', { targetsN: [] }, 'targetsN'],
    ['a target of nothing', { targetsN: [0] }, 'targetsN[0]'],
    ['forces of other positions', { startN: [1, 2, 3] }, 'startN'],
  ])('name %s', (_, more, field) => {
    const read = parse(elasticInteractionRequestSchema, { ...two, ...more });
    const answer = read.ok ? elasticInteraction(read.value) : read;
    expect(answer).toMatchObject({ ok: false, failure: { field } });
  });

  it('name coefficients that contradict each other over a third bolt', () => {
    const interaction = [
      [1, -0.3, -0.1],
      [-0.3, 1, -0.3],
      [-0.2, -0.3, 1],
    ];
    const answer = elasticInteraction(
      elasticInteractionRequestSchema.parse({ interaction, order: [1, 2, 3], targetsN: [1] }),
    );
    expect(answer).toMatchObject({ ok: false, failure: { field: 'interaction[2][0]' } });
  });

  it('spare measured coefficients that are rounded', () => {
    const exact = played({ model: RING_OF_EIGHT, order, targetsN: [1] }).interaction;
    const interaction = exact.map((row) => row.map((one) => Number(one.toFixed(2))));
    expect(played({ interaction, order, targetsN: [100] }).finalN[7]).toBe(100);
  });
});

it('takes one bolt, two bolts and two hundred', () => {
  expect(played({ complianceMmPerN: [[1]], order: [1], targetsN: [7] }).finalN).toEqual([7]);
  const count = 200;
  const model = { kind: 'neighbours', arrangement: 'line', count, neighbour: 0.3, decay: 0.3 } as const;
  const all = Array.from({ length: count }, (_, index) => index + 1);
  expect(played({ model, order: all, targetsN: [1, 1] }, { everyPull: false })).not.toHaveProperty('afterEachPull');
});
