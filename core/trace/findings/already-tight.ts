import { confidenceOf, type Finding } from '../finding.ts';
import { crossingDeg } from '../joint-rate.ts';
import type { Evidence } from '../judged-by.ts';
import { windUpEnd } from '../wind-up-part.ts';

/** A target that is there within so few degrees was there before (common practice). */
const FEW_DEG = 5;
const REACHED = 0.9;
const HALF = 0.5;

/** Turning a tight fastener on wants little more than it stood at; so much more says that it stood higher. */
const MORE = 1.3;

/** Already tight: no run-up, and the target within a few degrees; or far tighter than the stage before left it. */
export function alreadyTight(evidence: Evidence): Finding | undefined {
  return tighterThanLeft(evidence) ?? withoutRunUp(evidence);
}

function tighterThanLeft({ curve, figures, startedNm, wantedNm }: Evidence): Finding | undefined {
  const value = figures.torqueAtFirstTurnNm;
  const limit = MORE * startedNm;
  if (startedNm < 0.2 * wantedNm || value <= limit) return undefined;
  const atDeg = curve.angleDeg[0] ?? 0;
  return { kind: 'already-tight', confidence: confidenceOf(value, limit), atDeg, quantity: 'torque', value, limit };
}

function withoutRunUp(evidence: Evidence): Finding | undefined {
  const { curve, figures, wantedNm, expected, startedNm } = evidence;
  if (startedNm >= 0.45 * wantedNm || figures.peakTorqueNm < 0.5 * wantedNm) return undefined;
  const startDeg = curve.angleDeg[0] ?? 0;
  const goal = REACHED * Math.min(wantedNm, figures.peakTorqueNm);
  const halfDeg = (crossingDeg(curve, HALF * wantedNm) ?? startDeg) - startDeg;
  const goalDeg = (crossingDeg(curve, goal) ?? startDeg) - startDeg;
  const usualDeg = expected?.angleFromSnugDeg?.median;
  const limit = usualDeg === undefined ? FEW_DEG : Math.min(FEW_DEG, 0.5 * usualDeg);
  const stood = figures.torqueAtFirstTurnNm >= HALF * wantedNm || windUpEnd(curve, evidence.phases) !== undefined;
  const value = stood ? halfDeg : goalDeg;
  if (value >= limit) return undefined;
  return {
    kind: 'already-tight',
    confidence: confidenceOf(value, limit),
    atDeg: startDeg,
    quantity: 'angle',
    value,
    limit,
  };
}
