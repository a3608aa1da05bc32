// Flanges and covers of solid elements. Made by validation/made/solids.py with CalculiX 2.20, elements of 8 mm.

/** What one of two equal flanges closes at the bolts, from the one pulled on to that across, mm/N; coefficients of the pair. */
export interface SolidRing {
  readonly name: string;
  readonly model: {
    readonly count: number;
    readonly boltCircleMm: number;
    readonly outerMm: number;
    readonly innerMm: number;
    readonly heightMm: number;
    readonly gasketOuterMm: number;
    readonly gasketInnerMm: number;
    /** Both halves of the gasket, one to each flange. */
    readonly gasketThicknessMm: number;
    readonly gasketMPa: number;
    readonly boltNPerMm: number;
  };
  readonly closesMmPerN: readonly string[];
  readonly coefficients: readonly string[];
}

const FLAT_RING = {
      count: 12,
      boltCircleMm: 295,
      outerMm: 340,
      innerMm: 220,
      heightMm: 24,
      gasketOuterMm: 273,
      gasketInnerMm: 220,
      gasketThicknessMm: 2,
      gasketMPa: 500,
      boltNPerMm: 600_000,
    };
const GIRTH_RING = {
      count: 32,
      boltCircleMm: 1300,
      outerMm: 1360,
      innerMm: 1120,
      heightMm: 70,
      gasketOuterMm: 1200,
      gasketInnerMm: 1140,
      gasketThicknessMm: 2,
      gasketMPa: 800,
      boltNPerMm: 2_000_000,
    };

export const SOLID_RINGS: readonly SolidRing[] = [
  {
    name: 'eight bolts on 260 mm, ring 190 to 290 by 35 mm, soft gasket',
    model: {
      count: 8,
      boltCircleMm: 260,
      outerMm: 290,
      innerMm: 190,
      heightMm: 35,
      gasketOuterMm: 240,
      gasketInnerMm: 200,
      gasketThicknessMm: 2,
      gasketMPa: (150 * 120) / 110,
      boltNPerMm: 834_545.45,
    },
    closesMmPerN: ['3.8833e-6', '1.3404e-6', '-3.2816e-7', '-2.5235e-7', '-1.8684e-8'],
    coefficients: ['-0.3673', '0.1653', '-0.0112', '-0.0063'],
  },
  {
    name: 'twelve bolts on 295 mm, flat ring 220 to 340 by 24 mm',
    model: FLAT_RING,
    closesMmPerN: ['3.1298e-6', '1.4208e-6', '3.2396e-7', '1.0469e-7', '5.9964e-8', '3.2234e-8', '2.2190e-8'],
    coefficients: ['-0.3505', '0.0570', '-0.0120', '-0.0034', '-0.0002', '-0.0003'],
  },
  {
    name: '32 bolts on 1300 mm, ring 1120 to 1360 by 70 mm',
    model: GIRTH_RING,
    closesMmPerN: ['1.6849e-6', '1.2926e-6', '8.7743e-7', '6.1044e-7', '4.4149e-7', '3.2383e-7', '2.3739e-7'],
    coefficients: ['-0.4577', '-0.0009', '0.0035', '-0.0063', '-0.0030', '-0.0007'],
  },
];

/** Two of them on pipes of their bore: 150 mm of 6.3 mm wall, 500 mm of 16 mm wall. */
export const SOLID_RINGS_ON_PIPES: readonly (Pick<SolidRing, 'name' | 'closesMmPerN'> & { readonly model: object })[] = [
  {
    name: 'twelve bolts on 295 mm, flat ring on a pipe of 6.3 mm wall',
    model: { ...FLAT_RING, pipeWallMm: 6.3 },
    closesMmPerN: ['2.6721e-6', '1.1089e-6', '1.1755e-7', '-4.0502e-8', '-3.3431e-9', '2.0126e-8', '2.3084e-8'],
  },
  {
    name: '32 bolts on 1300 mm, ring on a pipe of 16 mm wall',
    model: { ...GIRTH_RING, pipeWallMm: 16 },
    closesMmPerN: ['1.2505e-6', '8.8689e-7', '5.1873e-7', '2.9411e-7', '1.7126e-7', '1.0382e-7', '6.5079e-8'],
  },
];

/** Forces that one round of the star 1 5 3 7 2 6 4 8 to 100 N leaves on the first of them; every pull solved anew. */
export const ONE_ROUND_ON_SOLIDS: readonly string[] = [
  '50.654',
  '126.679',
  '37.155',
  '99.371',
  '48.165',
  '133.164',
  '33.128',
  '100.000',
];

/** What a cover closes at its bolts for a force at one, mm/N. */
export interface SolidCover {
  readonly name: string;
  readonly model: {
    readonly heightMm: number;
    readonly edgeMm: number;
    readonly bedNPerMm3: number;
    readonly bedFromEdgeMm?: number;
    readonly bedWidthMm?: number;
  };
  /** The bolt that is pulled on, from 1, and what each bolt closes. */
  readonly closes: readonly (readonly [bolt: number, mmPerN: readonly string[]])[];
}

/** Twelve bolts on 295 mm; what lies across is alike on both sides. */
export const SOLID_DISCS: readonly SolidCover[] = [
  {
    name: 'round cover of 340 by 24 mm on a ring gasket of 220 to 273 mm',
    model: { heightMm: 24, edgeMm: 22.5, bedNPerMm3: 500, bedFromEdgeMm: 33.5, bedWidthMm: 26.5 },
    closes: [[1, ['2.0604e-6', '6.6565e-7', '-5.4251e-9', '8.0830e-9', '5.7683e-8', '5.9227e-8', '5.4907e-8']]],
  },
  {
    name: 'round cover of 340 by 24 mm on its whole face',
    model: { heightMm: 24, edgeMm: 22.5, bedNPerMm3: 50 },
    closes: [[1, ['2.6456e-6', '1.0073e-6', '-2.9971e-8', '-1.3553e-7', '-4.7356e-8', '-1.6920e-9', '7.2134e-9']]],
  },
];

/** Ten bolts along the edge, 120 mm apart along and 100 mm across, clockwise from the upper left. */
export const SOLID_RECTANGLES: readonly SolidCover[] = [
  {
    name: 'cover of 400 by 240 by 25 mm on its whole face',
    model: { heightMm: 25, edgeMm: 20, bedNPerMm3: 50 },
    closes: [
      [1, ['4.5662e-6', '3.0173e-7', '-6.5292e-8', '7.5717e-9', '8.6963e-9']],
      [2, ['3.0173e-7', '2.3729e-6', '3.9984e-7', '-6.5292e-8', '-5.4603e-8']],
      [5, ['8.6963e-9', '-5.4603e-8', '-1.7181e-7', '6.1705e-7', '2.4865e-6']],
    ],
  },
  {
    name: 'cover of 400 by 240 by 25 mm on a frame of 20 mm, 35 mm from its edge',
    model: { heightMm: 25, edgeMm: 20, bedNPerMm3: 500, bedFromEdgeMm: 35, bedWidthMm: 20 },
    closes: [
      [1, ['5.9619e-6', '2.1927e-7', '6.7806e-9', '5.0225e-8', '2.9042e-9']],
      [2, ['2.1927e-7', '1.9217e-6', '2.6554e-7', '6.7806e-9', '-1.5259e-8']],
      [5, ['2.9042e-9', '-1.5259e-8', '-2.1544e-7', '5.0783e-7', '2.0368e-6']],
    ],
  },
];

/** Bar of 450 by 60 by 40 mm on a bed of 50 N/mm³, five bolts 90 mm apart: the bolt pulled on, and what each closes, mm/N. */
export const SOLID_STRIP: readonly (readonly [bolt: number, mmPerN: readonly string[]])[] = [
  [1, ['3.0928e-6', '9.2573e-7', '-1.7663e-8', '-1.5048e-7', '-5.8636e-8']],
  [3, ['-1.7663e-8', '9.9278e-7', '1.9676e-6', '9.9278e-7', '-1.7663e-8']],
];
