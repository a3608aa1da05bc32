import type { BoltInJoint } from './bolt-sections.ts';
import { freeThreadMm } from './bolt-sections.ts';
import { type Bearing, inSeries, type Layer, pressureBody } from './pressure-body.ts';
import { barMmPerN, circleMm2 } from './spring.ts';

/** Half angle of the frusta, degrees; 25° to 33° are reported (Shigley, 9th ed., 8-5, after Osgood). */
export const FRUSTA_HALF_ANGLE_DEG = 30;

/** The same joint by the textbook's method. */
export interface ByFrusta {
  /** Grip with the share of a tapped part that is counted to it. */
  readonly gripMm: number;
  readonly boltMmPerN: number;
  readonly partsMmPerN: number;
}

/**
 * Compliances after Shigley: the bolt as shank and thread within the grip alone, the parts as frusta of 30° about a
 * hole as wide as the bolt, without an edge.
 *
 * @param bearing bearing circles; a tapped joint is mirrored about the middle of its effective grip
 * @param tappedDepthMm thickness of the tapped part
 * @source Shigley's Mechanical Engineering Design, 9th ed., (8-17), (8-20), table 8-7
 */
export function byFrusta(
  bolt: BoltInJoint,
  stressAreaMm2: number,
  layers: readonly Layer[],
  bearing: Bearing,
  tappedDepthMm = Infinity,
): ByFrusta {
  const boltMm = bolt.thread.majorDiameterMm;
  const tapped = tappedShare(bolt, Math.min(tappedDepthMm, boltMm) / 2);
  const plates = [...layers, ...tapped].map((layer) => ({ ...layer, outerMm: Infinity, holeMm: boltMm }));
  const gripMm = plates.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  const both = { headMm: bearing.headMm, nutMm: bearing.nutMm ?? bearing.headMm };
  const tangent = Math.tan((FRUSTA_HALF_ANGLE_DEG * Math.PI) / 180);
  const shank = bolt.shank.map((one) => ({
    complianceMmPerN: barMmPerN(one.lengthMm, circleMm2(one.diameterMm), bolt.modulusMPa),
  }));
  const thread = { complianceMmPerN: barMmPerN(freeThreadMm(bolt.shank, gripMm), stressAreaMm2, bolt.modulusMPa) };
  return {
    gripMm,
    boltMmPerN: inSeries([...shank, thread]),
    partsMmPerN: inSeries(pressureBody(plates, both, tangent)),
  };
}

const tappedShare = ({ jointType, nutModulusMPa }: BoltInJoint, thicknessMm: number) =>
  jointType === 'tapped' ? [{ name: 'tapped part', thicknessMm, modulusMPa: nutModulusMPa }] : [];

interface ExponentialFit {
  readonly material: string;
  /** Infinite for the row that stands for any. */
  readonly modulusMPa: number;
  readonly a: number;
  readonly b: number;
}

// Shigley's Mechanical Engineering Design, 9th ed., table 8-8, after Wileman, Choudhury and Green (1991); read in a copy.
export const EXPONENTIAL_FITS: readonly ExponentialFit[] = [
  { material: 'steel', modulusMPa: 207_000, a: 0.78715, b: 0.62873 },
  { material: 'aluminium', modulusMPa: 71_000, a: 0.7967, b: 0.63816 },
  { material: 'copper', modulusMPa: 119_000, a: 0.79568, b: 0.63553 },
  { material: 'grey cast iron', modulusMPa: 100_000, a: 0.77871, b: 0.61616 },
  { material: 'any', modulusMPa: Infinity, a: 0.78952, b: 0.62914 },
];

/** A modulus this near to a row's is taken for its material. */
const SAME_MATERIAL = 0.05;

/**
 * Parts of one material by the exponential fit to finite elements, mm/N; holds for bearing circles of about 1.5 d.
 *
 * @param modulusMPa of all parts
 * @source Shigley, 9th ed., (8-23): k_m = E·d·A·exp(B·d/l)
 */
export function byExponentialFit(
  modulusMPa: number,
  boltMm: number,
  gripMm: number,
): { readonly material: string; readonly partsMmPerN: number } {
  const row = EXPONENTIAL_FITS.find(
    (fit) => fit.modulusMPa === Infinity || Math.abs(fit.modulusMPa / modulusMPa - 1) < SAME_MATERIAL,
  );
  if (row === undefined) throw new Error('the fit for any material is missing');
  const { material, a, b } = row;
  return { material, partsMmPerN: 1 / (modulusMPa * boltMm * a * Math.exp((b * boltMm) / gripMm)) };
}
