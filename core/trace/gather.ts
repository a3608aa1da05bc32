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
  readonly angleDeg: Float64Array;
  readonly torqueNm: Float64Array;
  readonly index: Int32Array;
  readonly #stepDeg: number;
  readonly #woundUpNm: number;
  readonly #at: Mark = emptyMark();
  readonly #held: Mark = emptyMark();

  constructor(room: number, stepDeg: number, peakNm: number) {
    this.angleDeg = new Float64Array(room + 2);
    this.torqueNm = new Float64Array(room + 2);
    this.index = new Int32Array(room + 2);
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

  /** Ends the gathering. @returns how many points there are */
  close(): number {
    this.#closeAngle();
    this.#closePoint();
    return this.#at.points;
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
    if (at.groups === 0 || at.points >= this.index.length) return;
    this.angleDeg[at.points] = at.sumDeg / at.groups;
    this.torqueNm[at.points] = at.sumNm / at.groups;
    this.index[at.points] = at.firstIndex;
    at.points++;
    at.groups = 0;
    at.sumDeg = 0;
    at.sumNm = 0;
  }
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
