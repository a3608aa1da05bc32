import { confidenceOf, type Finding } from '../finding.ts';
import type { Evidence } from '../judged-by.ts';

const LIMIT = 0.05;

/** Stick-slip: torque saws about its line. It says something of the friction, not that the pull failed. */
export function stickSlip({ phases }: Evidence): Finding | undefined {
  const saw = phases.stickSlip;
  if (!saw) return undefined;
  const { share, meanNm, fromDeg: atDeg } = saw;
  const [value, limit] = [share * meanNm, LIMIT * meanNm];
  return { kind: 'stick-slip', confidence: confidenceOf(value, limit), atDeg, quantity: 'torque', value, limit };
}
