import { conformityOf } from '../verdict/conformity.ts';
import type { Verdict } from '../verdict/verdict.ts';
import { interpolated } from './interpolate.ts';
import {
  ASSUMPTIONS,
  type Assumption,
  type ErrorPoint,
  type PullInDoubt,
  type Recall,
  type Recheck,
} from './recall.ts';

/** What a pull was worth if the wrench went wrong in one way. */
export interface Rejudged {
  /** At the fastener, the error taken off. */
  readonly torqueNm: number;
  readonly standardUncertaintyNm: number;
  readonly verdict: Exclude<Verdict, 'doubtful'>;
  readonly below: number;
  readonly above: number;
  readonly outside: number;
}

/** One pull of a recall. */
export interface RecallLine {
  readonly pull: PullInDoubt;
  readonly under: Readonly<Record<Assumption, Rejudged>>;
  /** The greatest chance of being outside, over the assumptions. */
  readonly outside: number;
}

type Doubt = Pick<Recall, 'wrenchId' | 'goodAt' | 'foundAt'>;

/**
 * The pulls that a wrench found off may have spoiled: after the last good look at it, up to when it was found.
 *
 * @param byTime pulls of any wrenches, in the order of time; found by halving, so that the cost grows with the span only
 */
export function pullsInDoubt(
  byTime: readonly PullInDoubt[],
  { wrenchId, goodAt, foundAt }: Doubt,
): readonly PullInDoubt[] {
  const from = goodAt === undefined ? 0 : firstAfter(byTime, goodAt);
  return byTime.slice(from, firstAfter(byTime, foundAt)).filter((pull) => pull.wrenchId === wrenchId);
}

/** Index of the first pull later than an instant; instants of one form compare as texts. */
function firstAfter(byTime: readonly PullInDoubt[], instant: string): number {
  let [low, high] = [0, byTime.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (byTime[middle]!.takenAt > instant) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * Judges pulls again with the error that was found, under each assumption about when it came: at once after the last
 * good look, growing with time, growing with the pulls.
 *
 * T = T_judged/(1 + a/100), a between the errors left and found, at the torque that the wrench showed
 *
 * @param affected those of `pullsInDoubt`, in the order of time
 * @returns the gravest first: consequence class CC3, those that nobody classified, CC2, CC1; within a class by chance of
 * being outside
 * @source deviation referred to the reference: ISO 6789-1:2017; chance: JCGM 106:2012, 7.3
 */
export function rejudged(recall: Recall, affected: readonly PullInDoubt[]): readonly RecallLine[] {
  const begin = Date.parse(recall.goodAt ?? affected[0]?.takenAt ?? recall.foundAt);
  const span = Date.parse(recall.foundAt) - begin;
  const lines = affected.map((pull, index): RecallLine => {
    const withTime = span > 0 ? (Date.parse(pull.takenAt) - begin) / span : 1;
    const share: Readonly<Record<Assumption, number>> = {
      'at-once': 1,
      'with-time': withTime,
      'with-pulls': (index + 1) / affected.length,
    };
    const under = {
      'at-once': again(pull, recall, share['at-once']),
      'with-time': again(pull, recall, share['with-time']),
      'with-pulls': again(pull, recall, share['with-pulls']),
    };
    return { pull, under, outside: Math.max(...ASSUMPTIONS.map((assumption) => under[assumption].outside)) };
  });
  return lines.toSorted((a, b) => gravestFirst(a, b));
}

const GRAVEST = ['CC3', undefined, 'CC2', 'CC1'] as const;

/** Order of lines; by the greatest chance over the assumptions, or by that of one. */
export const gravestFirst = (a: RecallLine, b: RecallLine, assumption?: Assumption): number =>
  GRAVEST.indexOf(a.pull.consequenceClass) - GRAVEST.indexOf(b.pull.consequenceClass) ||
  outsideOf(b, assumption) - outsideOf(a, assumption);

const outsideOf = ({ under, outside }: RecallLine, assumption: Assumption | undefined): number =>
  assumption === undefined ? outside : under[assumption].outside;

function again(pull: PullInDoubt, { before, found }: Recall, share: number): Rejudged {
  const { torqueNm: judgedNm, shownNm, lowerNm: lower, upperNm: upper, expandedUncertaintyNm = 0 } = pull;
  const at = (points: readonly ErrorPoint[], figure: 'deviationPercent' | 'standardUncertaintyPercent') =>
    points.length === 0
      ? 0
      : interpolated(
          points.map((point) => ({ torqueNm: point.torqueNm, value: point[figure] })),
          Math.abs(shownNm),
        );
  const left = at(before, 'deviationPercent');
  const deviationPercent = left + share * (at(found, 'deviationPercent') - left);
  const torqueNm = judgedNm / (1 + deviationPercent / 100);
  const foundNm = (Math.abs(torqueNm) * at(found, 'standardUncertaintyPercent')) / 100;
  const standardUncertaintyNm = Math.hypot(expandedUncertaintyNm / 2, foundNm);
  const { below, above } = conformityOf(torqueNm, standardUncertaintyNm, { lower, upper });
  const verdict =
    upper !== undefined && torqueNm > upper ? 'over' : lower !== undefined && torqueNm < lower ? 'under' : 'within';
  return { torqueNm, standardUncertaintyNm, verdict, below, above, outside: Math.min(1, below + above) };
}

/** A line with what was done about it: the last recheck stands. */
export interface FollowedLine extends RecallLine {
  readonly recheck: Recheck | undefined;
}

/** What is still to be looked at, and what was: each line of a recall beside its last recheck. */
export function followed(lines: readonly RecallLine[], rechecks: readonly Recheck[]): readonly FollowedLine[] {
  const last = new Map<string, Recheck>();
  for (const recheck of rechecks.toSorted((a, b) => (a.at < b.at ? -1 : 1))) last.set(recheck.pullId, recheck);
  return lines.map((line) => ({ ...line, recheck: last.get(line.pull.pullId) }));
}
