import { highestOf, lowestOf } from '../expectation.ts';
import { confidenceOf, type Finding } from '../finding.ts';
import type { Evidence } from '../judged-by.ts';

/** Slopes of sound pulls of one joint stay within this share of their median, whatever the spread seen so far. */
const STEEPER = { learned: 0.35, mechanics: 1 };
const FLATTER = { learned: 0.3, mechanics: 0.5 };
const LONGER = { learned: 0.6, mechanics: 1.5 };
/** A straight part that so much exceeds a straight part before it: the end of the thread, or of the hole. */
const STEP = 2.2;

/** Bottomed, or too long: torque rises far faster than it should. */
export function bottomed(evidence: Evidence): Finding | undefined {
  const { figures, expected, phases, curve } = evidence;
  const slope = figures.slopeNmPerDeg;
  if (slope === undefined || !phases.elastic) return undefined;
  const usual = expected?.slopeNmPerDeg;
  const limit = usual && expected ? highestOf(usual, STEEPER[expected.basis]) : earlierLimit(evidence);
  if (limit === undefined || slope <= limit) return undefined;
  const atDeg = curve.angleDeg[phases.elastic.from]!;
  return { kind: 'bottomed', confidence: confidenceOf(slope, limit), atDeg, quantity: 'slope', value: slope, limit };
}

/** Without an expectation: a straight part of its own before the steep one, and what would be too steep after it. */
function earlierLimit({ curve, phases, wantedNm, options }: Evidence): number | undefined {
  const { elastic, gradient } = phases;
  if (!elastic) return undefined;
  const { angleDeg, torqueNm } = curve;
  let to = elastic.from;
  while (to > 0 && gradient.slope[to]! > elastic.line.slope / STEP) to--;
  let from = to;
  const slope = gradient.slope[to]!;
  while (from > 0 && Math.abs(gradient.slope[from - 1]! - slope) < 0.2 * slope + 2 * gradient.error) from--;
  // a thread that is being formed rises straight as well
  if (torqueNm[to]! <= (options.prevailingUpToNm ?? 0)) return undefined;
  const riseNm = torqueNm[to]! - torqueNm[from]!;
  const isStraight = riseNm > 0.2 * wantedNm && angleDeg[to]! - angleDeg[from]! > 2 * gradient.windowDeg;
  return isStraight ? (STEP * riseNm) / (angleDeg[to]! - angleDeg[from]!) : undefined;
}

/** Too soft, a washer missing, the wrong grip: torque rises far more slowly than it should. */
export function tooSoft({ figures, expected, phases, curve, startedNm, wantedNm }: Evidence): Finding | undefined {
  const slope = figures.slopeNmPerDeg;
  if (slope === undefined || !expected || !phases.elastic || startedNm > figures.peakTorqueNm) return undefined;
  const atDeg = curve.angleDeg[phases.elastic.from]!;
  const usual = expected.slopeNmPerDeg;
  const limit = usual && lowestOf(usual, FLATTER[expected.basis]);
  if (limit !== undefined && slope < limit)
    return { kind: 'too-soft', confidence: confidenceOf(slope, limit), atDeg, quantity: 'slope', value: slope, limit };
  const usualDeg = expected.angleFromSnugDeg;
  const turned = figures.angleFromSnugDeg;
  const longest = usualDeg && highestOf(usualDeg, LONGER[expected.basis]);
  if (longest === undefined || turned === undefined || turned <= longest || figures.yield || startedNm > 0.1 * wantedNm)
    return undefined;
  return {
    kind: 'too-soft',
    confidence: confidenceOf(turned, longest),
    atDeg,
    quantity: 'angle',
    value: turned,
    limit: longest,
  };
}
