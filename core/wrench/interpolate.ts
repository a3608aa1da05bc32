/** A figure at a torque. */
export interface AtTorque {
  readonly torqueNm: number;
  readonly value: number;
}

/**
 * A figure between the torques at which it is known: straight lines between neighbours, beyond the ends as at the end.
 *
 * @param points at least one, in any order; of several at one torque the last counts
 */
export function interpolated(points: readonly AtTorque[], torqueNm: number): number {
  const sorted = points.toSorted((a, b) => a.torqueNm - b.torqueNm);
  const right = sorted.find((point) => point.torqueNm > torqueNm);
  const left = sorted.findLast((point) => point.torqueNm <= torqueNm);
  if (!left || !right) {
    const end = left ?? right;
    if (!end) throw new Error('nothing to interpolate between');
    return end.value;
  }
  const share = (torqueNm - left.torqueNm) / (right.torqueNm - left.torqueNm);
  return left.value + share * (right.value - left.value);
}
