import { createHash, type Hash } from 'node:crypto';
import { invalid, ok, type Result } from '@clampwright/core/failure';
import { checkTorque } from '@clampwright/core/quantity';
import { readingOf } from '@clampwright/core/trace';
import type { FileContext } from './context.ts';
import type { Figure } from './figures.ts';
import { identityOf } from './identity.ts';
import { incomingPull } from './incoming.ts';
import type { Mapping } from './mapping.ts';
import { type Outcome, refusedFor } from './outcome.ts';
import type { Place } from './place.ts';
import { loosening, signOf } from './signs.ts';

/** One row of a curve. */
export interface Sample {
  readonly timeMs: number;
  readonly timeText: string;
  readonly torque: Figure;
  readonly angle: Figure;
}

/** A curve whose rows are still coming. */
export interface OpenCurve {
  readonly line: number;
  readonly place: Place;
  readonly first: Sample;
  readonly timeS: number[];
  readonly angleDeg: number[];
  readonly torqueNm: number[];
  last: Sample;
  peak: Sample;
  furthest: Sample;
  lowestNm: number;
  readonly digest: Hash;
}

/** Longest and shortest curve; the bounds of a kept trace. */
const MOST_SAMPLES = 200_000;
const FEWEST_SAMPLES = 2;

export const openCurve = (line: number, key: string, place: Place, first: Sample): OpenCurve => ({
  line,
  place,
  first,
  timeS: [],
  angleDeg: [],
  torqueNm: [],
  last: first,
  peak: first,
  furthest: first,
  lowestNm: Number.POSITIVE_INFINITY,
  digest: createHash('sha256').update(JSON.stringify(key)),
});

/** Takes one more sample into the curve. */
export function addSample(curve: OpenCurve, mapping: Mapping, sample: Sample): Result<undefined> {
  if (curve.timeS.length === MOST_SAMPLES)
    return invalid('curveBy', `The curve has more than ${MOST_SAMPLES} rows.`, 'a column that tells curves apart');
  if (sample.timeMs < curve.last.timeMs)
    return invalid('time', 'The time goes back within the curve.', 'samples in the order of time');
  const sign = signOf(mapping);
  const torqueNm = sign * sample.torque.value + 0;
  const angleDeg = mapping.signs === 'negative-tightens' ? Math.abs(sample.angle.value) : sample.angle.value;
  if (curve.timeS.length > 0 && torqueNm > sign * curve.peak.torque.value) curve.peak = sample;
  if (curve.timeS.length > 0 && angleDeg > Math.abs(curve.furthest.angle.value)) curve.furthest = sample;
  curve.lowestNm = Math.min(curve.lowestNm, torqueNm);
  curve.last = sample;
  // Microseconds: what is left of them is the arithmetic of times since 1970.
  curve.timeS.push(Number(((sample.timeMs - curve.first.timeMs) / 1000).toFixed(6)));
  curve.angleDeg.push(angleDeg);
  curve.torqueNm.push(torqueNm);
  curve.digest.update(`${sample.timeText};${sample.torque.text};${sample.angle.text}\n`);
  return ok(undefined);
}

/** The pull that a whole curve is, timed by its last sample. */
export function closeCurve(curve: OpenCurve, mapping: Mapping, context: FileContext): Outcome {
  const { line, place, first, peak, furthest } = curve;
  const { timeS, angleDeg, torqueNm } = curve;
  const reading = readingOf({ timeS, angleDeg, torqueNm });
  const sound = checkCurve(curve, mapping, reading.peakTorqueNm, reading.finalAngleDeg);
  if (!sound.ok) return refusedFor(line, sound.failure);
  const texts = { time: first.timeText, torque: peak.torque.text, angle: furthest.angle.text };
  const pull = incomingPull(context, {
    id: identityOf(context, { place, ...texts, line, curve: curve.digest.digest('hex') }),
    line,
    place,
    timeMs: curve.last.timeMs,
    torque: peak.torque,
    torqueNm: reading.peakTorqueNm,
    angle: furthest.angle,
    angleDeg: reading.finalAngleDeg,
    curve: { trace: { timeS, angleDeg, torqueNm }, fastestDegPerS: reading.fastestDegPerS },
  });
  return { kind: 'pull', line, pull };
}

function checkCurve(curve: OpenCurve, mapping: Mapping, peakNm: number, finalAngleDeg: number): Result<unknown> {
  if (curve.timeS.length < FEWEST_SAMPLES)
    return invalid('curveBy', 'The curve has a single row.', 'curves of two rows and more');
  // Loosening swings to the other side too, so the larger side decides.
  if (-curve.lowestNm > peakNm) return loosening(mapping);
  if (finalAngleDeg < 0) return invalid('angle', 'The angle is negative while the torque tightens.', 'an angle from 0');
  return checkTorque(peakNm, 'N·m');
}
