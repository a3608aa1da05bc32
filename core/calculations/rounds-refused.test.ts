import { describe, expect, it } from 'vitest';
import { type CalculationName, calculate } from './registry.ts';

/* Every calculation that rests on how one bolt unloads another, held to the same bad input; and the order alone. */

const EVEN = [
  [2, 1],
  [1, 2],
];
const ASKED = {
  'elastic-interaction': { order: [1, 2], targetsN: [100] },
  'round-targets': { order: [1, 2], finalN: 100, rounds: 1 },
  'order-search': { targetN: 100, mostPulls: 2 },
} as const satisfies Partial<Record<CalculationName, object>>;
type Asked = keyof typeof ASKED;
const EACH: readonly Asked[] = ['elastic-interaction', 'round-targets', 'order-search'];
const IN_ORDER: readonly Asked[] = ['elastic-interaction', 'round-targets'];

const refusedAt = (name: CalculationName, request: object): string => {
  const answer = calculate(name, request);
  if (answer.ok) return 'accepted';
  return answer.failure.kind === 'invalid' && answer.failure.message !== ''
    ? answer.failure.field
    : answer.failure.kind;
};

describe.each(EACH)('%s', (name) => {
  it.each<[string, object, string]>([
    ['not square', { complianceMmPerN: [[2, 1], [1]] }, 'complianceMmPerN[1]'],
    [
      'not symmetric',
      {
        complianceMmPerN: [
          [2, 1],
          [1.1, 2],
        ],
      },
      'complianceMmPerN[1][0]',
    ],
    [
      'not positive definite',
      {
        complianceMmPerN: [
          [1, 2],
          [2, 1],
        ],
      },
      'complianceMmPerN',
    ],
    [
      'hardly positive definite',
      {
        complianceMmPerN: [
          [1, 1 - 1e-8],
          [1 - 1e-8, 1],
        ],
      },
      'complianceMmPerN',
    ],
    [
      'of figures next to nothing',
      {
        complianceMmPerN: [
          [1e-320, 0],
          [0, 1e-320],
        ],
      },
      'complianceMmPerN',
    ],
    [
      'of figures beyond reason',
      {
        complianceMmPerN: [
          [1e308, 0],
          [0, 1e308],
        ],
      },
      'complianceMmPerN[0][0]',
    ],
    [
      'of coefficients of unlike sign',
      {
        interaction: [
          [1, 0.2],
          [-0.2, 1],
        ],
      },
      'interaction[1][0]',
    ],
    ['of coefficients not square', { interaction: [[1, 0.2]] }, 'interaction[0]'],
  ])('refuses a matrix %s at its place', (_, source, field) => {
    expect(refusedAt(name, { ...source, ...ASKED[name] })).toBe(field);
  });

  it('refuses coefficients that contradict symmetry over a third bolt', () => {
    const interaction = [
      [1, -0.3, -0.1],
      [-0.3, 1, -0.3],
      [-0.2, -0.3, 1],
    ];
    const wanted = 'order' in ASKED[name] ? { order: [1, 2, 3] } : { mostPulls: 3 };
    expect(refusedAt(name, { interaction, ...ASKED[name], ...wanted })).toBe('interaction[2][0]');
  });

  it('refuses two bolts in one point', () => {
    const points = [
      { xMm: 0, yMm: 0 },
      { xMm: 0, yMm: 0 },
    ];
    const layout = { kind: 'points', points };
    const model = { kind: 'plate', layout, heightMm: 20, bedNPerMm3: 10, boltNPerMm: 1e6 };
    expect(refusedAt(name, { model, ...ASKED[name] })).toBe('model.layout.points[1]');
  });
});

describe.each(IN_ORDER)('the order of %s', (name) => {
  it.each<[string, readonly number[], string]>([
    ['a repeat', [2, 2], 'order[1]'],
    ['a gap', [2], 'order'],
    ['a position that is not there', [1, 3], 'order[1]'],
    ['more positions than the matrix has', [1, 2, 3], 'complianceMmPerN'],
  ])('is refused with %s', (_, order, field) => {
    expect(refusedAt(name, { complianceMmPerN: EVEN, ...ASKED[name], order })).toBe(field);
  });
});

it('refuses a target above the ceiling, one figure or one of several', () => {
  const request = { complianceMmPerN: EVEN, order: [1, 2], rounds: 1, ceilingN: 90 };
  expect(refusedAt('round-targets', { ...request, finalN: 100 })).toBe('finalN');
  expect(refusedAt('round-targets', { ...request, finalN: [80, 100] })).toBe('finalN[1]');
});

it.each([
  ['a repeat', { positions: [1, 2, 2] }, 'positions[2]'],
  ['a gap', { positions: [1, 2] }, 'positions'],
  [
    'two bolts in one point',
    { layout: 'points', count: undefined, points: [1, 1, 2].map(at), positions: [1, 2, 3] },
    'points[1]',
  ],
  ['neighbours as one where there is no star', { neighboursAsOne: 2, positions: [1, 2, 3] }, 'neighboursAsOne'],
  ['one position', { count: 1, positions: [1] }, 'count'],
])('an order of one’s own is refused with %s', (_, part, field) => {
  expect(refusedAt('tightening-order', { layout: 'circle', count: 3, method: 'own', ...part })).toBe(field);
});

function at(xMm: number) {
  return { xMm, yMm: 0 };
}

describe.each([1, 2, 200])('a joint of %i', (count) => {
  const model = { kind: 'neighbours', arrangement: 'line', count, neighbour: 0.3, decay: 0.3 };
  const order = Array.from({ length: count }, (_, index) => index + 1);

  it('is played through, planned and searched', () => {
    expect(refusedAt('elastic-interaction', { model, order, targetsN: [50, 100] })).toBe('accepted');
    expect(refusedAt('round-targets', { model, order, finalN: 100, rounds: 2, atOnce: 4 })).toBe('accepted');
    expect(refusedAt('order-search', { model, targetN: 100, mostPulls: count, draws: 20 })).toBe('accepted');
  });
});
