import { byExponentialFit, EXPONENTIAL_FITS, pressureBody } from '@clampwright/core/joint';
import { convert } from '@clampwright/core/quantity';
import { check, describeSource } from '../check.ts';
import { fieldFrom, got, numberFrom } from '../got.ts';
import {
  EXAMPLE_8_2,
  EXAMPLE_8_2_DIAMETERS,
  EXAMPLE_8_4,
  EXPONENTIAL_CONSTANTS,
  LEAST_PRELOAD,
  M12_BY_HAND,
  SOLUTIONS,
} from '../published/joint-stiffness.ts';

const inches = (length: number): number => got(convert(length, 'in', 'mm'));
const megapsi = (modulus: number): number => got(convert(1000 * modulus, 'ksi', 'MPa'));

/** Mlbf/in, as the textbook tells a stiffness. */
const millionPounds = (complianceMmPerN: number): number =>
  got(convert(inches(1) / complianceMmPerN, 'N', 'lbf')) / 1e6;

/** One number out of a group of fields. */
function nested(input: unknown, group: string, field: string): number {
  const fields = fieldFrom('compliance', input, group);
  const found: unknown = Object.entries(fields ?? {}).find(([key]) => key === field)?.[1];
  if (typeof found !== 'number') throw new Error(`compliance gives no number ${group}.${field}`);
  return found;
}

const layer = (thickness: number, modulus: number) => ({
  thicknessMm: inches(thickness),
  modulusMPa: megapsi(modulus),
});

/** The textbook's bolt: washer face 1.5 d; its frusta do not look at the hole. */
const bolt = (thread: string, diameter: number, shank: number) => ({
  thread,
  shank: [{ lengthMm: inches(shank), diameterMm: inches(diameter) }],
  bearingOuterMm: inches(1.5 * diameter),
  holeMm: inches(1.1 * diameter),
  boltModulusMPa: megapsi(30),
});

const IN_8_4 = { ...bolt('5/8-11 UNC', 0.625, 0.75), layers: [layer(1.5, 14)] };
const IN_8_2 = { ...bolt('1/2-20 UNF', 0.5, 0.25), layers: [layer(0.595, 30), layer(0.75, 14.5)] };
const ALL_STEEL = { ...IN_8_2, layers: [layer(1.345, 30)] };
const UNIT = 'Mlbf/in';

const textbook = (input: unknown, field: 'boltMmPerN' | 'partsMmPerN'): number =>
  millionPounds(nested(input, 'shigley', field));
const fitted = (input: unknown): number => millionPounds(nested(input, 'exponentialFit', 'partsMmPerN'));

/** The frusta of example 8-2 one by one: steel and iron above the middle, iron below. */
function frusta() {
  const boltMm = inches(0.5);
  const plate = (thickness: number, modulus: number) => ({
    name: '',
    thicknessMm: inches(thickness),
    modulusMPa: megapsi(modulus),
    holeMm: boltMm,
    outerMm: Infinity,
  });
  const faceMm = inches(0.75);
  const bearing = { headMm: faceMm, nutMm: faceMm };
  return pressureBody([plate(0.595, 30), plate(0.75, 14.5)], bearing, Math.tan(Math.PI / 6));
}

const frustum = (index: number) => {
  const found = frusta()[index];
  if (found === undefined) throw new Error(`no frustum ${index}`);
  return found;
};

const inInches = (lengthMm: number): number => got(convert(lengthMm, 'mm', 'in'));

/** Parts of half the grip, each twice as stiff as the whole would be, one behind the other. */
const halves = (first: number, second: number): number => 1 / (1 / (2 * first) + 1 / (2 * second));

const ironFit = (): number => 1 / byExponentialFit(megapsi(14.5), inches(0.625), inches(1.5)).partsMmPerN;
const steelFit = (): number => 1 / byExponentialFit(megapsi(30), inches(0.625), inches(1.5)).partsMmPerN;

const M12_SOLUTION = {
  thread: 'M12',
  shank: [{ lengthMm: 30, diameterMm: 12 }],
  layers: [{ thicknessMm: 45 }],
  boltModulusMPa: 207_000,
};

const ROD = { ...bolt('3/8-16 UNC', 0.375, 13.5), layers: [layer(13.5, 30)] };

const M12 = {
  thread: 'M12',
  shank: [{ lengthMm: 20, diameterMm: 12 }],
  layers: [{ thicknessMm: 40, outerDiameterMm: 40 }],
};
const M12_CHECK = {
  ...M12,
  propertyClass: '8.8',
  threadFriction: 0.14,
  preloadN: 41_900,
  tighteningFactor: 1.8,
  embeddingUm: 9.5,
};

export const JOINT_STIFFNESS_SOURCES = [
  describeSource('Shigley’s Mechanical Engineering Design, 9th ed., example 8-4', 'read', [
    check('bolt, 8-17', () => textbook(IN_8_4, 'boltMmPerN'), { value: EXAMPLE_8_4.bolt, unit: UNIT }),
    check('parts, frusta, 8-22', () => textbook(IN_8_4, 'partsMmPerN'), { value: EXAMPLE_8_4.parts, unit: UNIT }),
    check('parts, exponential, 8-23', () => fitted(IN_8_4), { value: EXAMPLE_8_4.fit, unit: UNIT }),
    check('joint constant C', () => nested(IN_8_4, 'shigley', 'loadFactor'), { value: EXAMPLE_8_4.share, unit: '' }),
  ]),
  describeSource('Shigley’s Mechanical Engineering Design, 9th ed., example 8-2, frusta', 'read', [
    check('diameter where steel meets iron', () => inInches(frustum(0).toMm), {
      value: EXAMPLE_8_2_DIAMETERS.atJoint,
      unit: 'in',
    }),
    check('diameter in the middle', () => inInches(frustum(1).toMm), {
      value: EXAMPLE_8_2_DIAMETERS.atMiddle,
      unit: 'in',
    }),
  ]),
  describeSource('Shigley’s Mechanical Engineering Design, 9th ed., example 8-2, answers', 'from memory', [
    check('frustum of steel', () => millionPounds(frustum(0).complianceMmPerN), {
      value: EXAMPLE_8_2.steelAbove,
      unit: UNIT,
    }),
    check('frustum of iron above the middle', () => millionPounds(frustum(1).complianceMmPerN), {
      value: EXAMPLE_8_2.ironAbove,
      unit: UNIT,
      absolute: 0.3,
      because: 'so thin a frustum magnifies the rounding of its diameters',
    }),
    check('frustum of iron below', () => millionPounds(frustum(2).complianceMmPerN), {
      value: EXAMPLE_8_2.ironBelow,
      unit: UNIT,
    }),
    check('parts of steel and iron', () => textbook(IN_8_2, 'partsMmPerN'), { value: EXAMPLE_8_2.mixed, unit: UNIT }),
    check('parts all of steel', () => textbook(ALL_STEEL, 'partsMmPerN'), { value: EXAMPLE_8_2.steel, unit: UNIT }),
    check('parts all of steel, exponential', () => fitted(ALL_STEEL), { value: EXAMPLE_8_2.steelFit, unit: UNIT }),
    check('bolt', () => textbook(IN_8_2, 'boltMmPerN'), {
      value: EXAMPLE_8_2.bolt,
      unit: UNIT,
      absolute: 0.006,
      because: 'worked with a stress area of four figures',
    }),
  ]),
  describeSource(
    'Shigley’s Mechanical Engineering Design, 9th ed., table 8-8',
    'read',
    EXPONENTIAL_CONSTANTS.flatMap(([material, a, b]) => {
      const row = EXPONENTIAL_FITS.find((fit) => fit.material === material);
      return [
        check(`${material}: A`, () => row?.a ?? 'missing', { value: a, unit: '' }),
        check(`${material}: B`, () => row?.b ?? 'missing', { value: b, unit: '' }),
      ];
    }),
  ),
  describeSource('Solutions to Shigley, chapter 8 (8th ed.)', 'read', [
    check('8-19, parts of iron', () => millionPounds(1 / ironFit()), { value: SOLUTIONS.iron, unit: UNIT }),
    check('8-19, parts of steel', () => millionPounds(1 / steelFit()), { value: SOLUTIONS.steel, unit: UNIT }),
    check('8-19, half of each', () => millionPounds(1 / halves(ironFit(), steelFit())), {
      value: SOLUTIONS.halves,
      unit: UNIT,
    }),
    check('8-20, M12 bolt', () => 1 / nested(M12_SOLUTION, 'shigley', 'boltMmPerN') / 1000, {
      value: SOLUTIONS.m12,
      unit: 'MN/m',
      relative: 0.0005,
      because: 'worked with areas of three figures',
    }),
    check('8-38, rod', () => textbook(ROD, 'boltMmPerN'), { value: SOLUTIONS.rod, unit: UNIT }),
  ]),
  describeSource('VDI 2230-1:2015, formulas worked by hand, M12', 'common practice', [
    check('tan φ', () => nested(M12, 'cone', 'tangent'), { value: M12_BY_HAND.tangent, unit: '' }),
    check('δ_S', () => numberFrom('compliance', M12, 'boltMmPerN'), { value: M12_BY_HAND.bolt, unit: 'mm/N' }),
    check('δ_P', () => numberFrom('compliance', M12, 'partsMmPerN'), { value: M12_BY_HAND.parts, unit: 'mm/N' }),
    check('embedding loss', () => numberFrom('joint-check', M12_CHECK, 'embeddingLossN') / 1000, {
      value: M12_BY_HAND.embedding,
      unit: 'kN',
    }),
    check('both springs in a row', () => numberFrom('compliance', M12, 'jointNPerMm') / 1000, {
      value: M12_BY_HAND.stiffness,
      unit: 'kN/mm',
    }),
    check('preload a degree', () => numberFrom('tightening-angle', { ...M12, angleDeg: 10 }, 'slopeNPerDeg') / 1000, {
      value: M12_BY_HAND.perDegree,
      unit: 'kN/°',
      absolute: 0.001,
      because: 'worked from the rounded 272.1 kN/mm',
    }),
  ]),
  describeSource('VDI 2230-1, worked example of a guide to its reference values', 'read', [
    check('least preload, α_A 1.8', () => numberFrom('joint-check', M12_CHECK, 'assemblyMinN') / 1000, {
      value: LEAST_PRELOAD,
      unit: 'kN',
    }),
  ]),
];
