import { aboutMean } from '../about-centre.ts';
import type { Place } from '../layout.ts';

/** One round as it is pulled: groups of positions pulled at once, and the share of the target. */
export interface PulledRound {
  readonly share: number;
  readonly groups: readonly (readonly number[])[];
}

/** What the pulls cost and how they hold the joint. */
export interface WorkFigures {
  readonly targetN: number;
  /** How the part under each position gives way, N/mm; undefined when no gap is wanted. */
  readonly bedNPerMm?: number | undefined;
  readonly secondsPerPull: number;
  readonly walkMPerMin: number;
  /** Walked round the ring, not across it. */
  readonly isRing: boolean;
}

export interface Quality {
  readonly pulls: number;
  readonly walkM: number;
  readonly minutes: number;
  readonly momentNm: number;
  readonly momentAtPull: number;
  readonly offCentreMm: number;
  readonly gapMm?: number;
}

/**
 * How good an order is: the largest moment of the clamp forces about the centre at any time, the gap that it opens
 * across the joint, and what walking and pulling take. Bolts do not take part in each other here.
 */
export function qualityOf(places: readonly Place[], rounds: readonly PulledRound[], work: WorkFigures): Quality {
  const balance = new Balance(places);
  let steps = 0;
  for (const { share, groups } of rounds) {
    for (const group of groups) {
      balance.pull(group, share * work.targetN);
      steps += 1;
    }
  }
  const walkM = walkOf(places, rounds, work.isRing) / 1000;
  return {
    pulls: rounds.length * places.length,
    walkM,
    minutes: (steps * work.secondsPerPull) / 60 + walkM / work.walkMPerMin,
    momentNm: balance.largestNmm / 1000,
    momentAtPull: balance.largestAt,
    offCentreMm: balance.largestNmm / (places.length * work.targetN),
    ...(work.bedNPerMm === undefined ? {} : { gapMm: tiltGapMm(places, balance.largest, work.bedNPerMm) }),
  };
}

const ROUNDING = 1e-12;

/** Clamp forces about the mean of all places, while they are pulled. */
class Balance {
  largestNmm = 0;
  largestAt = 0;
  largest: readonly [xNmm: number, yNmm: number] = [0, 0];
  readonly #spots: readonly (readonly [number, number])[];
  readonly #forces: Float64Array;
  #x = 0;
  #y = 0;
  /** Moments of the single forces, one with another: what a balance is held to. */
  #whole = 0;
  #pulls = 0;

  constructor(places: readonly Place[]) {
    this.#spots = aboutMean(places);
    this.#forces = new Float64Array(places.length);
  }

  /** To a force that is no less than what the bolts carry already. */
  pull(group: readonly number[], forceN: number): void {
    for (const position of group) {
      const [x, y] = this.#spots[position - 1]!;
      const more = forceN - this.#forces[position - 1]!;
      this.#forces[position - 1]! += more;
      this.#x += more * x;
      this.#y += more * y;
      this.#whole += more * Math.hypot(x, y);
    }
    this.#pulls += group.length;
    const momentNmm = Math.hypot(this.#x, this.#y);
    if (momentNmm <= ROUNDING * this.#whole || momentNmm <= this.largestNmm * (1 + ROUNDING)) return;
    this.largestNmm = momentNmm;
    this.largestAt = this.#pulls;
    this.largest = [this.#x, this.#y];
  }
}

/** A stiff part on equal springs tilts by the moment, N·mm; the gap is its highest less its lowest place, mm. */
export function tiltGapMm(
  places: readonly Place[],
  [momentX, momentY]: readonly [number, number],
  bedNPerMm: number,
): number {
  const spots = aboutMean(places);
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of spots) {
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  // A line has no width to tilt over: the least of ridges keeps it solvable and changes nothing else.
  const ridge = 1e-12 * (xx + yy);
  const determinant = (xx + ridge) * (yy + ridge) - xy * xy;
  const a = ((yy + ridge) * momentX - xy * momentY) / determinant / bedNPerMm;
  const b = ((xx + ridge) * momentY - xy * momentX) / determinant / bedNPerMm;
  const heights = spots.map(([x, y]) => a * x + b * y);
  return Math.max(...heights) - Math.min(...heights);
}

/** What the one who walks farthest walks, mm: each wrench follows its own place in the groups. */
function walkOf(places: readonly Place[], rounds: readonly PulledRound[], isRing: boolean): number {
  const paths: number[] = [];
  const last: number[] = [];
  for (const group of rounds.flatMap(({ groups }) => groups)) {
    for (const [wrench, position] of group.entries()) {
      const from = last[wrench];
      paths[wrench] = (paths[wrench] ?? 0) + (from === undefined ? 0 : wayBetween(places, from, position, isRing));
      last[wrench] = position;
    }
  }
  return Math.max(0, ...paths);
}

function wayBetween(places: readonly Place[], from: number, to: number, isRing: boolean): number {
  const [a, b] = [places[from - 1]!, places[to - 1]!];
  const chordMm = Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
  if (!isRing) return chordMm;
  const radiusMm = Math.hypot(a.xMm, a.yMm);
  return 2 * radiusMm * Math.asin(Math.min(1, chordMm / (2 * radiusMm)));
}
