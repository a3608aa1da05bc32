import { convertTorque, type TorqueUnit } from '@clampwright/core/quantity';
import type { ShownTrace } from '@clampwright/core/record';
import type { Finding } from '@clampwright/core/trace';
import type { EarlierTraces } from '@clampwright/server/contract';

/** Angle in degrees and torque in the unit of the joint. */
export interface Spot {
  readonly deg: number;
  readonly torque: number;
}

/** Told apart by shape; the number leads to the key. */
export type MarkShape = 'square' | 'triangle' | 'diamond' | 'ring';

export interface TraceMark extends Spot {
  readonly number: number;
  readonly shape: MarkShape;
  readonly what:
    | { readonly kind: 'snug' | 'yield' | 'offset-yield' | 'break-away' | 'elastic-origin' }
    | { readonly kind: 'finding'; readonly finding: Finding };
}

/** All that is drawn of a trace, in the unit of the joint. */
export interface TraceDrawing {
  readonly curve: { readonly deg: Float64Array; readonly torque: Float64Array };
  readonly ground: readonly { readonly deg: readonly number[]; readonly torque: readonly number[] }[];
  /** The elastic line, from where it meets no torque to the end of the curve. */
  readonly slopeLine: readonly [Spot, Spot] | undefined;
  /** Corners of the expected elastic line with its spread. */
  readonly band: readonly Spot[];
  readonly marks: readonly TraceMark[];
  readonly torqueLimits: { readonly lower: number; readonly target: number; readonly upper: number } | undefined;
  readonly angleLimits: { readonly lower: number; readonly target: number; readonly upper: number } | undefined;
  readonly kind: ShownTrace['analysis']['kind'];
}

/** So many standard deviations to either side are drawn as usual. */
const USUAL = 3;

/**
 * Lays out what is drawn: earlier curves and the expected line are shifted so that their snug lies on this pull's.
 *
 * @param findings what spoke against the pull when it was judged, N·m and degrees
 */
export function traceDrawing(
  shown: ShownTrace,
  findings: readonly Finding[],
  { expected, curves }: EarlierTraces,
  unit: TorqueUnit,
): TraceDrawing {
  const told = (nm: number): number => convertTorque(nm, 'N·m', unit);
  const { analysis } = shown;
  const snug = analysis.kind === 'tightening' ? analysis.figures.snug : undefined;
  return {
    kind: analysis.kind,
    curve: { deg: shown.angleDeg, torque: shown.torqueNm.map(told) },
    ground: snug
      ? curves.map(({ fromSnugDeg, torqueNm }) => ({
          deg: fromSnugDeg.map((deg) => deg + snug.angleDeg),
          torque: torqueNm.map(told),
        }))
      : [],
    slopeLine: slopeLineOf(shown, told),
    band: snug && expected ? bandOf(snug, expected, shown, told) : [],
    marks: marksOf(shown, findings, told),
    torqueLimits: torqueLimitsOf(shown, told),
    angleLimits: angleLimitsOf(shown),
  };
}

type Told = (nm: number) => number;

function slopeLineOf({ analysis, torqueNm }: ShownTrace, told: Told): TraceDrawing['slopeLine'] {
  if (analysis.kind !== 'tightening') return undefined;
  const { slopeNmPerDeg, elasticOriginDeg } = analysis.figures;
  if (slopeNmPerDeg === undefined || elasticOriginDeg === undefined) return undefined;
  const topNm = highest(torqueNm);
  return [
    { deg: elasticOriginDeg, torque: 0 },
    { deg: elasticOriginDeg + topNm / slopeNmPerDeg, torque: told(topNm) },
  ];
}

function bandOf(
  snug: { readonly angleDeg: number; readonly torqueNm: number },
  { slopeNmPerDeg, snugTorqueNm }: NonNullable<EarlierTraces['expected']>,
  { torqueNm }: ShownTrace,
  told: Told,
): readonly Spot[] {
  if (!slopeNmPerDeg) return [];
  const { median, deviation } = slopeNmPerDeg;
  const fromNm = snugTorqueNm?.median ?? snug.torqueNm;
  const rise = Math.max(highest(torqueNm) - fromNm, 0);
  const least = Math.max(median - USUAL * deviation, median / 10);
  const at = (slope: number): Spot => ({ deg: snug.angleDeg + rise / slope, torque: told(fromNm + rise) });
  return [{ deg: snug.angleDeg, torque: told(fromNm) }, at(median + USUAL * deviation), at(least)];
}

type Unnumbered = Omit<TraceMark, 'number'>;

function marksOf(shown: ShownTrace, findings: readonly Finding[], told: Told): readonly TraceMark[] {
  const found = findings.map(
    (finding): Unnumbered => ({
      deg: finding.atDeg,
      torque: told(torqueAt(shown, finding.atDeg)),
      shape: 'diamond',
      what: { kind: 'finding', finding },
    }),
  );
  return [...curveMarks(shown, told), ...found].map((mark, index) => ({ ...mark, number: index + 1 }));
}

function curveMarks({ analysis }: ShownTrace, told: Told): readonly Unnumbered[] {
  if (analysis.kind === 'loosening') {
    const { angleDeg, torqueNm } = analysis.loosening.breakAway;
    return [{ deg: Math.abs(angleDeg), torque: told(torqueNm), shape: 'triangle', what: { kind: 'break-away' } }];
  }
  const { snug, yield: gradient, offsetYield, elasticOriginDeg } = analysis.figures;
  const marks: Unnumbered[] = [];
  if (elasticOriginDeg !== undefined)
    marks.push({ deg: elasticOriginDeg, torque: 0, shape: 'ring', what: { kind: 'elastic-origin' } });
  if (snug) marks.push({ deg: snug.angleDeg, torque: told(snug.torqueNm), shape: 'square', what: { kind: 'snug' } });
  if (gradient)
    marks.push({ deg: gradient.angleDeg, torque: told(gradient.torqueNm), shape: 'triangle', what: { kind: 'yield' } });
  if (offsetYield)
    marks.push({
      deg: offsetYield.angleDeg,
      torque: told(offsetYield.torqueNm),
      shape: 'triangle',
      what: { kind: 'offset-yield' },
    });
  return marks;
}

function torqueLimitsOf({ window: { lowerNm, targetNm, upperNm } }: ShownTrace, told: Told) {
  if (lowerNm === undefined || targetNm === undefined || upperNm === undefined) return undefined;
  return { lower: told(lowerNm), target: told(targetNm), upper: told(upperNm) };
}

function angleLimitsOf({ window: { lowerDeg, targetDeg, upperDeg }, countsFromDeg }: ShownTrace) {
  if (lowerDeg === undefined || targetDeg === undefined || upperDeg === undefined || countsFromDeg === undefined)
    return undefined;
  return { lower: countsFromDeg + lowerDeg, target: countsFromDeg + targetDeg, upper: countsFromDeg + upperDeg };
}

/** Torque of the sample nearest to an angle, N·m; angles ascend. */
function torqueAt({ angleDeg, torqueNm }: ShownTrace, deg: number): number {
  return torqueNm[nearestIndex(angleDeg, deg)] ?? 0;
}

/** Index of the value nearest to one, in ascending values. */
export function nearestIndex(ascending: Float64Array, wanted: number): number {
  let low = 0;
  let high = ascending.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ascending[middle]! < wanted) low = middle + 1;
    else high = middle;
  }
  const before = Math.max(low - 1, 0);
  return wanted - ascending[before]! < ascending[low]! - wanted ? before : low;
}

const highest = (values: Float64Array): number => values.reduce((most, value) => Math.max(most, value), 0);
