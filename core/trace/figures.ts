import { type Curve, curveOf } from './curve.ts';
import type { TraceFigures } from './expectation.ts';
import { extremesOf } from './extremes.ts';
import { type JointRate, jointRateOf } from './joint-rate.ts';
import { heightUncertainty, reaches } from './line-fit.ts';
import { type Phases, phasesOf } from './phases.ts';
import { type Prevailing, prevailingOf } from './prevailing.ts';
import { turningOf } from './reading.ts';
import type { Samples } from './samples.ts';
import type { StickSlip } from './stick-slip.ts';
import { readFrom, windUpEnd } from './wind-up-part.ts';
import { yieldByGradient, yieldByOffset } from './yield-point.ts';

/** A sample of the trace; the angle is that of the fastener, strokes joined. */
export interface TracePoint {
  readonly index: number;
  readonly torqueNm: number;
  readonly angleDeg: number;
}

/** How a curve is read. */
export interface ReadingOptions {
  /** Slope at yield as a share of the elastic slope. */
  readonly yieldFraction: number;
  /** Offset from the elastic line that is told as yield, degrees; left out: a tenth of the elastic turning. */
  readonly yieldOffsetDeg?: number | undefined;
  /** Window of the local slope, degrees; left out: as the noise wants it. */
  readonly slopeWindowDeg?: number | undefined;
  /** Torque to which the fastener had been tightened before; left out: it was loose. */
  readonly startsAtNm?: number | undefined;
  /** Torque to which the joint rate is told; left out: the peak. */
  readonly targetNm?: number | undefined;
}

/** What a tightening curve says in figures. */
export interface Figures {
  readonly peakTorqueNm: number;
  readonly finalTorqueNm: number;
  readonly finalAngleDeg: number;
  readonly snug?: TracePoint;
  readonly slopeNmPerDeg?: number;
  readonly slopeStandardError?: number;
  /** The elastic line carried back to zero torque. */
  readonly elasticOriginDeg?: number;
  readonly elasticOriginStandardError?: number;
  /** The elastic line carried back to the prevailing torque: where clamping begins. */
  readonly clampOriginDeg?: number;
  readonly angleFromSnugDeg?: number;
  readonly yield?: TracePoint;
  readonly offsetYield?: TracePoint;
  readonly prevailingTorqueNm: number;
  readonly highestPrevailingNm: number;
  readonly runDownDeg: number;
  /** Torque at which the fastener first turned in this trace, N·m. */
  readonly torqueAtFirstTurnNm: number;
  readonly reseatStrokes: number;
  readonly dropOuts: number;
  readonly maxRateDegPerS?: number;
  readonly jointRate?: JointRate;
  readonly stickSlip?: StickSlip;
}

/** What of the figures is kept to learn from. */
export function learnable({
  slopeNmPerDeg,
  angleFromSnugDeg,
  prevailingTorqueNm,
  snug,
  jointRate,
}: Figures): TraceFigures {
  return {
    prevailingTorqueNm,
    ...(slopeNmPerDeg === undefined ? {} : { slopeNmPerDeg }),
    ...(angleFromSnugDeg === undefined ? {} : { angleFromSnugDeg }),
    ...(snug ? { snugTorqueNm: snug.torqueNm } : {}),
    ...(jointRate ? { riseDeg: jointRate.from10Deg } : {}),
  };
}

/** A curve with all that was found on it. */
export interface ReadCurve {
  readonly samples: Samples;
  readonly curve: Curve;
  readonly phases: Phases;
  readonly prevailing: Prevailing;
  readonly figures: Figures;
}

/** Reads a tightening curve: snug, slope, yield, prevailing torque, joint rate. Judges nothing. */
export function readCurve(samples: Samples, options: ReadingOptions, extremes = extremesOf(samples)): ReadCurve {
  const { curve, phases } = turningPart(curveOf(samples, extremes), options);
  const prevailing = prevailingOf(curve, phases);
  const { timeS } = samples;
  const figures: Figures = {
    peakTorqueNm: curve.extremes.peakNm,
    finalTorqueNm: curve.extremes.peakIndex >= curve.last.index ? curve.extremes.peakNm : curve.last.torqueNm,
    finalAngleDeg: curve.last.angleDeg,
    ...elasticFigures(curve, phases, prevailing, options),
    prevailingTorqueNm: prevailing.torqueNm,
    highestPrevailingNm: prevailing.highestNm,
    runDownDeg: prevailing.turnDeg,
    torqueAtFirstTurnNm: curve.torqueNm[0] ?? 0,
    reseatStrokes: curve.breaks.filter(({ kind }) => kind === 'stroke').length,
    dropOuts: curve.breaks.filter(({ kind }) => kind === 'drop-out').length,
    ...(timeS ? { maxRateDegPerS: turningOf(timeS, samples.angleDeg, extremes.count).fastestDegPerS } : {}),
    ...told('stickSlip', phases.stickSlip),
    ...told('jointRate', jointRateOf(curve, rateTorqueNm(curve, options))),
  };
  return { samples, curve, phases, prevailing, figures };
}

/** A fastener that was tight turns only once the wrench has wound up; what comes before is no part of its curve. */
function turningPart(curve: Curve, { slopeWindowDeg, startsAtNm = 0 }: ReadingOptions) {
  const whole = { curve, phases: phasesOf(curve, slopeWindowDeg) };
  const end = startsAtNm > 0 ? windUpEnd(curve, whole.phases) : undefined;
  return end === undefined ? whole : readFrom(curve, end, slopeWindowDeg);
}

const rateTorqueNm = ({ extremes, last, torqueNm }: Curve, { targetNm }: ReadingOptions): number =>
  targetNm ?? (extremes.peakIndex >= last.index ? extremes.peakNm : Math.min(extremes.peakNm, topNm(torqueNm)));

const topNm = (torqueNm: Float64Array): number => torqueNm.reduce((most, nm) => Math.max(most, nm), 0);

const told = <Name extends string, T>(name: Name, value: T | undefined): { [key in Name]?: T } => {
  const out: { [key in Name]?: T } = {};
  if (value !== undefined) out[name] = value;
  return out;
};

type ElasticFigures = Omit<Figures, 'peakTorqueNm' | 'finalTorqueNm' | 'finalAngleDeg' | 'prevailingTorqueNm'>;

function elasticFigures(
  curve: Curve,
  phases: Phases,
  prevailing: Prevailing,
  { yieldFraction, yieldOffsetDeg }: ReadingOptions,
): Partial<ElasticFigures> {
  const { elastic, snug } = phases;
  if (!elastic || !snug) return {};
  const { line } = elastic;
  const elasticOriginDeg = reaches(line, 0);
  const elasticDeg = curve.angleDeg[elastic.to - 1]! - elasticOriginDeg;
  const yielded = yieldByGradient(curve, phases, yieldFraction);
  return {
    snug: { ...pointAt(curve, snug.point), angleDeg: snug.angleDeg },
    slopeNmPerDeg: line.slope,
    slopeStandardError: line.slopeStandardError,
    elasticOriginDeg,
    elasticOriginStandardError: heightUncertainty(line, elasticOriginDeg) / line.slope,
    clampOriginDeg: reaches(line, prevailing.torqueNm),
    angleFromSnugDeg: curve.last.angleDeg - snug.angleDeg,
    ...(yielded
      ? { yield: { index: curve.index[yielded.point]!, torqueNm: yielded.torqueNm, angleDeg: yielded.angleDeg } }
      : {}),
    ...told('offsetYield', pointOf(curve, yieldByOffset(curve, elastic, yieldOffsetDeg ?? 0.1 * elasticDeg))),
  };
}

const pointAt = ({ index, torqueNm, angleDeg }: Curve, point: number): TracePoint => ({
  index: index[point]!,
  torqueNm: torqueNm[point]!,
  angleDeg: angleDeg[point]!,
});

const pointOf = (curve: Curve, point: number | undefined): TracePoint | undefined =>
  point === undefined ? undefined : pointAt(curve, point);
