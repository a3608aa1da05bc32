import { boltAloneLengthMm, boltAloneTurnDeg, en1090Turn, rcscTurn } from '@clampwright/core/joint';
import { roundBarNmPerDeg, squareBarNmPerDeg, windUpDeg } from '@clampwright/core/procedure';
import { convert } from '@clampwright/core/quantity';
import { type Check, check, describeSource } from '../check.ts';
import { got, numberFrom } from '../got.ts';
import {
  BOLT_ALONE,
  EN_1090_2_TURNS,
  RCSC_LENGTHS,
  RCSC_TURNS,
  ROTATIONAL_CAPACITY,
  TURNS_BY_HAND,
  WIND_UP,
} from '../published/turns.ts';

const inches = (length: number): number => got(convert(length, 'in', 'mm'));
const pounds = (force: number): number => got(convert(force, 'lbf', 'N'));

const SLOPES = ['none', 'one', 'both'] as const;

const rcsc = (diameters: number, sloped: (typeof SLOPES)[number], value: string): Check =>
  check(`${diameters} d, faces sloped: ${sloped}`, () => rcscTurn(diameters * 20, 20, sloped)?.angleDeg ?? 'none', {
    value,
    unit: '°',
  });

/** Angle to a preload from no load, with the printed stiffnesses, Mlbf/in and lbf. */
function turn(thread: string, boltStiffness: number, partsStiffness: number, load: number): number {
  const mmPerN = (stiffness: number) => inches(1) / pounds(stiffness * 1e6);
  const known = { boltMmPerN: mmPerN(boltStiffness), partsMmPerN: mmPerN(partsStiffness) };
  return numberFrom('tightening-angle', { thread, ...known, preloadN: pounds(load) }, 'angleDeg');
}

/** MIL-HDBK-60 holds for any one unit of length. */
const HALF_INCH = {
  stressDiameterMm: 0.4252,
  diameterMm: 0.5,
  shankMm: 1,
  headMm: 0.3125,
  jointMm: 2,
  nutMm: 0.4375,
};

const thinBar = (): number => roundBarNmPerDeg(12.7, 0, 250);
const thickBar = (): number => roundBarNmPerDeg(19.05, 0, 400);

export const TURN_SOURCES = [
  describeSource(
    'RCSC Specification, table 8.2 (secondary table)',
    'read',
    RCSC_TURNS.flatMap(([diameters, ...turns]) =>
      SLOPES.map((sloped, index) => rcsc(diameters, sloped, turns[index] ?? '')),
    ),
  ),
  describeSource(
    'A table of lengths for turn-of-nut',
    'read',
    RCSC_LENGTHS.map(([diameter, length, value]) =>
      check(
        `${diameter} in, ${length} in long`,
        () => rcscTurn(inches(length), inches(diameter), 'none')?.angleDeg ?? 'none',
        { value, unit: '°' },
      ),
    ),
  ),
  describeSource(
    'Rotational capacity test, a county’s record: twice the turn',
    'read',
    ROTATIONAL_CAPACITY.map(([diameters, value]) =>
      check(`${diameters} d`, () => 2 * (rcscTurn(diameters * 20, 20, 'none')?.angleDeg ?? Number.NaN), {
        value,
        unit: '°',
      }),
    ),
  ),
  describeSource(
    'EN 1090-2, combined method, second step (secondary table)',
    'read',
    EN_1090_2_TURNS.map(([diameters, value]) =>
      check(`t = ${diameters} d`, () => en1090Turn(diameters * 24, 24)?.angleDeg ?? 'none', { value, unit: '°' }),
    ),
  ),
  // The handbook gives the formulas, the textbook the stiffnesses; the angles are those formulas worked by hand.
  describeSource('MIL-HDBK-60, formulas worked by hand', 'common practice', [
    check('90 ksi over 6 in', () => boltAloneTurnDeg(90_000, 6, 30e6, 0.1), { value: BOLT_ALONE.turn, unit: '°' }),
    check('L_B of a 1/2 in bolt', () => boltAloneLengthMm(HALF_INCH), { value: BOLT_ALONE.length, unit: 'in' }),
  ]),
  describeSource('Stiffnesses of Shigley’s examples, turned by hand', 'common practice', [
    check('example 8-4, 14.4 kip', () => turn('5/8-11 UNC', 5.21, 8.95, 14_400), {
      value: TURNS_BY_HAND.example84,
      unit: '°',
    }),
    check('example 8-2, 10 194 lbf', () => turn('1/2-20 UNF', 3.694, 14.639, 10_193.62), {
      value: TURNS_BY_HAND.example82,
      unit: '°',
    }),
  ]),
  describeSource('Torsion of steel bars, worked by hand', 'common practice', [
    check('round 12.7 × 250', thinBar, { value: WIND_UP.thin, unit: 'N·m/°' }),
    check('the same at 100 N·m', () => windUpDeg(100, 0, thinBar()), { value: WIND_UP.thinAt100, unit: '°' }),
    check('round 19.05 × 400', thickBar, { value: WIND_UP.thick, unit: 'N·m/°' }),
    check('the same at 400 N·m', () => windUpDeg(400, 0, thickBar()), { value: WIND_UP.thickAt400, unit: '°' }),
    check('square 12.7 × 15', () => squareBarNmPerDeg(12.7, 15), { value: WIND_UP.square, unit: 'N·m/°' }),
  ]),
];
