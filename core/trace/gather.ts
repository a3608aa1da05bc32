import type { Samples } from './samples.ts';

/** Where a gathering stood, to go back to. */
interface Mark {
  points: number;
  groups: number;
  sumDeg: number;
  sumNm: number;
  firstIndex: number;
  fromDeg: number;
  topDeg: number;
  heldNm: number;
  heldCount: number;
  heldFirstNm: number;
  heldTopNm: number;
  heldIndex: number;
}

/** Points of a curve, as gathered. */
export interface Points {
  readonly angleDeg: Float64Array;
  readonly torqueNm: Float64Array;
  /** First sample of each point. */
  readonly index: Int32Array;
  readonly count: number;
}

/** Between what samples go on steadily. */
export interface Steady {
  readonly count: number;
  readonly offsetDeg: number;
  readonly leastNm: number;
  readonly mostNm: number;
  /** From one sample to the next. */
  readonly jumpNm: number;
  readonly untilDeg: number;
}

/** Torque that rises by more of the peak than this while the angle stands was wound up, not turned. */
const WOUND_UP = 0.08;

const emptyMark = (): Mark => ({
  points: 0,
  groups: 0,
  sumDeg: 0,
  sumNm: 0,
  firstIndex: 0,
  fromDeg: Number.NEGATIVE_INFINITY,
  topDeg: Number.NEGATIVE_INFINITY,
  heldNm: 0,
  heldCount: 0,
  heldFirstNm: 0,
  heldTopNm: Number.NEGATIVE_INFINITY,
  heldIndex: 0,
});

/**
 * Gathers samples that turn forward into points one step of angle apart. Samples at one angle become one figure, the
 * mean of those that go beyond the ones before them, so that letting go at a standing angle does not count, and
 * steps weigh alike however fast the hand was.
 */
export class Gathering {
  #angleDeg: Float64Array;
  #torqueNm: Float64Array;
  #index: Int32Array;
  readonly #most: number;
  readonly #stepDeg: number;
  readonly #woundUpNm: number;
  readonly #at: Mark = emptyMark();
  readonly #held: Mark = emptyMark();

  /** @param most points at the most; room is made as it is needed, from `room` on */
  constructor(most: number, room: number, stepDeg: number, peakNm: number) {
    this.#most = most;
    this.#angleDeg = new Float64Array(room);
    this.#torqueNm = new Float64Array(room);
    this.#index = new Int32Array(room);
    this.#stepDeg = stepDeg;
    this.#woundUpNm = WOUND_UP * peakNm;
  }

  /** How far the fastener has been turned. */
  get topDeg(): number {
    return this.#at.topDeg;
  }

  /** The last angle that was reached, and the largest torque there. */
  get last(): { readonly index: number; readonly angleDeg: number; readonly torqueNm: number } {
    const { heldIndex, topDeg, heldTopNm } = this.#at;
    return { index: heldIndex, angleDeg: topDeg, torqueNm: heldTopNm };
  }

  take(index: number, deg: number, nm: number): void {
    const at = this.#at;
    if (deg < at.topDeg) return;
    if (deg > at.topDeg) {
      this.#closeAngle();
      at.topDeg = deg;
      at.heldNm = nm;
      at.heldCount = 1;
      at.heldFirstNm = nm;
      at.heldTopNm = nm;
      at.heldIndex = index;
    } else if (nm > at.heldTopNm) {
      at.heldNm += nm;
      at.heldCount++;
      at.heldTopNm = nm;
    }
  }

  /**
   * Takes samples as long as the fastener turns steadily on within one point of the curve.
   *
   * Hot loop, most of a finely sampled trace goes through it: no calls, what it comes to in local figures.
   *
   * @param first the sample after one that was taken
   * @returns the first that was not taken
   */
  takeSteady(
    { angleDeg, torqueNm }: Samples,
    first: number,
    { count, offsetDeg, leastNm, mostNm, jumpNm, untilDeg }: Steady,
  ): number {
    const at = this.#at;
    if (at.groups === 0 || at.heldCount === 0) return first;
    let { topDeg, heldNm, heldCount, heldFirstNm, heldTopNm, heldIndex, groups, sumDeg, sumNm } = at;
    const endDeg = Math.min(untilDeg, at.fromDeg + this.#stepDeg);
    let beforeNm = torqueNm[first - 1]!;
    let i = first;
    for (; i < count; i++) {
      const nm = torqueNm[i]!;
      const deg = angleDeg[i]! + offsetDeg;
      const rise = nm - beforeNm;
      if (!(rise < jumpNm && rise > -jumpNm && nm >= leastNm && nm < mostNm && deg >= topDeg)) break;
      beforeNm = nm;
      if (deg === topDeg) {
        const standsNm = calmAt(torqueNm, i, count);
        if (standsNm <= heldTopNm) continue;
        heldNm += standsNm;
        heldCount++;
        heldTopNm = standsNm;
        continue;
      }
      if (topDeg > endDeg) break;
      groups++;
      sumDeg += topDeg;
      sumNm += heldCount === 1 ? heldNm : heldTopNm - heldFirstNm > this.#woundUpNm ? heldTopNm : heldNm / heldCount;
      // the mean of a point evens out single samples; the highest at an angle would not
      const goesOn = i + 1 < count && angleDeg[i + 1]! + offsetDeg !== deg;
      topDeg = deg;
      heldNm = goesOn ? nm : calmAt(torqueNm, i, count);
      heldCount = 1;
      heldFirstNm = heldNm;
      heldTopNm = heldNm;
      heldIndex = i;
    }
    at.topDeg = topDeg;
    at.heldNm = heldNm;
    at.heldCount = heldCount;
    at.heldFirstNm = heldFirstNm;
    at.heldTopNm = heldTopNm;
    at.heldIndex = heldIndex;
    at.groups = groups;
    at.sumDeg = sumDeg;
    at.sumNm = sumNm;
    return i;
  }

  /** Turning that is not to count, such as the break-away of a stroke. */
  pass(deg: number): void {
    const at = this.#at;
    if (deg <= at.topDeg) return;
    this.#closeAngle();
    at.topDeg = deg;
    at.heldCount = 0;
  }

  hold(): void {
    copy(this.#at, this.#held);
  }

  backToHeld(): void {
    copy(this.#held, this.#at);
  }

  /** Ends the gathering. */
  close(): Points {
    this.#closeAngle();
    this.#closePoint();
    const { points: count } = this.#at;
    return {
      angleDeg: this.#angleDeg.subarray(0, count),
      torqueNm: this.#torqueNm.subarray(0, count),
      index: this.#index.subarray(0, count),
      count,
    };
  }

  #closeAngle(): void {
    const at = this.#at;
    if (at.heldCount === 0) return;
    if (at.groups > 0 && at.topDeg - at.fromDeg > this.#stepDeg) this.#closePoint();
    if (at.groups === 0) {
      at.fromDeg = at.topDeg;
      at.firstIndex = at.heldIndex;
    }
    const woundUp = at.heldTopNm - at.heldFirstNm > this.#woundUpNm;
    at.groups++;
    at.sumDeg += at.topDeg;
    at.sumNm += woundUp ? at.heldTopNm : at.heldNm / at.heldCount;
    at.heldCount = 0;
  }

  #closePoint(): void {
    const at = this.#at;
    if (at.groups === 0 || at.points >= this.#most) return;
    if (at.points >= this.#index.length) this.#makeRoom();
    this.#angleDeg[at.points] = at.sumDeg / at.groups;
    this.#torqueNm[at.points] = at.sumNm / at.groups;
    this.#index[at.points] = at.firstIndex;
    at.points++;
    at.groups = 0;
    at.sumDeg = 0;
    at.sumNm = 0;
  }

  #makeRoom(): void {
    const room = 2 * this.#index.length;
    this.#angleDeg = grown(new Float64Array(room), this.#angleDeg);
    this.#torqueNm = grown(new Float64Array(room), this.#torqueNm);
    this.#index = grown(new Int32Array(room), this.#index);
  }
}

/** Median of three: a single wild sample does not count. */
export function calmAt(torqueNm: ArrayLike<number>, i: number, count: number): number {
  const now = torqueNm[i]!;
  const before = torqueNm[i === 0 ? 0 : i - 1]!;
  const after = torqueNm[i + 1 < count ? i + 1 : i]!;
  const low = before < now ? before : now;
  const high = before < now ? now : before;
  return after < low ? low : after > high ? high : after;
}

function grown<Row extends Float64Array | Int32Array>(to: Row, from: Row): Row {
  to.set(from);
  return to;
}

function copy(from: Mark, to: Mark): void {
  to.points = from.points;
  to.groups = from.groups;
  to.sumDeg = from.sumDeg;
  to.sumNm = from.sumNm;
  to.firstIndex = from.firstIndex;
  to.fromDeg = from.fromDeg;
  to.topDeg = from.topDeg;
  to.heldNm = from.heldNm;
  to.heldCount = from.heldCount;
  to.heldFirstNm = from.heldFirstNm;
  to.heldTopNm = from.heldTopNm;
  to.heldIndex = from.heldIndex;
}
