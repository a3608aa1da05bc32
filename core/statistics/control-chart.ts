import { describe } from './describe.ts';

/** @source NIST/SEMATECH e-Handbook, 6.3.2.2 and table of factors, two values: d2 and D4 as printed there */
const D2 = 1.128;
const D4 = 3.267;

/** What speaks against a process that stays as it is; each named for what it sees. */
export const RUN_RULES = [
  'beyond-limit',
  'two-of-three',
  'four-of-five',
  'eight-one-side',
  'six-trending',
  'fourteen-alternating',
  'range-beyond-limit',
] as const;
export type RunRule = (typeof RUN_RULES)[number];

export interface Signal {
  readonly runRule: RunRule;
  /** Position of the first and the last value that belong to it, from 1. */
  readonly first: number;
  readonly last: number;
  /** On which side, or which way. */
  readonly side: 'above' | 'below';
}

export interface ControlChart {
  readonly center: number;
  readonly lower: number;
  readonly upper: number;
  /** Standard deviation from one value to the next: mean moving range over 1.128. */
  readonly sigma: number;
  readonly meanMovingRange: number;
  readonly rangeUpper: number;
  readonly movingRanges: readonly number[];
  readonly signals: readonly Signal[];
}

/**
 * Individuals chart with moving ranges of two and run rules.
 *
 * @param values   at least two, in the order of time
 * @param baseline how many of the first values give center and limits; all when left out
 * @source NIST/SEMATECH e-Handbook, 6.3.2.2 (chart) and 6.3.2 (Western Electric rules and trends); ISO 7870-2
 */
export function controlChart(values: readonly number[], baseline = values.length): ControlChart {
  const movingRanges = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const center = describe(values.slice(0, baseline)).mean;
  const meanMovingRange = describe(movingRanges.slice(0, baseline - 1)).mean;
  const sigma = meanMovingRange / D2;
  const rangeUpper = D4 * meanMovingRange;
  const zones = values.map((value) => (sigma > 0 ? (value - center) / sigma : Math.sign(value - center) * Infinity));
  const signals = [...zoneSignals(zones), ...trendSignals(values), ...rangeSignals(movingRanges, rangeUpper)];
  return {
    center,
    lower: center - 3 * sigma,
    upper: center + 3 * sigma,
    sigma,
    meanMovingRange,
    rangeUpper,
    movingRanges,
    signals: signals.toSorted((a, b) => a.last - b.last),
  };
}

/** So many of so many values in a row beyond a zone, all on one side. */
const ZONE_RULES = [
  { rule: 'beyond-limit', needed: 1, among: 1, beyond: 3 },
  { rule: 'two-of-three', needed: 2, among: 3, beyond: 2 },
  { rule: 'four-of-five', needed: 4, among: 5, beyond: 1 },
  { rule: 'eight-one-side', needed: 8, among: 8, beyond: 0 },
] as const;

/** A signal stands where its last value completes it. */
function zoneSignals(zones: readonly number[]): readonly Signal[] {
  return ZONE_RULES.flatMap(({ rule, needed, among, beyond }) =>
    (['above', 'below'] as const).flatMap((side) => {
      const isBeyond = zones.map((zone) => (side === 'above' ? zone : -zone) > beyond);
      return isBeyond.flatMap((isLast, last) => {
        if (!isLast) return [];
        const first = Math.max(0, last - among + 1);
        const hits = isBeyond.slice(first, last + 1).flatMap((hit, i) => (hit ? [first + i] : []));
        return hits.length < needed ? [] : [{ runRule: rule, side, first: hits.at(-needed)! + 1, last: last + 1 }];
      });
    }),
  );
}

const SIX = 6;
const FOURTEEN = 14;

function trendSignals(values: readonly number[]): readonly Signal[] {
  const ways = values.slice(1).map((value, i) => Math.sign(value - values[i]!));
  const signals: Signal[] = [];
  let rising = 0;
  let alternating = 0;
  for (const [i, way] of ways.entries()) {
    const before = ways[i - 1];
    rising = way !== 0 && way === before ? rising + 1 : Math.abs(way);
    alternating = way !== 0 && way === -(before ?? 0) ? alternating + 1 : Math.abs(way);
    const side = way > 0 ? 'above' : 'below';
    const last = i + 2;
    if (rising >= SIX - 1) signals.push({ runRule: 'six-trending', side, first: last - SIX + 1, last });
    if (alternating >= FOURTEEN - 1)
      signals.push({ runRule: 'fourteen-alternating', side, first: last - FOURTEEN + 1, last });
  }
  return signals;
}

const rangeSignals = (ranges: readonly number[], upper: number): readonly Signal[] =>
  ranges.flatMap((range, i) =>
    range > upper ? [{ runRule: 'range-beyond-limit', side: 'above', first: i + 1, last: i + 2 } as const] : [],
  );
