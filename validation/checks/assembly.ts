import { type Check, check, describeSource } from '../check.ts';
import { numberFrom } from '../got.ts';
import { OLD_PRELOADS, OLD_PRELOADS_014, OLD_TORQUES, OLD_TORQUES_014 } from '../published/older-assembly.ts';
import { VDI_2001_FINE, VDI_2015_COARSE } from '../published/vdi-2230-assembly.ts';

/** Tables print three figures and round on the way; 1.5 % is what we hold ourselves to. */
const OF_TABLE = { relative: 0.015, because: 'the guideline rounds coefficients and diameters on the way' };

const CLASSES = ['8.8', '10.9', '12.9'] as const;

interface Bolt {
  readonly thread: string;
  readonly propertyClass: string;
  readonly friction: number;
}

const inputOf = ({ thread, propertyClass, friction }: Bolt) => ({
  thread,
  propertyClass,
  threadFriction: friction,
  bearingFriction: friction,
});

const nameOf = ({ thread, propertyClass, friction }: Bolt): string => `${thread} ${propertyClass} μ ${friction}`;

const assembly = (bolt: Bolt, preloadKn: string, torqueNm: string): readonly Check[] => [
  check(`${nameOf(bolt)} preload`, () => numberFrom('assembly-torque', inputOf(bolt), 'preloadN') / 1000, {
    value: preloadKn,
    unit: 'kN',
    ...OF_TABLE,
  }),
  check(`${nameOf(bolt)} torque`, () => numberFrom('assembly-torque', inputOf(bolt), 'torqueNm'), {
    value: torqueNm,
    unit: 'N·m',
    ...OF_TABLE,
  }),
];

const fine = VDI_2001_FINE.flatMap(([thread, friction, preloads, torques]) =>
  CLASSES.flatMap((propertyClass, index) =>
    assembly({ thread, propertyClass, friction }, preloads[index] ?? '', torques[index] ?? ''),
  ),
);

const coarse = VDI_2015_COARSE.flatMap(([thread, propertyClass, friction, preload, torque]) =>
  assembly({ thread, propertyClass, friction }, preload, torque),
);

type OldCell = readonly [thread: string, propertyClass: string, yieldMPa: number, friction: number, printed: string];
type Figure = 'preloadN' | 'torqueNm';

const EDITIONS = ['VDI 2230:1986', 'VDI 2230:2001'] as const;

interface Rounded {
  readonly unit: string;
  readonly relative: number;
  readonly because: string;
}

/** A cell fits the edition that it was made by, and is told apart from the later ones. */
const old =
  (figure: Figure, perUnit: number, theirs: Rounded) =>
  ([thread, propertyClass, yieldMPa, friction, value]: OldCell): readonly Check[] => {
    const bolt = { thread, propertyClass, friction };
    const of = (edition: (typeof EDITIONS)[number]) =>
      numberFrom('assembly-torque', { ...inputOf(bolt), proofStressMPa: yieldMPa, edition }, figure) / perUnit;
    const name = `${nameOf(bolt)} ${figure === 'preloadN' ? 'preload' : 'torque'}`;
    const offBy = () => of('VDI 2230:2001') / Number(value) - 1;
    return [
      check(`${name} of 1986`, () => of('VDI 2230:1986'), { ...theirs, value }),
      check(`${name} is none of 2001`, () => (offBy() > 0.03 ? 'more than 3 % above' : `${offBy()}`), {
        value: 'more than 3 % above',
        unit: '',
      }),
    ];
  };

const PRELOADS = { relative: 0.012, because: 'printed to two or three figures' };

export const ASSEMBLY_SOURCES = [
  describeSource('VDI 2230:2001, fine threads, 90 % of the yield strength (secondary table)', 'read', fine),
  describeSource('VDI 2230-1:2015, table A1, coarse threads', 'from memory', coarse),
  describeSource('Preloads and torques on the basis of VDI 2230:1986, technical sheet (secondary table)', 'read', [
    ...OLD_PRELOADS.flatMap(old('preloadN', 1, { unit: 'N', ...PRELOADS })),
    ...OLD_TORQUES.flatMap(
      old('torqueNm', 1, { unit: 'N·m', relative: 0.035, because: 'the sheet rounds torques to two or three figures' }),
    ),
  ]),
  describeSource(
    'Preloads at a friction of 0.14 on the basis of VDI 2230:1986, operating instructions (secondary table)',
    'read',
    OLD_PRELOADS_014.flatMap(old('preloadN', 1000, { unit: 'kN', ...PRELOADS })),
  ),
  describeSource(
    'Torques at a friction of 0.14 on the basis of VDI 2230:1986, operating manual (secondary table)',
    'read',
    OLD_TORQUES_014.flatMap(
      old('torqueNm', 1, { unit: 'N·m', relative: 0.02, because: 'printed to two or three figures' }),
    ),
  ),
];
