import { interactionOf, modelled, modelSchema } from '@clampwright/core/layout';
import { type Check, check, describeSource } from '../check.ts';
import { fieldFrom, got } from '../got.ts';
import {
  ONE_ROUND_ON_SOLIDS,
  SOLID_DISCS,
  SOLID_RECTANGLES,
  SOLID_RINGS,
  SOLID_RINGS_ON_PIPES,
  SOLID_STRIP,
  type SolidCover,
} from '../published/solids.ts';

const MADE_WITH = 'computed with CalculiX 2.20';

/** How near the models come to solids, over the closing at the bolt pulled on; docs/order.md tells it. */
const [RING_SHARE, PIPE_SHARE, COVER_SHARE, BAR_SHARE] = [0.04, 0.09, 0.11, 0.07];
/** Stiffness of each bolt; told to the model, and taken out again of what it gives. */
const BOLT = { boltNPerMm: 600_000 };

/** Compliance of a model, bolts included. */
const jointOf = (model: object) => got(modelled(modelSchema.parse({ ...BOLT, ...model }))).first;

/** What the parts close at one position for a unit of force at another, both from 1, without the bolts' own. */
function closingOf(model: object, at: number, loaded: number): number {
  const { size, values } = jointOf({ ...model, ...BOLT });
  return (values[(at - 1) * size + loaded - 1] ?? Number.NaN) - (at === loaded ? 1 / BOLT.boltNPerMm : 0);
}

/** Values beside those of solids; thin parts leave out shear and what the head presses in, which shows at the bolt itself. */
const closings = (
  name: string,
  ours: (at: number) => number,
  mmPerN: readonly string[],
  allowedMmPerN: number,
): readonly Check[] =>
  mmPerN.map((value, index) =>
    check(`${name}, at bolt ${index + 1}`, () => ours(index + 1), {
      value,
      unit: 'mm/N',
      absolute: allowedMmPerN,
      because: 'thin parts leave out shear and what the head presses in; share of the closing at the bolt pulled on',
    }),
  );

const rings = SOLID_RINGS.flatMap(({ name, model, closesMmPerN }) =>
  // half of the pair is one flange
  closings(
    name,
    (at) => closingOf({ kind: 'ring', ...model }, at, 1) / 2,
    closesMmPerN,
    RING_SHARE * Number(closesMmPerN[0]),
  ),
);

const onPipes = SOLID_RINGS_ON_PIPES.flatMap(({ name, model, closesMmPerN }) =>
  closings(
    name,
    (at) => closingOf({ kind: 'ring', ...model }, at, 1) / 2,
    closesMmPerN,
    PIPE_SHARE * Number(closesMmPerN[0]),
  ),
);

const coefficients = SOLID_RINGS.flatMap(({ name, model, coefficients: printed }) =>
  printed.map((value, index) =>
    check(
      `${name}: change of bolt ${index + 2} for 1 put on bolt 1`,
      () => {
        const { size, values } = interactionOf(jointOf({ kind: 'ring', ...model }));
        return values[(index + 1) * size] ?? Number.NaN;
      },
      { value, unit: '', absolute: 0.03, because: 'bent rings beside solids' },
    ),
  ),
);

const afterOneRound = ONE_ROUND_ON_SOLIDS.map((value, index) =>
  check(
    `one star round to 100 N on eight bolts, bolt ${index + 1}`,
    () => {
      const model = { kind: 'ring', ...SOLID_RINGS[0]?.model };
      const forces = fieldFrom(
        'elastic-interaction',
        { model, order: [1, 5, 3, 7, 2, 6, 4, 8], targetsN: [100] },
        'finalN',
      );
      return Array.isArray(forces) ? Number(forces[index]) : Number.NaN;
    },
    { value, unit: 'N', absolute: 5, because: 'a twentieth of the target: bent rings beside solids' },
  ),
);

const CIRCLE = { kind: 'circle', count: 12, diameterMm: 295, firstAngleDeg: 0, direction: 'clockwise' };
const GRID = { kind: 'rectangle', rows: 3, columns: 4, pitchXMm: 120, pitchYMm: 100, edgeOnly: true };

const covers = (all: readonly SolidCover[], layout: object): readonly Check[] =>
  all.flatMap(({ name, model, closes }) =>
    closes.flatMap(([bolt, mmPerN]) =>
      closings(
        `${name}, pulled on bolt ${bolt}`,
        (at) => closingOf({ kind: 'plate', layout, ...model }, at, bolt),
        mmPerN,
        COVER_SHARE * Math.max(...mmPerN.map(Number)),
      ),
    ),
  );

const strip = SOLID_STRIP.flatMap(([bolt, mmPerN]) =>
  closings(
    `bar of five bolts, pulled on bolt ${bolt}`,
    (at) =>
      closingOf(
        { kind: 'strip', count: 5, spacingMm: 90, endMm: 45, widthMm: 60, heightMm: 40, bedNPerMm3: 50 },
        at,
        bolt,
      ),
    mmPerN,
    BAR_SHARE * Math.max(...mmPerN.map(Number)),
  ),
);

/** Far from corners: three bolts along two sides of a cover that is 16 characteristic lengths long and wide. */
const EDGE_LENGTHS = 8;
const onItsEdge = check(
  'closing at a free edge for a force on it, over that of the force spread on a square of the characteristic length',
  () => {
    const lengthMm = ((200_000 * 20 ** 3) / (12 * (1 - 0.3 ** 2)) / 50) ** 0.25;
    const pitchXMm = EDGE_LENGTHS * lengthMm;
    const layout = { kind: 'rectangle', rows: 2, columns: 3, pitchXMm, pitchYMm: 2 * pitchXMm, edgeOnly: false };
    const model = { kind: 'plate', layout, heightMm: 20, edgeMm: 0.001, bedNPerMm3: 50 };
    return closingOf(model, 2, 2) * 50 * lengthMm ** 2;
  },
  { value: '0.45724', unit: '', relative: 0.005, because: 'a cover of 16 lengths, and terms that end' },
);

export const SOLID_SOURCES = [
  describeSource('Westergaard (1926), plate on a bed, force at an edge: (1 + 0.4·ν)/√6', 'from memory', [onItsEdge]),
  describeSource('Flange pairs of solid elements', MADE_WITH, rings),
  describeSource('Flange pairs on pipes, of solid elements', MADE_WITH, onPipes),
  describeSource('Coefficients of elastic interaction of flange pairs of solid elements', MADE_WITH, coefficients),
  describeSource('One star round on a flange pair of solid elements', MADE_WITH, afterOneRound),
  describeSource('Round covers of solid elements', MADE_WITH, covers(SOLID_DISCS, CIRCLE)),
  describeSource('Rectangular covers of solid elements', MADE_WITH, covers(SOLID_RECTANGLES, GRID)),
  describeSource('Bar of solid elements', MADE_WITH, strip),
];
