import { type Check, check, describeSource } from '../check.ts';
import { fieldFrom, numberFrom } from '../got.ts';
import {
  EN_1090_TORQUES,
  FAA_TORQUES,
  GUIDE_TORQUES,
  NASA_TORQUES_READ,
  NASA_TORQUES_RECALLED,
  PCC_1_TORQUES,
  SAE_CLAMPS,
  SAE_SMALL,
  TEXTBOOK_NUMBER_10,
} from '../published/torque-tables.ts';

const N_PER_LBF = 4.4482216152605;
const NM_PER_LBF_IN = N_PER_LBF * 0.0254;
const NM_PER_LBF_FT = 12 * NM_PER_LBF_IN;
const MM2_PER_IN2 = 645.16;

const of = (thread: string, field: string) => numberFrom('fastener', { thread }, field);

/** The bearing ring does not enter the short form; small sizes have no head in our tables. */
function shortForm(thread: string, nutFactor: number, preloadN: number): number {
  const d = of(thread, 'majorDiameterMm');
  const ring = { bearingOuterMm: 1.5 * d, holeMm: 1.1 * d };
  return numberFrom('assembly-torque', { thread, nutFactor, preloadN, ...ring }, 'torqueNm');
}

const guide = GUIDE_TORQUES.map(([thread, stressPsi, nutFactor, value]): Check => {
  const preloadN = () => (stressPsi * N_PER_LBF * of(thread, 'stressAreaMm2')) / MM2_PER_IN2;
  return check(
    `${thread} at ${stressPsi} psi, K ${nutFactor}`,
    () => shortForm(thread, nutFactor, preloadN()) / NM_PER_LBF_FT,
    { value, unit: 'lbf·ft', absolute: 0.8, because: 'printed in whole lbf·ft, cut or rounded' },
  );
});

const clampLbf = (thread: string, propertyClass: string) =>
  (0.75 * numberFrom('fastener', { thread, propertyClass }, 'proofLoadN')) / N_PER_LBF;

const sae = SAE_SMALL.flatMap(([thread, grade, clamp, dry, lubricated]): readonly Check[] => {
  const torque = (nutFactor: number) => () => shortForm(thread, nutFactor, Number(clamp) * N_PER_LBF) / NM_PER_LBF_IN;
  const rounded = { unit: 'lbf·in', absolute: 0.65, because: 'printed in whole lbf·in' };
  return [
    check(`${thread} ${grade} clamp load`, () => clampLbf(thread, grade), {
      value: clamp,
      unit: 'lbf',
      absolute: 11,
      because: 'the sheet rounds to 20 lbf',
    }),
    check(`${thread} ${grade} torque dry`, torque(0.2), { value: dry, ...rounded }),
    check(`${thread} ${grade} torque lubricated`, torque(0.15), { value: lubricated, ...rounded }),
  ];
});

const larger = SAE_CLAMPS.map(
  ([thread, grade, value]): Check =>
    check(`${thread} ${grade} clamp load`, () => clampLbf(thread, grade), {
      value,
      unit: 'lbf',
      absolute: 60,
      because: 'the sheet rounds to 50 or 100 lbf',
    }),
);

const en1090 = EN_1090_TORQUES.map(
  ([thread, preloadKn, nutFactor, value]): Check =>
    check(`${thread} 10.9, k ${nutFactor}`, () => shortForm(thread, nutFactor, 1100 * preloadKn), {
      value,
      unit: 'N·m',
      relative: 0.012,
      because: 'printed in steps of 50 N·m',
    }),
);

/** 50 ksi on the root area with the torque printed: the nut factor that the friction calculation finds. */
const pcc1 = PCC_1_TORQUES.flatMap(([thread, noncoated, coated]): readonly Check[] => {
  const preloadN = () => {
    const rootMm = of(thread, 'majorDiameterMm') - 1.226869 * of(thread, 'pitchMm');
    return (50_000 * N_PER_LBF * (Math.PI / 4) * rootMm ** 2) / MM2_PER_IN2;
  };
  const found = (torque: number) => () => {
    const input = { thread, head: 'ASME B18.2.1 heavy hex', torqueNm: torque * NM_PER_LBF_FT, preloadN: preloadN() };
    return numberFrom('friction', input, 'nutFactor');
  };
  const because = 'the standard adjusts the table by experience: a range, no formula';
  return [
    check(`${thread} noncoated, nut factor`, found(noncoated), { value: '0.20', unit: '', absolute: 0.03, because }),
    check(`${thread} coated, nut factor`, found(coated), { value: '0.15', unit: '', absolute: 0.02, because }),
  ];
});

const sense = (fastener: object, torqueLbfIn: number) => () => {
  const input = { ...fastener, torqueNm: torqueLbfIn * NM_PER_LBF_IN, typedUnit: 'lbf·in' };
  return String(fieldFrom('torque-plausibility', input, 'assessment'));
};

function senseOfRange(thread: string, propertyClass: string, from: number, to: number, friction?: object) {
  const fastener = { thread, propertyClass, ...friction };
  const usual = { value: 'usual', unit: '' };
  return [
    check(`${thread} from ${from} lbf·in makes sense`, sense(fastener, from), usual),
    check(`${thread} to ${to} lbf·in makes sense`, sense(fastener, to), usual),
    check(`${thread} ${to} lbf·in typed as lbf·ft breaks it`, sense(fastener, 12 * to), {
      value: 'beyond-ultimate',
      unit: '',
    }),
  ];
}

/** Steel bolts of 125 ksi as in airframes; grade 5 has 120 ksi. */
const faa = FAA_TORQUES.flatMap(([thread, from, to]) => senseOfRange(thread, 'grade 5', from, to));

/** The table takes the root of the sharp thread, d − 1.299·P. */
const rootAreaIn2 = (thread: string) =>
  ((Math.PI / 4) * (of(thread, 'majorDiameterMm') - 1.299038 * of(thread, 'pitchMm')) ** 2) / MM2_PER_IN2;

/** At the table's own frictions; the torques come out at 43 to 49 and 64 to 73 ksi on the root area, of 150 ksi. */
const nasa = (rows: typeof NASA_TORQUES_READ) =>
  rows.flatMap(([thread, area, from, to]) => [
    check(`${thread} root area`, () => rootAreaIn2(thread), { value: area, unit: 'in²' }),
    ...senseOfRange(thread, 'grade 8', from, to, { lowestFriction: 0.12, highestFriction: 0.14 }),
  ]);

const friction = (input: object, field: string) => () => numberFrom('friction', input, field);
/** D_b = (12.5 + 9)/2 = 10.75 mm. */
const M8 = { thread: 'M8', bearingOuterMm: 12.5, holeMm: 9 };

const theory = (both: number) => () =>
  numberFrom('assembly-torque', { ...M8, threadFriction: both, bearingFriction: both, preloadN: 10_000 }, 'nutFactor');

export const TORQUE_RULE_SOURCES = [
  describeSource(
    'T = K·d·F in a fastening textbook, p. 85',
    'read',
    TEXTBOOK_NUMBER_10.map(([nutFactor, value]) =>
      check(
        `#10, 1275 lbf, K ${nutFactor}`,
        () => shortForm('#10-24 UNC', nutFactor, 1275 * N_PER_LBF) / NM_PER_LBF_IN,
        {
          value,
          unit: 'lbf·in',
          absolute: 0.06,
          because: 'printed with the half rounded either way',
        },
      ),
    ),
  ),
  describeSource('General bolt tightening torque, a safety guide for conveyors, p. 14', 'read', guide),
  describeSource('Suggested torques for SAE J429 grades, technical data sheet', 'read', [...sae, ...larger]),
  describeSource('EN 1090-2, torque method, class 10.9 (secondary table)', 'read', en1090),
  describeSource(
    'FHWA, rotational capacity test: T ≤ 0.25·P·D, with the pretensions of AISC 360-05',
    'common practice',
    [
      check('3/4-10 UNC, 35 kip', () => shortForm('3/4-10 UNC', 0.25, 35_000 * N_PER_LBF) / NM_PER_LBF_FT, {
        value: '546.88',
        unit: 'lbf·ft',
      }),
      check('7/8-9 UNC, 49 kip', () => shortForm('7/8-9 UNC', 0.25, 49_000 * N_PER_LBF) / NM_PER_LBF_FT, {
        value: '893.23',
        unit: 'lbf·ft',
      }),
      check('1-8 UNC, 64 kip', () => shortForm('1-8 UNC', 0.25, 64_000 * N_PER_LBF) / NM_PER_LBF_FT, {
        value: '1333.33',
        unit: 'lbf·ft',
      }),
    ],
  ),
  describeSource('ASME PCC-1-2013, table 1, as ranges of the nut factor (secondary table)', 'read', pcc1),
  describeSource('FAA AC 43.13-1B, table 7-1, as a range that makes sense', 'read', faa),
  describeSource(
    'NASA RP-1228 (1990), class 8 bolts, as a range that makes sense (secondary table)',
    'read',
    nasa(NASA_TORQUES_READ),
  ),
  describeSource(
    'NASA RP-1228 (1990), class 8 bolts, larger sizes, as a range that makes sense',
    'from memory',
    nasa(NASA_TORQUES_RECALLED),
  ),
  describeSource('Shigley’s Mechanical Engineering Design, 9th ed., example 8-3', 'from memory', [
    check('3/4-16 UNF, 25 000 lbf, K 0.2', () => shortForm('3/4-16 UNF', 0.2, 25_000 * N_PER_LBF) / NM_PER_LBF_IN, {
      value: '3750',
      unit: 'lbf·in',
    }),
    check(
      '3/4-16 UNF, 25 000 lbf, f 0.15, collar 1.25 d',
      () =>
        numberFrom(
          'assembly-torque',
          {
            thread: '3/4-16 UNF',
            threadFriction: 0.15,
            bearingFriction: 0.15,
            preloadN: 25_000 * N_PER_LBF,
            // Mean diameter 1.25 d, as the book takes the collar.
            bearingOuterMm: 1.45 * 19.05,
            holeMm: 1.05 * 19.05,
          },
          'torqueNm',
        ) / NM_PER_LBF_IN,
      {
        value: '3551',
        unit: 'lbf·in',
        relative: 0.005,
        because: 'the book takes the exact helix and another mean diameter, ISO 16047 the linear form',
      },
    ),
  ]),
  describeSource('VDI 2230:2001, M12x1.25 at 48.0 kN and 90 N·m, back to its friction', 'read', [
    check('M12x1.25 total friction', friction({ thread: 'M12x1.25', torqueNm: 90, preloadN: 48_000 }, 'total'), {
      value: '0.12',
      unit: '',
      absolute: 0.0015,
      because: 'torque and preload are printed to two and three figures',
    }),
  ]),
  describeSource(
    'Alsardia, Acta Polytechnica Hungarica 21 (2024) 2, 133: M8 10.9 at 20 N·m (secondary transcription)',
    'read',
    [
      ...(
        [
          ['MoS₂', 23_710, '0.105'],
          ['as received', 22_830, '0.110'],
          ['oiled', 17_710, '0.141'],
          ['dry', 12_950, '0.193'],
        ] as const
      ).map(([state, preloadN, value]) =>
        check(`nut factor ${state}`, friction({ ...M8, torqueNm: 20, preloadN }, 'nutFactor'), { value, unit: '' }),
      ),
      ...(
        [
          [0.08, '0.120'],
          [0.1, '0.144'],
          [0.13, '0.180'],
        ] as const
      ).map(([both, value]) => check(`nut factor of theory, μ ${both}`, theory(both), { value, unit: '' })),
      check('nut factor of theory, μ 0.12', theory(0.12), {
        value: '0.168',
        misprint: '0.171',
        unit: '',
        because: 'the three other figures fix the formula, which gives 0.1677 here',
      }),
    ],
  ),
];
