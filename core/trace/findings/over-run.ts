import { confidenceOf, type Finding } from '../finding.ts';
import { crossingDeg } from '../joint-rate.ts';
import type { Evidence } from '../judged-by.ts';

/** Without an upper limit, so much beyond the target is too much. */
const BEYOND = 1.1;

/** Over-run: pulled on after the target. */
export function overRun(evidence: Evidence): Finding | undefined {
  return beyondTorque(evidence) ?? beyondAngle(evidence);
}

function beyondTorque({ curve, figures, window }: Evidence): Finding | undefined {
  const limit = window.upperNm ?? (window.targetNm === undefined ? undefined : BEYOND * window.targetNm);
  const value = figures.peakTorqueNm;
  if (limit === undefined || value <= limit) return undefined;
  const atDeg = crossingDeg(curve, limit) ?? curve.last.angleDeg;
  return { kind: 'over-run', confidence: confidenceOf(value, limit), atDeg, quantity: 'torque', value, limit };
}

function beyondAngle({ curve, figures, window }: Evidence): Finding | undefined {
  const limit = window.upperDeg ?? (window.targetDeg === undefined ? undefined : BEYOND * window.targetDeg);
  if (limit === undefined) return undefined;
  const fromDeg = crossingDeg(curve, window.angleFromNm ?? 0) ?? curve.last.angleDeg;
  const value = figures.finalAngleDeg - fromDeg;
  if (value <= limit) return undefined;
  return {
    kind: 'over-run',
    confidence: confidenceOf(value, limit),
    atDeg: fromDeg + limit,
    quantity: 'angle',
    value,
    limit,
  };
}
