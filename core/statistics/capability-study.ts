import { invalid, ok, type Result } from '../failure/failure.ts';
import type { Warning } from '../joint/warning.ts';
import { remark } from '../language/mechanics/remark.ts';
import { andersonDarling } from './anderson-darling.ts';
import {
  type CapabilityLimits,
  cpkInterval,
  cpkLowerLimit,
  type Indices,
  indicesOf,
  type Outside,
  outsideOf,
} from './capability.ts';
import { controlChart } from './control-chart.ts';
import { describe } from './describe.ts';
import { histogram } from './histogram.ts';
import type { Interval } from './order-statistics.ts';
import { median, medianDeviation } from './robust.ts';
import { type NormalityTest, SHAPIRO_WILK_SIZES, shapiroWilk } from './shapiro-wilk.ts';

export interface CapabilityInput extends CapabilityLimits {
  readonly values: readonly number[];
}

export interface Normality extends NormalityTest {
  readonly test: 'shapiro-wilk' | 'anderson-darling';
}

export interface CapabilityStudy extends Indices, Outside {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
  readonly sdUsed: 'overall';
  readonly cpkLower95: number;
  readonly cpkInterval95: Interval;
  readonly minimum: number;
  readonly maximum: number;
  readonly medianValue: number;
  readonly medianDeviation: number;
  readonly normality: Normality;
  readonly within: Indices & { readonly sd: number };
  readonly histogram: { readonly start: number; readonly end: number; readonly counts: readonly number[] };
  readonly warnings: readonly Warning[];
}

/**
 * Capability of a series against its limits, with what it rests on: normality and a process that stays as it is.
 *
 * @param input values in the order of time, and at least one limit
 */
export function capabilityStudy({ values, lower, upper }: CapabilityInput): Result<CapabilityStudy> {
  if (lower === undefined && upper === undefined)
    return invalid('lower', 'There are no limits.', 'a lower limit, an upper limit, or both');
  if (lower !== undefined && upper !== undefined && lower >= upper)
    return invalid('lower', `${lower} does not lie below upper ${upper}.`, `less than ${upper}`);
  const of = describe(values);
  const { count, mean, standardDeviation: sd = 0, minimum, maximum } = of;
  if (!(sd > 0) || minimum === maximum)
    return invalid('values', 'All values are the same, so nothing tells their scatter.', 'values that differ');
  const limits = { lower, upper };
  const indices = indicesOf(limits, mean, sd);
  const { sigma, signals } = controlChart(values);
  const normality = normalityOf(values);
  return ok({
    n: count,
    mean,
    sd,
    sdUsed: 'overall',
    ...indices,
    cpkLower95: cpkLowerLimit(indices.cpk, count, 0.95),
    cpkInterval95: cpkInterval(indices.cpk, count, 0.95),
    normality,
    ...outsideOf(values, limits, of),
    minimum,
    maximum,
    medianValue: median(values),
    medianDeviation: medianDeviation(values),
    within: { sd: sigma, ...indicesOf(limits, mean, sigma) },
    histogram: histogramOf(values, minimum, maximum),
    warnings: [...fewValues(count), ...notNormal(normality), ...notSteady(signals.length)],
  });
}

function normalityOf(values: readonly number[]): Normality {
  return values.length <= SHAPIRO_WILK_SIZES.to
    ? { test: 'shapiro-wilk', ...shapiroWilk(values) }
    : { test: 'anderson-darling', ...andersonDarling(values) };
}

const MOST_BINS = 50;

/** Bins by Freedman and Diaconis' rule would need quartiles; Sturges' rule does for a picture. */
function histogramOf(values: readonly number[], start: number, end: number): CapabilityStudy['histogram'] {
  const bins = Math.min(Math.ceil(Math.log2(values.length)) + 1, MOST_BINS);
  return { start, end, counts: histogram(Float64Array.from(values), [start, end], bins) };
}

/** Common practice; ISO 22514-2 leaves the number to agreement. */
const FEW_VALUES = 50;

const fewValues = (count: number): readonly Warning[] =>
  count >= FEW_VALUES ? [] : [{ field: 'values', ...remark('few-values', { count, wanted: FEW_VALUES }) }];

const notNormal = ({ p }: Normality): readonly Warning[] =>
  p >= 0.05 ? [] : [{ field: 'values', ...remark('not-normal') }];

const notSteady = (count: number): readonly Warning[] =>
  count === 0 ? [] : [{ field: 'values', ...remark('unsteady', { count }) }];
