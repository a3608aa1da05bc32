import { highestOf } from '../expectation.ts';
import { confidenceOf, type Finding } from '../finding.ts';
import { crossingDeg } from '../joint-rate.ts';
import type { Evidence } from '../judged-by.ts';

/** A thread that runs in its own track turns freely until the parts meet: so much torque before is too much. */
const EARLY_SHARE = 0.3;
const EARLY_OVER_DEG = 30;
/** Binding builds torque up over turns, clamping over degrees. */
const BINDING_SLOPE = 0.35;
/** A thread that binds is rough. */
const ROUGH_BINDING_SLOPE = 0.5;
const BINDING_OVER_DEG = 90;

/** Crossed or damaged thread: high torque early. */
export function crossedThread(evidence: Evidence): Finding | undefined {
  return beyondPrevailing(evidence) ?? earlyTorque(evidence) ?? bindsAllTheWay(evidence);
}

/** More than the joint states, or, where it states nothing, than is usual. */
function beyondPrevailing({ expected, figures, wantedNm, curve, options }: Evidence): Finding | undefined {
  if (figures.runDownDeg < EARLY_OVER_DEG) return undefined;
  const { prevailingUpToNm } = options;
  const atDeg = curve.angleDeg[0]!;
  if (prevailingUpToNm !== undefined) return found(figures.highestPrevailingNm, prevailingUpToNm, atDeg);
  if (!expected?.prevailingTorqueNm) return undefined;
  const limit = Math.max(
    highestOf(expected.prevailingTorqueNm, 0.5),
    expected.prevailingTorqueNm.median + 0.1 * wantedNm,
  );
  return found(figures.prevailingTorqueNm, limit, atDeg);
}

/** Much torque over a long way before the parts come together, and rising. */
function earlyTorque({
  curve,
  phases,
  figures,
  wantedNm,
  expected,
  startedNm,
  options,
}: Evidence): Finding | undefined {
  const { snug } = phases;
  if (!snug || !figures.slopeNmPerDeg || startedNm > 0.2 * wantedNm) return undefined;
  const usualNm = options.prevailingUpToNm ?? expected?.prevailingTorqueNm?.median ?? 0;
  const plainNm = EARLY_SHARE * (wantedNm - (options.prevailingUpToNm ?? 0)) + usualNm;
  const limit = expected?.snugTorqueNm ? Math.max(plainNm, highestOf(expected.snugTorqueNm, 0.5)) : plainNm;
  const sinceDeg = crossingDeg(curve, limit, snug.angleDeg) ?? snug.angleDeg;
  const snugNm = curve.torqueNm[snug.point]!;
  if (snug.angleDeg - sinceDeg < EARLY_OVER_DEG) return undefined;
  return found(snugNm, limit, sinceDeg);
}

/** No run-down at all, and a slope far below what clamping makes. */
function bindsAllTheWay({ curve, figures, wantedNm, expected, startedNm, options }: Evidence): Finding | undefined {
  if (!expected?.slopeNmPerDeg || startedNm > 0.2 * wantedNm) return undefined;
  const statedNm = options.prevailingUpToNm ?? 0;
  const fromNm = statedNm + 0.1 * (wantedNm - statedNm);
  const toNm = 0.9 * Math.min(wantedNm, figures.peakTorqueNm);
  const from = crossingDeg(curve, fromNm);
  const to = crossingDeg(curve, toNm);
  if (from === undefined || to === undefined || to - from < BINDING_OVER_DEG) return undefined;
  const slope = (toNm - fromNm) / (to - from);
  const share = figures.stickSlip ? ROUGH_BINDING_SLOPE : BINDING_SLOPE;
  const limit = share * expected.slopeNmPerDeg.median;
  if (slope >= limit || (expected.riseDeg && to - from <= highestOf(expected.riseDeg, 1))) return undefined;
  return {
    kind: 'crossed-thread',
    confidence: confidenceOf(slope, limit),
    atDeg: from,
    quantity: 'slope',
    value: slope,
    limit,
  };
}

const found = (value: number, limit: number, atDeg: number): Finding | undefined =>
  value <= limit
    ? undefined
    : { kind: 'crossed-thread', confidence: confidenceOf(value, limit), atDeg, quantity: 'torque', value, limit };
