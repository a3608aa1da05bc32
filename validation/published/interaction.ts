// How bolts take part in each other. Made by validation/made/interaction.py with numpy 2.4.6 and scipy 1.17.1.

/** Endless beam, EI 6.72e10 N·mm², bed 500 N/mm²: distance in mm, deflection for 1 N in mm. */
export const ENDLESS_BEAM: readonly (readonly [distanceMm: number, mmPerN: string])[] = [
  [0, '6.567275e-6'],
  [50, '6.001541e-6'],
  [100, '4.776194e-6'],
];

/** Beam of 600 mm with free ends, EI 6.4e10 N·mm², bed 500 N/mm²; 400 cubic elements. */
export const FREE_BEAM: readonly (readonly [loadMm: number, atMm: number, mmPerN: string])[] = [
  [90, 0, '1.207481e-5'],
  [90, 90, '9.542637e-6'],
  [90, 300, '1.429202e-6'],
  [90, 600, '-7.958926e-7'],
  [0, 0, '2.661214e-5'],
  [0, 150, '5.301337e-6'],
];

/** Two flanges of eight bolts (section 50 by 35, centroid 120, gasket and bolts 10 inside and outside); 512 bars. */
export const RING_OF_EIGHT: readonly string[] = ['7.5508e-6', '2.7597e-6', '-6.8351e-7', '-5.2241e-7', '-1.986e-8'];

/** Plate of 60, E 70000, ν 0.33, bed 15 N/mm³: distance in characteristic lengths; finite differences, 24 a length. */
export const PLATE: readonly (readonly [lengths: number, mmPerN: string])[] = [
  [1, '5.411e-7'],
  [2, '2.2118e-7'],
];

/** kei of order zero by scipy. */
export const KEI: readonly (readonly [x: number, kei: string])[] = [
  [0, '-0.785398163'],
  [0.5, '-0.671581695'],
  [1, '-0.494994637'],
  [3, '-0.051121884'],
  [6, '0.007216492'],
];

/** First row of the closing compliance, 1e-6 mm/N, to which the bolts' own is added: as the next figures were made. */
export const CLOSING_OF_EIGHT: readonly number[] = [7.55016, 2.75971, -0.683504, -0.522425, -0.0198673];
export const BOLT_OF_EIGHT_N_PER_MM = (200_000 * 459) / 110;

/** Change of each bolt for 1 put on the first with all tight, from its neighbour to the one across. */
export const COEFFICIENTS_OF_EIGHT: readonly string[] = ['-0.395271336', '0.184327158', '-0.0195234122', '-0.00381752998'];

/**
 * The table of coefficients of a first round in the star order: what each bolt already tight changes, row by row, for 1 put
 * on each of those pulled after it.
 */
export const FIRST_ROUND_OF_EIGHT: readonly (readonly string[])[] = [
  ['0.002270959', '0.07830671', '0.07945677', '-0.3391171', '0.06141699', '-0.02103268', '-0.3952713'],
  ['0.07830671', '0.07945677', '0.03520184', '-0.3418384', '-0.3953516', '-0.01952341'],
  ['0.0146867', '-0.3391171', '0.06141699', '-0.3953516', '-0.01952341'],
  ['0.03520184', '-0.3418384', '-0.02103268', '-0.3952713'],
  ['-0.07730412', '0.1850335', '0.1843272'],
  ['0.1850335', '0.1843272'],
  ['-0.00381753'],
];

/** Forces left by rounds in the star order 1 5 3 7 2 6 4 8; every pull solved anew, slack bolts by least squares. */
export const ROUNDS_OF_EIGHT: readonly {
  readonly targetsN: readonly number[];
  readonly finalN: readonly string[];
}[] = [
  {
    targetsN: [100],
    finalN: ['46.6030301', '129.205657', '32.2111529', '99.618247', '43.625192', '136.936069', '27.7059463', '100'],
  },
  {
    targetsN: [100, 100, 100],
    finalN: ['103.446139', '108.049413', '95.9872919', '99.9637102', '103.455517', '109.535218', '96.0570984', '100'],
  },
  {
    targetsN: [30, 70, 100],
    finalN: ['70.6001251', '121.235464', '50.7307882', '99.7779769', '71.0004998', '121.462711', '51.1720916', '100'],
  },
];

/** What each pull in the same star must bring so that one round ends at 100 N, with so many wrenches at once. */
export const PLANS_OF_EIGHT: readonly { readonly atOnce: number; readonly targetsN: readonly string[] }[] = [
  {
    atOnce: 1,
    targetsN: ['135.294324', '135.602272', '158.421683', '160.783055', '67.8629352', '62.9932943', '100.381753', '100'],
  },
  {
    atOnce: 2,
    targetsN: ['135.602272', '135.602272', '160.783055', '160.783055', '62.9932943', '62.9932943', '100', '100'],
  },
  {
    atOnce: 3,
    targetsN: ['148.007752', '148.007752', '158.421683', '141.638431', '62.9932943', '62.9932943', '100', '100'],
  },
  { atOnce: 4, targetsN: ['160.783055', '160.783055', '160.783055', '160.783055', '100', '100', '100', '100'] },
];
