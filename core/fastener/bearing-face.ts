import { INCH_HOLES, METRIC_HOLES } from './clearance-holes.ts';
import { HEAVY_HEX_HEADS, HEX_CAP_HEADS, type InchFaceRow, STRUCTURAL_HEADS } from './inch-faces.ts';
import { HEX_HEADS, HEX_NUTS, HR_HEADS, HV_HEADS, SOCKET_HEADS } from './metric-faces.ts';
import { inchesToMm, type Thread } from './thread.ts';

/** Heads and nuts whose bearing face is known; to add one, add a table and a line here. */
export const BEARING_STANDARDS = [
  'ISO 4014',
  'ISO 4017',
  'ISO 4762',
  'ISO 4032',
  'EN 14399-3',
  'EN 14399-4',
  'ASME B18.2.1 hex',
  'ASME B18.2.1 heavy hex',
  'ASME B18.2.6',
] as const;
export type BearingStandard = (typeof BEARING_STANDARDS)[number];

export const HOLE_SERIES = ['fine', 'medium', 'coarse'] as const;
export type HoleSeries = (typeof HOLE_SERIES)[number];

interface MetricFace {
  readonly threadMm: number;
  readonly bearingOuterMm: number;
}

const METRIC_FACES: Readonly<Partial<Record<BearingStandard, readonly MetricFace[]>>> = {
  'ISO 4014': HEX_HEADS,
  'ISO 4017': HEX_HEADS,
  'ISO 4762': SOCKET_HEADS,
  'ISO 4032': HEX_NUTS,
  'EN 14399-3': HR_HEADS,
  'EN 14399-4': HV_HEADS,
};

const INCH_FACES: Readonly<Partial<Record<BearingStandard, readonly InchFaceRow[]>>> = {
  'ASME B18.2.1 hex': HEX_CAP_HEADS,
  'ASME B18.2.1 heavy hex': HEAVY_HEX_HEADS,
  'ASME B18.2.6': STRUCTURAL_HEADS,
};

/** Washer face over width across flats of inch heads; ASME B18.2.1 lets it be up to a tenth less (common practice). */
const WASHER_FACE = 0.95;

/**
 * Outer diameter of the face that a head or nut bears on.
 *
 * @returns mm, the least that the standard allows; undefined where the standard has no such size
 */
export function bearingOuterMm(standard: BearingStandard, thread: Thread): number | undefined {
  if (thread.system === 'ISO metric') {
    return METRIC_FACES[standard]?.find(({ threadMm }) => threadMm === thread.majorDiameterMm)?.bearingOuterMm;
  }
  const row = INCH_FACES[standard]?.find(({ size }) => size === thread.size);
  return row === undefined ? undefined : inchesToMm(row.acrossFlatsIn) * WASHER_FACE;
}

/**
 * The head that is meant when none is told: ISO 4014 for metric threads; for inch threads the structural head with F3125,
 * the heavy hexagon with studs and above 1 1/2 in, else the cap screw.
 *
 * @param className name of the property class, where there is one
 */
export function usualBearing({ system, majorDiameterMm }: Thread, className = ''): BearingStandard {
  if (system === 'ISO metric') return 'ISO 4014';
  if (className.startsWith('ASTM F3125')) return 'ASME B18.2.6';
  const isStud = /^ASTM A(?:193|320)/.test(className);
  return isStud || majorDiameterMm > inchesToMm(1.5) ? 'ASME B18.2.1 heavy hex' : 'ASME B18.2.1 hex';
}

/**
 * Hole that a bolt goes through.
 *
 * @param series of ISO 273; inch threads have the normal fit alone
 * @returns mm; undefined where the tables have no such size
 */
export function clearanceHoleMm(thread: Thread, series: HoleSeries = 'medium'): number | undefined {
  if (thread.system === 'ISO metric') {
    const row = METRIC_HOLES.find(({ threadMm }) => threadMm === thread.majorDiameterMm);
    return row === undefined ? undefined : { fine: row.fineMm, medium: row.mediumMm, coarse: row.coarseMm }[series];
  }
  const row = INCH_HOLES.find(({ size }) => size === thread.size);
  return row === undefined ? undefined : inchesToMm(row.normalIn);
}
