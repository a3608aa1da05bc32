import { type Extremes, extremesOf, mostPoints, roomFor } from './extremes.ts';
import { calmAt, Gathering, type Points } from './gather.ts';
import type { Samples } from './samples.ts';

/** Torque went away before the end of the pull, and came back. */
export interface Break {
  /** `stroke`: the hand let go. `slip`: the angle ran on as torque went. `drop-out`: samples that say nothing. */
  readonly kind: 'stroke' | 'slip' | 'drop-out';
  readonly heldNm: number;
  readonly atDeg: number;
  /** Last sample before, and the sample at which the torque was back. */
  readonly index: number;
  readonly backIndex: number;
}

/** Torque over the turning of the fastener: strokes joined end to end, a point for each small step of angle. */
export interface Curve extends Points {
  readonly breaks: readonly Break[];
  readonly extremes: Extremes;
  /** Where forward motion ended, and the largest torque there. */
  readonly last: { readonly index: number; readonly angleDeg: number; readonly torqueNm: number };
  /** Torque fell to nothing in the end while the angle ran on. */
  readonly lost: boolean;
}

const MOST_BREAKS = 200;
/** Torque under this share of what it was has been let go; above the next it is held. */
const LET_GO = 0.3;
const HELD = 0.85;
const BACK = 0.97;
/** A place to go back to is marked each half step of angle, and where torque rises by so much of the peak. */
const MARKED = 0.01;
/** Below this share of the peak a stroke cannot be told from noise. */
const NOTHING = 0.1;
/** From so many samples to a point on, one that leaves its neighbours by less than this share of the peak may stay in the mean. */
const FINE = 8;
const WILD = 0.04;

/**
 * Reduces samples to a curve.
 *
 * An angle that runs back is the ratchet or the tool unloading, and takes nothing off. Where torque is let go and
 * built up again, the fastener turns only once the torque is back at what it was: what the wrench wound up on the
 * way, or what the ratchet went back, is taken out, so that strokes join end to end.
 *
 * Hot loop: one pass after a look for the extremes, nothing allocated but a row for each break.
 */
export function curveOf(samples: Samples, extremes: Extremes = extremesOf(samples)): Curve {
  const { count, stepDeg, peakNm } = extremes;
  const gathering = new Gathering(mostPoints(count), roomFor(extremes), stepDeg, peakNm);
  const walk = new Walk(samples, extremes, gathering);
  for (let i = 0; i < count; ) {
    walk.sample(i++);
    i = walk.steadily(i);
  }
  const lost = walk.end();
  const { last } = gathering;
  return {
    ...gathering.close(),
    breaks: walk.breaks,
    extremes,
    last,
    lost,
  };
}

/** Goes along the samples of one pull and tells turning from letting go. */
class Walk {
  readonly breaks: Break[] = [];
  readonly #samples: Samples;
  readonly #angleDeg: ArrayLike<number>;
  readonly #torqueNm: ArrayLike<number>;
  readonly #count: number;
  readonly #isFine: boolean;
  readonly #floorNm: number;
  readonly #gathering: Gathering;
  readonly #windUpDeg: number;
  readonly #aheadDeg: number;
  readonly #fadePerDeg: number;
  readonly #restDeg: number;
  readonly #halfStepDeg: number;
  readonly #peakNm: number;
  #markedDeg = Number.NEGATIVE_INFINITY;
  #markedNm = Number.NEGATIVE_INFINITY;
  #offsetDeg = 0;
  #levelNm = 0;
  #heldDeg = Number.NEGATIVE_INFINITY;
  #heldIndex = 0;
  #passDeg = Number.NEGATIVE_INFINITY;
  #low = false;
  #ranAhead = false;
  #lowFrom = 0;
  #lowNm = 0;
  #lastLow = 0;
  #lastLowDeg = 0;

  constructor(samples: Samples, extremes: Extremes, gathering: Gathering) {
    const { count, loadedDeg, stepDeg, peakNm } = extremes;
    this.#samples = samples;
    this.#angleDeg = samples.angleDeg;
    this.#torqueNm = samples.torqueNm;
    this.#isFine = extremes.samplesPerPoint >= FINE;
    this.#count = count;
    this.#halfStepDeg = stepDeg / 2;
    this.#peakNm = peakNm;
    this.#floorNm = NOTHING * peakNm;
    this.#gathering = gathering;
    this.#windUpDeg = Math.max(10, 0.25 * loadedDeg);
    this.#aheadDeg = Math.max(1, 0.03 * loadedDeg);
    this.#fadePerDeg = 1 / Math.max(5, 0.15 * loadedDeg);
    this.#restDeg = Math.min(1, 0.02 * loadedDeg);
  }

  sample(i: number): void {
    const nm = calmAt(this.#torqueNm, i, this.#count);
    const deg = this.#angleDeg[i]! + this.#offsetDeg;
    if (this.#low) return this.#whileLow(i, deg, nm);
    const gathering = this.#gathering;
    if (nm < LET_GO * this.#levelNm && this.#levelNm > this.#floorNm && this.#staysLow(i)) {
      this.#low = true;
      this.#lowNm = this.#levelNm;
      this.#lowFrom = i;
      this.#ranAhead = deg - this.#heldDeg > this.#aheadDeg;
      return this.#whileLow(i, deg, nm);
    }
    const { topDeg } = gathering;
    if (deg > topDeg) this.#levelNm *= Math.max(0, 1 - Math.min(1, (deg - topDeg) * this.#fadePerDeg));
    if (nm > this.#levelNm) this.#levelNm = nm;
    if (deg <= this.#passDeg) gathering.pass(deg);
    else gathering.take(i, deg, nm);
    if (nm < HELD * this.#levelNm) return;
    this.#heldDeg = topDeg > deg ? topDeg : deg;
    this.#heldIndex = i;
    if (deg < this.#markedDeg && nm < this.#markedNm) return;
    gathering.hold();
    this.#markedDeg = deg + this.#halfStepDeg;
    this.#markedNm = nm + MARKED * this.#peakNm;
  }

  /** Goes on through samples that turn steadily, where there are many to a point. @returns the first that does not */
  steadily(first: number): number {
    if (!this.#isFine || this.#low) return first;
    const gathering = this.#gathering;
    const fromDeg = gathering.topDeg;
    const after = gathering.takeSteady(this.#samples, first, {
      count: this.#count,
      offsetDeg: this.#offsetDeg,
      leastNm: this.#levelNm > this.#floorNm ? HELD * this.#levelNm : Number.NEGATIVE_INFINITY,
      mostNm: this.#markedNm,
      jumpNm: WILD * this.#peakNm,
      untilDeg: this.#markedDeg,
    });
    if (after === first) return first;
    const nm = this.#torqueNm[after - 1]!;
    const { topDeg } = gathering;
    this.#levelNm = Math.max(nm, this.#levelNm * Math.max(0, 1 - (topDeg - fromDeg) * this.#fadePerDeg));
    if (nm < HELD * this.#levelNm) return after;
    this.#heldDeg = topDeg;
    this.#heldIndex = after - 1;
    return after;
  }

  /** @returns whether torque was lost while the angle ran on, and what came then belongs to the curve */
  end(): boolean {
    if (!this.#low) return false;
    const aheadDeg = this.#gathering.topDeg - this.#heldDeg;
    const lost = aheadDeg > this.#aheadDeg;
    if (!lost && aheadDeg > 0) this.#gathering.backToHeld();
    return lost;
  }

  #whileLow(i: number, deg: number, nm: number): void {
    if (nm < LET_GO * this.#lowNm) {
      this.#lastLow = i;
      this.#lastLowDeg = deg;
    }
    if (this.#isBack(i, nm) && deg - this.#lastLowDeg <= this.#windUpDeg) return this.#back(i, deg, nm);
    this.#gathering.take(i, deg, nm);
    if (deg - this.#lastLowDeg <= this.#windUpDeg || nm <= LET_GO * this.#lowNm) return;
    // turned on at less torque: no stroke, but another course of the curve
    this.#low = false;
    this.#levelNm = nm;
  }

  #back(i: number, deg: number, nm: number): void {
    const quick = this.#lowFrom - this.#heldIndex <= 2 && i - this.#lastLow <= 2 && i - this.#lowFrom <= 4;
    const dropOut = quick && deg >= this.#heldDeg;
    if (this.breaks.length < MOST_BREAKS) {
      this.breaks.push({
        kind: dropOut ? 'drop-out' : this.#ranAhead ? 'slip' : 'stroke',
        heldNm: this.#lowNm,
        atDeg: this.#heldDeg,
        index: this.#heldIndex,
        backIndex: i,
      });
    }
    this.#gathering.backToHeld();
    if (!dropOut) {
      this.#offsetDeg += this.#heldDeg - deg;
      this.#passDeg = this.#heldDeg + this.#restDeg;
    }
    this.#low = false;
    this.#levelNm = Math.max(nm, this.#lowNm);
  }

  /** The end of a pull may stand for a single sample; a wild one has torque on neither side. */
  #isBack(i: number, calmNm: number): boolean {
    const bound = BACK * this.#lowNm;
    if (calmNm >= bound) return true;
    return this.#torqueNm[i]! >= bound && i > 0 && this.#torqueNm[i - 1]! > LET_GO * this.#lowNm;
  }

  #staysLow(i: number): boolean {
    return i + 1 >= this.#count || this.#torqueNm[i + 1]! < LET_GO * this.#levelNm;
  }
}
