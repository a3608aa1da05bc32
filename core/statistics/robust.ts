/** The middle of the sorted values; of an even number the mean of the two in the middle. At least one value. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** What makes the median deviation of normal values their standard deviation: 1/Φ⁻¹(¾). */
const TO_STANDARD_DEVIATION = 1.482_602_218_505_602;

/**
 * Median distance from the median, scaled so that normal values give their standard deviation; half of the values may be
 * anything and do not spoil it.
 *
 * @source F. R. Hampel, J. Amer. Statist. Assoc. 69 (1974) 383
 */
export function medianDeviation(values: readonly number[]): number {
  const middle = median(values);
  return TO_STANDARD_DEVIATION * median(values.map((value) => Math.abs(value - middle)));
}
