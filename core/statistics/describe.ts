/** What a sample says of what it was taken from. */
export interface Description {
  readonly count: number;
  readonly mean: number;
  /** With n − 1; undefined for a single value. */
  readonly standardDeviation?: number;
  readonly minimum: number;
  readonly maximum: number;
}

/**
 * Describes a sample of at least one value. Two passes, so that values close to each other lose no digits.
 *
 * @source JCGM 100:2008, 4.2.1 and 4.2.2
 */
export function describe(values: readonly number[]): Description {
  const count = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    count,
    mean,
    ...(count < 2 ? {} : { standardDeviation: Math.sqrt(squares / (count - 1)) }),
    minimum: Math.min(...values),
    maximum: Math.max(...values),
  };
}
