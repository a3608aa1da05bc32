import { confidenceOf, type Finding } from '../finding.ts';
import type { Evidence } from '../judged-by.ts';
import { readingOf } from '../reading.ts';

/** Fastest turning over typical turning, from which on it was a jerk and no speed. */
const JERK = 3;

/** The 30 degrees a second of common practice are “about” 30, and a display of coarse steps adds to what is seen. */
const ABOUT = 1.1;

/** Speeds of the loaded part, where anything was fast at all: running down may be fast. */
interface Speeds {
  readonly fastest: number;
  readonly typical: number;
  readonly fromDeg: number;
}

/** Pulled too fast: friction and readings differ from what they were set for. */
export function pulledTooFast(evidence: Evidence): Finding | undefined {
  const speeds = speedsOf(evidence);
  const limit = ABOUT * evidence.options.speedLimitDegPerS;
  if (!speeds || speeds.fastest <= limit || isJerk(speeds)) return undefined;
  return finding('pulled-too-fast', speeds.fastest, limit, speeds.fromDeg);
}

/** Jerked: one burst far faster than the rest. */
export function jerked(evidence: Evidence): Finding | undefined {
  const speeds = speedsOf(evidence);
  if (!speeds || speeds.fastest <= ABOUT * evidence.options.speedLimitDegPerS || !isJerk(speeds)) return undefined;
  return finding('jerked', speeds.fastest, JERK * speeds.typical, speeds.fromDeg);
}

const isJerk = ({ fastest, typical }: Speeds): boolean => fastest > JERK * typical;

const finding = (kind: 'pulled-too-fast' | 'jerked', value: number, limit: number, atDeg: number): Finding => ({
  kind,
  confidence: confidenceOf(value, limit),
  atDeg,
  quantity: 'speed',
  value,
  limit,
});

function speedsOf({ samples, figures, curve, options }: Evidence): Speeds | undefined {
  const { timeS, angleDeg, torqueNm } = samples;
  const isSlow = (figures.maxRateDegPerS ?? 0) <= ABOUT * options.speedLimitDegPerS;
  if (!timeS || isSlow || curve.count < 2) return undefined;
  const from = figures.snug?.index ?? 0;
  const part = (values: ArrayLike<number>) => Float64Array.from(values).subarray(from, curve.extremes.count);
  const loaded = { timeS: part(timeS), angleDeg: part(angleDeg), torqueNm: part(torqueNm) };
  const { fastestDegPerS } = readingOf(loaded);
  return { fastest: fastestDegPerS, typical: typicalSpeed(loaded.timeS, loaded.angleDeg), fromDeg: angleDeg[from]! };
}

/** Median over the turning: speed of the stretches of a twentieth of it. */
function typicalSpeed(timeS: Float64Array, angleDeg: Float64Array): number {
  let mostDeg = angleDeg[0]!;
  for (const deg of angleDeg) mostDeg = Math.max(mostDeg, deg);
  const stretchDeg = (mostDeg - angleDeg[0]!) / 20;
  const speeds: number[] = [];
  let atDeg = angleDeg[0]!;
  let atS = timeS[0]!;
  for (let i = 1; i < timeS.length; i++) {
    if (angleDeg[i]! < atDeg + stretchDeg) continue;
    if (timeS[i]! > atS) speeds.push((angleDeg[i]! - atDeg) / (timeS[i]! - atS));
    atDeg = angleDeg[i]!;
    atS = timeS[i]!;
  }
  return speeds.toSorted((a, b) => a - b)[speeds.length >> 1] ?? 0;
}
