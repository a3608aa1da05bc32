import { studentT } from './distributions/student-t.ts';
import type { Interval } from './order-statistics.ts';

export interface TrendPoint {
  readonly x: number;
  readonly y: number;
  /** Relative, such as 1/u²; 1 when left out. */
  readonly weight?: number | undefined;
}

/** A straight line through points, y = meanY + slope·(x − meanX), with what its scatter says of it. */
export interface Trend {
  readonly meanX: number;
  readonly meanY: number;
  readonly slope: number;
  readonly slopeStandardError: number;
  /** At x = 0. */
  readonly intercept: number;
  readonly interceptStandardError: number;
  /** Of a point of weight 1 about the line. */
  readonly residualSd: number;
  /** Points less two. */
  readonly degrees: number;
  /** Probability of a slope this steep or steeper if there were none. */
  readonly slopeP: number;
  readonly weightSum: number;
  readonly spreadX: number;
}

/**
 * Least-squares line. Sums are taken about the means, so that far-off x such as dates lose no digits.
 *
 * @returns undefined for fewer than three points, or when all lie at one x
 * @source JCGM 100:2008, H.3; NIST/SEMATECH e-Handbook, 4.1.4.1 and 4.1.4.3 (weights)
 */
export function linearTrend(points: readonly TrendPoint[]): Trend | undefined {
  const weightOf = ({ weight = 1 }: TrendPoint) => weight;
  const total = (part: (point: TrendPoint) => number) =>
    points.reduce((sum, point) => sum + weightOf(point) * part(point), 0);
  const weightSum = total(() => 1);
  const meanX = total(({ x }) => x) / weightSum;
  const meanY = total(({ y }) => y) / weightSum;
  const spreadX = total(({ x }) => (x - meanX) ** 2);
  const degrees = points.length - 2;
  if (degrees < 1 || !(spreadX > 0)) return undefined;
  const slope = total(({ x, y }) => (x - meanX) * (y - meanY)) / spreadX;
  const residualSd = Math.sqrt(total(({ x, y }) => (y - meanY - slope * (x - meanX)) ** 2) / degrees);
  const slopeStandardError = residualSd / Math.sqrt(spreadX);
  return {
    meanX,
    meanY,
    slope,
    slopeStandardError,
    intercept: meanY - slope * meanX,
    interceptStandardError: residualSd * Math.sqrt(1 / weightSum + meanX ** 2 / spreadX),
    residualSd,
    degrees,
    slopeP: slope === 0 ? 1 : 2 * studentT(degrees).above(Math.abs(slope) / slopeStandardError),
    weightSum,
    spreadX,
  };
}

/** The line at x, where the line itself may lie, and where a further point of weight 1 may lie. */
export interface TrendValue {
  readonly value: number;
  readonly standardError: number;
  readonly confidence: Interval;
  readonly prediction: Interval;
}

/** @param level of both intervals, such as 0.95 */
export function trendAt(trend: Trend, x: number, level: number): TrendValue {
  const { meanX, meanY, slope, residualSd, degrees, weightSum, spreadX } = trend;
  const value = meanY + slope * (x - meanX);
  const share = 1 / weightSum + (x - meanX) ** 2 / spreadX;
  const t = studentT(degrees).quantileAbove((1 - level) / 2);
  const about = (half: number): Interval => [value - half, value + half];
  const standardError = residualSd * Math.sqrt(share);
  return {
    value,
    standardError,
    confidence: about(t * standardError),
    prediction: about(t * residualSd * Math.sqrt(1 + share)),
  };
}

/** Where a trend reaches a limit; ends are left out where the band never reaches it. */
export interface Crossing {
  /** Where the line itself does. */
  readonly at?: number;
  /** Where the near side of the prediction band does, and the far side. */
  readonly earliest?: number;
  readonly latest?: number;
}

/**
 * Where the line and the two sides of its prediction band reach a limit, from a place on.
 *
 * @param from  only what comes after this x counts
 * @param level of the band, such as 0.95
 * @source the band of NIST/SEMATECH e-Handbook, 4.1.4.1.3, solved for x
 */
export function crossingOf(trend: Trend, limit: number, from: number, level: number): Crossing {
  const { meanX, meanY, slope, residualSd, degrees, weightSum, spreadX } = trend;
  const reach = (studentT(degrees).quantileAbove((1 - level) / 2) * residualSd) ** 2;
  // (slope·d − gap)² = reach·(1 + 1/Σw + d²/S) over d = x − meanX.
  const gap = limit - meanY;
  const a = slope ** 2 - reach / spreadX;
  const halfB = -slope * gap;
  const c = gap ** 2 - reach * (1 + 1 / weightSum);
  const after = rootsOf(a, halfB, c)
    .map((d) => meanX + d)
    .filter((x) => x >= from);
  const at = meanX + gap / slope;
  const [earliest, latest] = after;
  return {
    ...(slope !== 0 && at >= from ? { at } : {}),
    ...(earliest === undefined ? {} : { earliest }),
    ...(latest === undefined ? {} : { latest }),
  };
}

/** Real roots of a·d² + 2·halfB·d + c, ascending, without cancellation. */
function rootsOf(a: number, halfB: number, c: number): readonly number[] {
  const discriminant = halfB ** 2 - a * c;
  if (discriminant < 0) return [];
  const q = -(halfB + (halfB < 0 ? -1 : 1) * Math.sqrt(discriminant));
  const roots = [...(a === 0 ? [] : [q / a]), ...(q === 0 ? [] : [c / q])];
  return [...new Set(roots)].toSorted((x, y) => x - y);
}
