import type { Description } from './describe.ts';
import { normal, shareAbove, shareBelow } from './distributions/normal.ts';
import type { Interval } from './order-statistics.ts';

export interface CapabilityLimits {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

/** How a process lies between its limits, by one standard deviation. */
export interface Indices {
  /** Width of the limits over six standard deviations; only between two limits. */
  readonly cp?: number;
  readonly cpk: number;
  /** Room below and above over three standard deviations. */
  readonly cpLower?: number;
  readonly cpUpper?: number;
}

/**
 * Process capability by a mean and a standard deviation.
 *
 * @param limits at least one
 * @param sd     above 0
 * @source ISO 22514-2; NIST/SEMATECH e-Handbook, 6.1.6
 */
export function indicesOf({ lower, upper }: CapabilityLimits, mean: number, sd: number): Indices {
  const cpLower = lower === undefined ? undefined : (mean - lower) / (3 * sd);
  const cpUpper = upper === undefined ? undefined : (upper - mean) / (3 * sd);
  return {
    ...(lower === undefined || upper === undefined ? {} : { cp: (upper - lower) / (6 * sd) }),
    cpk: Math.min(cpLower ?? Infinity, cpUpper ?? Infinity),
    ...(cpLower === undefined ? {} : { cpLower }),
    ...(cpUpper === undefined ? {} : { cpUpper }),
  };
}

/**
 * Confidence limit of Cpk: below the estimate by z standard errors.
 *
 * @param confidence one-sided, such as 0.95
 * @source A. F. Bissell, Appl. Statist. 39 (1990) 331; NIST/SEMATECH e-Handbook, 6.1.6
 */
export const cpkLowerLimit = (cpk: number, count: number, confidence: number): number =>
  cpk - normal.quantile(confidence) * Math.sqrt(1 / (9 * count) + cpk ** 2 / (2 * (count - 1)));

/** Two-sided interval of Cpk, by the same formula. */
export const cpkInterval = (cpk: number, count: number, level: number): Interval => {
  const low = cpkLowerLimit(cpk, count, (1 + level) / 2);
  return [low, 2 * cpk - low];
};

export interface Outside {
  /** What a normal process of this mean and standard deviation has outside, parts per million. */
  readonly expectedBelowPpm?: number;
  readonly expectedAbovePpm?: number;
  readonly countBelow: number;
  readonly countAbove: number;
}

const PER_MILLION = 1e6;

/** What lies outside of the limits, as counted and as a normal process would have it. */
export function outsideOf(values: readonly number[], { lower, upper }: CapabilityLimits, of: Description): Outside {
  const { mean, standardDeviation: sd = 0 } = of;
  return {
    ...(lower === undefined ? {} : { expectedBelowPpm: PER_MILLION * shareBelow((lower - mean) / sd) }),
    ...(upper === undefined ? {} : { expectedAbovePpm: PER_MILLION * shareAbove((upper - mean) / sd) }),
    countBelow: lower === undefined ? 0 : values.filter((value) => value < lower).length,
    countAbove: upper === undefined ? 0 : values.filter((value) => value > upper).length,
  };
}
