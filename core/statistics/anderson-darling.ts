import { describe } from './describe.ts';
import { shareAbove, shareBelow } from './distributions/normal.ts';
import type { NormalityTest } from './shapiro-wilk.ts';

/**
 * Anderson and Darling's test of normality, mean and standard deviation taken from the sample.
 *
 * @param values at least 8, not all the same
 * @returns A² as corrected for the size of the sample
 * @source R. B. D'Agostino and M. A. Stephens, Goodness-of-Fit Techniques (1986), tables 4.7 and 4.9
 */
export function andersonDarling(values: readonly number[]): NormalityTest {
  const { count, mean, standardDeviation = 0 } = describe(values);
  const scaled = values.map((value) => (value - mean) / standardDeviation).toSorted((a, b) => a - b);
  const sum = scaled.reduce((total, z, i) => {
    const mirrored = scaled[count - 1 - i]!;
    return total + (2 * i + 1) * (Math.log(shareBelow(z)) + Math.log(shareAbove(mirrored)));
  }, 0);
  const statistic = (-count - sum / count) * (1 + 0.75 / count + 2.25 / count ** 2);
  return { statistic, p: pOf(statistic) };
}

/** Beyond this the fitted curve turns back, and p is below 1e-20 anyway. */
const FARTHEST = 13;

function pOf(a: number): number {
  if (a >= FARTHEST) return 0;
  if (a >= 0.6) return Math.exp(1.2937 - 5.709 * a + 0.0186 * a ** 2);
  if (a >= 0.34) return Math.exp(0.9177 - 4.279 * a - 1.38 * a ** 2);
  if (a >= 0.2) return 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a ** 2);
  return 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a ** 2);
}
