import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { Warning } from '../../joint/warning.ts';
import { remark } from '../../language/mechanics/remark.ts';
import { shareLeft } from '../../statistics/censored-fit.ts';
import { type DriftChart, driftChart } from './drift-chart.ts';
import { type Clock, countOf, type Found, observationsOf, pullsPerDay } from './history.ts';
import {
  curveOf,
  intervalWithoutFailure,
  RELIABILITY_MODELS,
  type Reliability,
  type ReliabilityModelName,
  reliabilityOf,
  type SharePoint,
} from './reliability.ts';
import { stepOf } from './staircase.ts';

export const INTERVAL_METHODS = ['staircase', 'control-chart', 'in-use-time', 'reliability'] as const;
export type IntervalMethod = (typeof INTERVAL_METHODS)[number];

export interface IntervalInput {
  readonly method: IntervalMethod;
  readonly history: readonly Found[];
  readonly wantedShare: number;
  readonly confidence: number;
  readonly model: ReliabilityModelName;
  readonly currentIntervalDays: number;
  readonly currentIntervalPulls: number;
  readonly extension: number;
  readonly limitPercent?: number | undefined;
  readonly shortestDays: number;
  readonly longestDays: number;
}

/** Where a figure comes from. */
export type Basis = 'fitted' | 'adjusted' | 'kept' | 'by-use' | 'no-failure';

/** A fit as it is told; `shape` alone means other things elsewhere. */
interface FitTold extends Omit<Reliability, 'shape'> {
  readonly clock: Clock;
  readonly shapeParameter: number;
}

/** What a method says of one clock, before it is held between the shortest and the longest. */
interface Reckoned {
  readonly days: number;
  readonly pulls: number;
  readonly basisDays: Basis;
  readonly basisPulls: Basis;
  readonly warnings: readonly Warning[];
  readonly lowerDays?: number;
  readonly upperDays?: number;
  readonly lowerPulls?: number;
  readonly fits?: readonly FitTold[];
  readonly shareAtCurrent?: number;
  readonly curve?: readonly SharePoint[];
  readonly drift?: DriftChart;
}

export interface CalibrationInterval extends Omit<Reckoned, 'days' | 'pulls'> {
  readonly method: IntervalMethod;
  readonly intervalDays: number;
  readonly intervalPulls: number;
  readonly heldAt: 'free' | 'shortest' | 'longest';
  readonly comesFirst: 'days' | 'pulls' | 'unknown';
  readonly foundIn: number;
  readonly foundOut: number;
}

/**
 * The next calibration interval, by days or pulls, whichever comes first.
 *
 * @source ILAC-G24:2007 / OIML D 10; common practice where nothing speaks for another: a year or 5000 pulls
 */
export function calibrationInterval(input: IntervalInput): Result<CalibrationInterval> {
  const flaw = flawOf(input);
  if (flaw) return flaw;
  const reckoned = BY_METHOD[input.method](input);
  if (!reckoned.ok) return reckoned;
  const { days, pulls, ...told } = reckoned.value;
  const intervalDays = Math.min(Math.max(days, input.shortestDays), input.longestDays);
  const rate = pullsPerDay(input.history);
  return ok({
    method: input.method,
    intervalDays,
    intervalPulls: pulls,
    heldAt: days < input.shortestDays ? 'shortest' : days > input.longestDays ? 'longest' : 'free',
    comesFirst: rate === undefined ? 'unknown' : rate * intervalDays > pulls ? 'pulls' : 'days',
    foundIn: countOf(input.history, 'in'),
    foundOut: countOf(input.history, 'out'),
    ...told,
  });
}

function flawOf({ history, shortestDays, longestDays }: IntervalInput): Result<never> | undefined {
  if (shortestDays > longestDays)
    return invalid(
      'shortestDays',
      `${shortestDays} is more than longestDays ${longestDays}.`,
      `at most ${longestDays}`,
    );
  for (const [index, { days, pulls, found, goodAtDays, goodAtPulls }] of history.entries()) {
    const at = `history[${index}]`;
    if (goodAtDays !== undefined && goodAtDays >= days)
      return invalid(`${at}.goodAtDays`, 'The good check lies after the calibration.', `less than ${days}`);
    if (goodAtPulls !== undefined && (pulls === undefined || goodAtPulls >= pulls))
      return invalid(`${at}.goodAtPulls`, 'The good check lies after the calibration.', 'fewer than pulls');
    if (found === 'in' && (goodAtDays !== undefined || goodAtPulls !== undefined))
      return invalid(
        `${at}.${goodAtDays === undefined ? 'goodAtPulls' : 'goodAtDays'}`,
        'It was found in.',
        'left out unless found is out',
      );
  }
  return undefined;
}

const BY_METHOD: Readonly<Record<IntervalMethod, (input: IntervalInput) => Result<Reckoned>>> = {
  staircase: byStaircase,
  'control-chart': byDrift,
  'in-use-time': byUse,
  reliability: byReliability,
};

/** The last calibration lengthens or cuts the interval; the shorter of the used and the ordered one is what was tried. */
function byStaircase({
  history,
  extension,
  wantedShare,
  currentIntervalDays,
  currentIntervalPulls,
}: IntervalInput): Result<Reckoned> {
  const step = stepOf(history, extension, wantedShare);
  return ok({
    days: currentIntervalDays * step,
    pulls: currentIntervalPulls * step,
    basisDays: 'adjusted',
    basisPulls: 'adjusted',
    warnings: [],
  });
}

/** Pulls are what wears; days follow from the use there was, and never exceed the interval in force. */
function byUse(input: IntervalInput): Result<Reckoned> {
  const { history, currentIntervalDays, currentIntervalPulls, extension, wantedShare } = input;
  const rate = pullsPerDay(history);
  if (rate === undefined || rate === 0 || history.at(-1)?.pulls === undefined)
    return invalid(
      `history[${history.length - 1}].pulls`,
      'The pulls are missing.',
      'pulls since the last calibration',
    );
  const pulls = currentIntervalPulls * stepOf(history, extension, wantedShare);
  const days = pulls / rate;
  const isKept = days > currentIntervalDays;
  return ok({
    days: isKept ? currentIntervalDays : days,
    pulls,
    basisDays: isKept ? 'kept' : 'by-use',
    basisPulls: 'adjusted',
    warnings: [],
  });
}

const FEWEST_DRIFTS = 3;

function byDrift({ history, limitPercent, wantedShare, currentIntervalPulls }: IntervalInput): Result<Reckoned> {
  if (limitPercent === undefined)
    return invalid('limitPercent', 'It is missing.', 'permissible deviation, percent, such as 4');
  const silent = history.findIndex(({ foundPercent }) => foundPercent === undefined);
  if (silent >= 0)
    return invalid(`history[${silent}].foundPercent`, 'It is missing.', 'deviation found at this calibration, percent');
  if (history.length < FEWEST_DRIFTS)
    return invalid('history', 'A chart wants at least three calibrations.', 'at least 3 elements');
  const drift = driftChart(history, limitPercent, wantedShare);
  if (!(drift.intervalDays < Infinity))
    return invalid('history', 'No deviation changed, so no drift can be told.', 'deviations that differ');
  const warnings =
    drift.signals.length === 0
      ? []
      : [{ field: 'history', ...remark('uneven-drift', { count: drift.signals.length }) }];
  return ok({
    days: drift.intervalDays,
    pulls: currentIntervalPulls,
    basisDays: 'fitted',
    basisPulls: 'kept',
    warnings,
    drift,
  });
}

function byReliability(input: IntervalInput): Result<Reckoned> {
  const { history, wantedShare, confidence, model, currentIntervalDays, currentIntervalPulls } = input;
  const days = observationsOf(history, 'days') ?? [];
  if (countOf(history, 'out') === 0) return ok(withoutFailure(input));
  if (countOf(history, 'in') === 0 && history.every(({ goodAtDays }) => goodAtDays === undefined))
    return invalid(
      'history',
      'Everything was found out, so no share can be told.',
      'at least one calibration found in',
    );
  const pulls = observationsOf(history, 'pulls');
  const fitsOf = (clock: Clock, observations: typeof days) =>
    RELIABILITY_MODELS.flatMap((name) => {
      const fit = reliabilityOf(observations, name, wantedShare, confidence);
      return fit ? [{ clock, ...fit }] : [];
    });
  const fits = [...fitsOf('days', days), ...(pulls ? fitsOf('pulls', pulls) : [])];
  const best = (clock: Clock) => fits.find((fit) => fit.clock === clock && fit.model === model);
  const byDays = best('days');
  const byPulls = best('pulls');
  if (!byDays)
    return invalid(
      'model',
      'These calibrations do not tell the shape: found in and out do not overlap in time.',
      'exponential',
    );
  return ok({
    days: byDays.interval,
    pulls: byPulls?.interval ?? currentIntervalPulls,
    basisDays: 'fitted',
    basisPulls: byPulls ? 'fitted' : 'kept',
    warnings: fewOut(history),
    lowerDays: byDays.intervalLower,
    ...(byDays.intervalUpper === undefined ? {} : { upperDays: byDays.intervalUpper }),
    ...(byPulls ? { lowerPulls: byPulls.intervalLower } : {}),
    fits: fits.map(({ shape, ...fit }) => ({ ...fit, shapeParameter: shape })),
    shareAtCurrent: shareLeft(byDays, currentIntervalDays),
    curve: curveOf(byDays, 1.6 * Math.max(byDays.interval, currentIntervalDays, ...history.map((one) => one.days))),
  });
}

/** Half the confidence is no estimate, but it is what an even bet would say. */
const EVEN = 0.5;

function withoutFailure({ history, wantedShare, confidence, currentIntervalPulls }: IntervalInput): Reckoned {
  const total = history.reduce((sum, { days, howMany = 1 }) => sum + howMany * days, 0);
  return {
    days: intervalWithoutFailure(total, wantedShare, EVEN),
    pulls: currentIntervalPulls,
    basisDays: 'no-failure',
    basisPulls: 'kept',
    lowerDays: intervalWithoutFailure(total, wantedShare, confidence),
    warnings: [{ field: 'history', ...remark('nothing-out') }],
  };
}

/** Common practice: fewer say little of a share near one. */
const FEW_OUT = 5;

function fewOut(history: readonly Found[]): readonly Warning[] {
  const count = countOf(history, 'out');
  return count >= FEW_OUT ? [] : [{ field: 'history', ...remark('few-out', { count }) }];
}
