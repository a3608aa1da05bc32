/** Ranges longer than this are narrowed by a sample first. */
const SAMPLED_FROM = 600;

/**
 * Brings the value of a rank to its place: none before it is larger, none after it smaller. In place, little more than
 * one pass: a sample about the rank is brought to its place first, so that the pivot is nearly the value sought.
 *
 * @param rank from 0
 * @source R. W. Floyd and R. L. Rivest, Algorithm 489: Select, CACM 18 (1975) 173
 */
export function bringToPlace(values: Float64Array, rank: number, first = 0, last = values.length - 1): void {
  let left = first;
  let right = last;
  while (right > left) {
    if (right - left > SAMPLED_FROM) sampleAbout(values, rank, left, right);
    const pivot = values[rank]!;
    let i = left;
    let j = right;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i <= j) {
        const kept = values[i]!;
        values[i++] = values[j]!;
        values[j--] = kept;
      }
    }
    if (rank > j && rank < i) return;
    if (rank <= j) right = j;
    else left = i;
  }
}

/**
 * The value at which the weights of those up to it come to a sum; both are put into another order. Little more than one
 * pass where values lie at random.
 *
 * @param weights none below 0, one a value
 * @returns 0 of no values
 */
export function middleByWeight(values: Float64Array, weights: Float64Array, sum: number): number {
  let left = 0;
  let right = values.length - 1;
  let before = 0;
  while (right > left) {
    const pivot = values[(left + right) >> 1]!;
    let below = 0;
    let i = left;
    let j = right;
    while (i <= j) {
      while (values[i]! < pivot) below += weights[i++]!;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      swap(values, i, j);
      swap(weights, i, j--);
      below += weights[i++]!;
    }
    if (before + below >= sum) right = i - 1;
    else {
      before += below;
      left = i;
    }
  }
  return values[left] ?? 0;
}

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i]!;
  values[i] = values[j]!;
  values[j] = kept;
}

function sampleAbout(values: Float64Array, rank: number, left: number, right: number): void {
  const count = right - left + 1;
  const place = rank - left + 1;
  const logarithm = Math.log(count);
  const sample = 0.5 * Math.exp((2 * logarithm) / 3);
  const spread = 0.5 * Math.sqrt((logarithm * sample * (count - sample)) / count) * Math.sign(place - count / 2);
  const low = Math.max(left, Math.floor(rank - (place * sample) / count + spread));
  const high = Math.min(right, Math.floor(rank + ((count - place) * sample) / count + spread));
  bringToPlace(values, rank, low, high);
}

/** Ends of an interval, both in the unit of the values. */
export type Interval = readonly [low: number, high: number];

export interface CoverageIntervals {
  /** As many draws below as above. */
  readonly symmetric: Interval;
  readonly shortest: Interval;
  /** All but one draw in a thousand, for a picture that stray draws do not stretch. */
  readonly bulk: Interval;
}

/**
 * Intervals that hold a share of the draws. Sorts nothing but the two ends, in place: for a million draws a fifth of the
 * time of sorting all.
 *
 * @param values at least 100 draws, in any order; left in another
 * @param share  above 0.5, below 1
 * @source JCGM 101:2008, 7.7: q = p·M, y_(r) and y_(r+q), with r = (M − q)/2 or where y_(r+q) − y_(r) is least
 */
export function coverageIntervals(values: Float64Array, share: number): CoverageIntervals {
  const count = values.length;
  const covered = Math.round(share * count);
  const outside = count - covered;
  bringToPlace(values, outside);
  bringToPlace(values, covered - 1, outside);
  values.subarray(0, outside).sort();
  values.subarray(covered).sort();
  const interval = (rank: number): Interval => [values[rank - 1]!, values[rank - 1 + covered]!];
  let best = 1;
  for (let rank = 2; rank <= outside; rank++) {
    const width = values[rank - 1 + covered]! - values[rank - 1]!;
    if (width < values[best - 1 + covered]! - values[best - 1]!) best = rank;
  }
  const stray = Math.floor(count / 2000);
  return {
    symmetric: interval(Math.floor((outside + 1) / 2)),
    shortest: interval(best),
    bulk: [values[stray]!, values[count - 1 - stray]!],
  };
}
