import { calculate } from '@clampwright/core/calculations';
import { endlessBeam, freeBeam, kei, plateClosing, plateFigures, ringClosing } from '@clampwright/core/layout';
import { z } from 'zod';
import { type Check, check, describeSource } from '../check.ts';
import { fieldFrom, got } from '../got.ts';
import {
  BOLT_OF_EIGHT_N_PER_MM,
  CLOSING_OF_EIGHT,
  COEFFICIENTS_OF_EIGHT,
  ENDLESS_BEAM,
  FIRST_ROUND_OF_EIGHT,
  FREE_BEAM,
  KEI,
  PLANS_OF_EIGHT,
  PLATE,
  RING_OF_EIGHT,
  ROUNDS_OF_EIGHT,
} from '../published/interaction.ts';

const MADE_WITH = 'computed with numpy 2.4.6, scipy 1.17.1';

const endless = ENDLESS_BEAM.map(([distanceMm, value]) =>
  check(
    `endless beam, ${distanceMm} mm from the force`,
    () => endlessBeam({ bendingNmm2: 6.72e10, bedNPerMm2: 500 }, distanceMm),
    { value, unit: 'mm/N' },
  ),
);

const ends = FREE_BEAM.map(([loadMm, atMm, value]) =>
  check(
    `beam with free ends, force at ${loadMm}, read at ${atMm} mm`,
    () => freeBeam({ bendingNmm2: 6.4e10, bedNPerMm2: 500 }, 600, loadMm)(atMm),
    { value, unit: 'mm/N' },
  ),
);

const SIZE_MM = { width: 50, height: 35, radius: 120 };
const ratio = SIZE_MM.height / SIZE_MM.width;

const ring = RING_OF_EIGHT.map((value, steps) =>
  check(
    `flange of eight, ${steps} bolts apart`,
    () =>
      2 *
      (ringClosing(
        {
          radiusMm: SIZE_MM.radius,
          bendingNmm2: (200_000 * SIZE_MM.width * SIZE_MM.height ** 3) / 12,
          torsionNmm2: 77_000 * SIZE_MM.width * SIZE_MM.height ** 3 * (1 / 3 - 0.21 * ratio * (1 - ratio ** 4 / 12)),
          bedNPerMm2: 3000,
          gasketInsideMm: 10,
          boltsOutsideMm: 10,
        },
        8,
      )[steps] ?? Number.NaN),
    { value, unit: 'mm/N', absolute: 1e-9, because: 'our series ends after 400 terms, theirs has 512 straight bars' },
  ),
);

const COVER = { heightMm: 60, modulusMPa: 70_000, poisson: 0.33, bedNPerMm3: 15 };

const plate = PLATE.map(([lengths, value]) =>
  check(
    `plate on a bed, ${lengths} characteristic lengths from the force`,
    () => plateClosing(COVER)(lengths * plateFigures(COVER).lengthMm),
    { value, unit: 'mm/N', relative: 5e-4, because: 'differences over a twenty-fourth of the characteristic length' },
  ),
);

const keis = KEI.map(([x, value]) => check(`kei(${x})`, () => kei(x), { value, unit: '' }));

const complianceMmPerN = CLOSING_OF_EIGHT.map((_, i) => i)
  .concat([5, 6, 7])
  .map((i) =>
    Array.from({ length: 8 }, (_, j) => {
      const steps = Math.min((i - j + 8) % 8, (j - i + 8) % 8);
      return 1e-6 * (CLOSING_OF_EIGHT[steps] ?? Number.NaN) + (i === j ? 1 / BOLT_OF_EIGHT_N_PER_MM : 0);
    }),
  );

const STAR = [1, 5, 3, 7, 2, 6, 4, 8];

const rounds: readonly Check[] = ROUNDS_OF_EIGHT.flatMap(({ targetsN, finalN }) =>
  finalN.map((value, index) =>
    check(
      `bolt ${index + 1} after rounds to ${targetsN.join(', ')}`,
      () => {
        const request = { complianceMmPerN, order: STAR, targetsN };
        const forces = fieldFrom('elastic-interaction', request, 'finalN');
        return Array.isArray(forces) ? Number(forces[index]) : Number.NaN;
      },
      { value, unit: 'N' },
    ),
  ),
);

const tables = z.object({ afterEachPull: z.array(z.array(z.number())), interaction: z.array(z.array(z.number())) });
const firstRound = () =>
  tables.parse(
    got(calculate('elastic-interaction', { complianceMmPerN, order: STAR, targetsN: [1], everyPull: true })),
  );

const coefficients: readonly Check[] = [
  ...COEFFICIENTS_OF_EIGHT.map((value, index) =>
    check(
      `bolt ${index + 2} for 1 put on bolt 1, all tight`,
      () => firstRound().interaction[index + 1]?.[0] ?? Number.NaN,
      { value, unit: '' },
    ),
  ),
  ...FIRST_ROUND_OF_EIGHT.flatMap((row, first) =>
    row.map((value, index) => {
      const [bolt, later] = [STAR[first] ?? 0, STAR[first + 1 + index] ?? 0];
      return check(
        `bolt ${bolt} for 1 put on bolt ${later} after it, in a first round`,
        () => {
          const { afterEachPull } = firstRound();
          const at = (pull: number, position: number) => afterEachPull[pull]?.[position - 1] ?? Number.NaN;
          const pull = first + 1 + index;
          return (at(pull, bolt) - at(pull - 1, bolt)) / at(pull, later);
        },
        { value, unit: '' },
      );
    }),
  ),
];

const targetsSchema = z.array(z.array(z.number()));

const plans: readonly Check[] = PLANS_OF_EIGHT.flatMap(({ atOnce, targetsN }) =>
  targetsN.map((value, pull) =>
    check(
      `pull ${pull + 1} of bolt ${STAR[pull]}, ${atOnce} at once`,
      () => {
        const request = { complianceMmPerN, order: STAR, finalN: 100, rounds: 1, atOnce };
        return targetsSchema.parse(fieldFrom('round-targets', request, 'targetsN'))[0]?.[pull] ?? Number.NaN;
      },
      { value, unit: 'N' },
    ),
  ),
);

export const INTERACTION_SOURCES = [
  describeSource('Hetényi, Beams on Elastic Foundation, endless beam (formula from memory)', MADE_WITH, endless),
  describeSource('Beam with free ends, finite elements', MADE_WITH, ends),
  describeSource('Flange ring, finite elements: straight bars that bend and twist', MADE_WITH, ring),
  describeSource('Plate on a bed, finite differences', MADE_WITH, plate),
  describeSource('Kelvin function kei', MADE_WITH, keis),
  describeSource(
    'Tables of interaction coefficients of a soft flange, each system solved anew',
    MADE_WITH,
    coefficients,
  ),
  describeSource('Rounds on a soft flange, every pull solved anew', MADE_WITH, rounds),
  describeSource('One round that ends even, let go group by group from its end', MADE_WITH, plans),
];
