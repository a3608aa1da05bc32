import { aboutCentre } from './about-centre.ts';
import { farthestFirst } from './farthest-first.ts';
import { inGroups } from './in-groups.ts';
import type { Place } from './layout.ts';

/** Steps between two of `count` places round a ring, the shorter way. */
const roundRing = (count: number) => (a: number, b: number) => {
  const steps = Math.abs(a - b) % count;
  return Math.min(steps, count - steps);
};

/**
 * Star order of positions 1 to count, evenly spaced round a circle.
 *
 * A multiple of four goes in groups of four: one, the one opposite, a quarter turn on, the one opposite that.
 * Any other even count goes in opposite pairs. An odd count has no opposite: up to nine it is the star that is drawn
 * without lifting the pencil (5: 1 3 5 2 4), beyond that pairs as near to opposite as can be, spread round the circle,
 * because the pencil star would tighten two facing quarters long before the others.
 *
 * @source ASME PCC-1, legacy cross pattern (from memory); odd counts: common practice on wheels, our choice beyond nine
 */
export function starOnCircle(count: number): readonly number[] {
  if (count % 4 === 0) return groups(count, [0, count / 2, count / 4, (3 * count) / 4]);
  if (count % 2 === 0) return groups(count, [0, count / 2]);
  if (count <= 9) return Array.from({ length: count }, (_, turn) => (((turn * (count - 1)) / 2) % count) + 1);
  const steps = roundRing(count);
  const fromOpposite = (a: number, b: number) => {
    const gap = count / 2 - steps(a, b);
    return gap < count / 4 ? gap : Number.POSITIVE_INFINITY;
  };
  return farthestFirst(count, steps, fromOpposite).map((index) => index + 1);
}

/** Each starting place with its fellows, the starts spread by farthest first. */
function groups(count: number, offsets: readonly number[]): readonly number[] {
  const starts = count / offsets.length;
  return farthestFirst(starts, roundRing(starts)).flatMap((start) => offsets.map((offset) => start + offset + 1));
}

/**
 * Star order in which neighbours are taken as one, each group by the numbers: so the legacy cross pattern goes for a
 * single tool from 36 bolts on, by threes and from 40 on by fours. A group, the one half a turn on, the one a quarter on, the
 * one opposite that; then the next.
 *
 * @param neighbours taken as one; the last group may have fewer
 * @source ASME PCC-1, legacy cross pattern: bolts of large flanges in groups, 48 as twelve groups of four (read in part);
 *         36, 40 and 44 (from memory)
 */
export function starOfNeighbours(count: number, neighbours: number): readonly number[] {
  const groups = inGroups(upTo(count), neighbours);
  const star = groups.length > MOST_BY_QUARTERS ? starOnCircle(groups.length) : byQuarters(groups.length);
  return star.flatMap((group) => groups[group - 1]!);
}

/** As far as the printed patterns of neighbours go: 48 bolts by fours. */
const MOST_BY_QUARTERS = 12;

/** One, half a turn on, a quarter on, the one opposite that; then the next one, leaving out those that had their turn. */
function byQuarters(count: number): readonly number[] {
  const [half, quarter] = [Math.ceil(count / 2), Math.ceil(count / 4)];
  const turns = upTo(count).flatMap((start) => [0, half, quarter, quarter + half].map((on) => start + on));
  return [...new Set(turns)].filter((position) => position <= count);
}

const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index + 1);

/**
 * Star order of places anywhere: position 1, then the one across the middle from it; then again and again the one
 * farthest from all that are tight, and the one across from that. A rectangle so begins with its corners crosswise.
 *
 * @source our choice, after the same thought as on a circle: sides balanced, load spread (common practice)
 */
export function starAcross(places: readonly Place[]): readonly number[] {
  const { distance, acrossGap } = aboutCentre(places);
  return farthestFirst(places.length, distance, acrossGap).map((index) => index + 1);
}
