/** Samples of one pull in the order they came, as `traceSchema` of a record holds them, or typed arrays. */
export interface TraceSamples {
  readonly timeS: ArrayLike<number>;
  readonly angleDeg: ArrayLike<number>;
  readonly torqueNm: ArrayLike<number>;
}

/** What a trace comes down to. */
export interface TraceReading {
  readonly peakTorqueNm: number;
  /** Where forward motion ended: turning back, as a ratchet does, takes nothing off. */
  readonly finalAngleDeg: number;
  /** Fastest forward turning, held for about 50 ms. */
  readonly fastestDegPerS: number;
}

/** Long enough that the noise of single samples does not count, short enough that a jerk does (common practice). */
const WINDOW_S = 0.05;

/**
 * Peak torque, final angle and fastest turning of one pull.
 *
 * Turning is timed between steps of the angle, never over less than the window, so that neither a coarse display nor
 * repeated time stamps make it look faster than it was. Where the clock jumps back, timing begins anew.
 *
 * Hot loop: one pass with two indices trailing, nothing allocated in it. It goes in stretches, with what it has come to in
 * a typed array: V8 boxes the figures of one long loop that is entered once a pull, which took longer than the reading.
 */
export function readingOf({ timeS, angleDeg, torqueNm }: TraceSamples): TraceReading {
  const count = Math.min(timeS.length, angleDeg.length, torqueNm.length);
  if (count === 0) return { peakTorqueNm: 0, finalAngleDeg: 0, fastestDegPerS: 0 };
  const at = Float64Array.of(torqueNm[0]!, angleDeg[0]!, 0, timeS[0]!, angleDeg[0]!, 0, 0);
  for (let from = 1; from < count; from += STRETCH)
    goOn(timeS, angleDeg, torqueNm, from, Math.min(count, from + STRETCH), at);
  return { peakTorqueNm: at[PEAK]!, finalAngleDeg: at[FINAL]!, fastestDegPerS: at[FASTEST]! };
}

const STRETCH = 256;

/** Places in what a reading has come to. */
const PEAK = 0;
const FINAL = 1;
const FASTEST = 2;
/** The last step forward before the window, and the index of the first one inside it. */
const BEFORE_S = 3;
const BEFORE_DEG = 4;
const INSIDE = 5;
const TRAILING = 6;

function goOn(
  timeS: ArrayLike<number>,
  angleDeg: ArrayLike<number>,
  torqueNm: ArrayLike<number>,
  from: number,
  to: number,
  at: Float64Array,
): void {
  let peakTorqueNm = at[PEAK]!;
  let finalAngleDeg = at[FINAL]!;
  let fastestDegPerS = at[FASTEST]!;
  let beforeS = at[BEFORE_S]!;
  let beforeDeg = at[BEFORE_DEG]!;
  let inside = at[INSIDE]! | 0;
  let trailing = at[TRAILING]! | 0;
  for (let i = from; i < to; i++) {
    if (torqueNm[i]! > peakTorqueNm) peakTorqueNm = torqueNm[i]!;
    const nowS = timeS[i]!;
    if (nowS < timeS[i - 1]!) {
      beforeS = nowS;
      beforeDeg = finalAngleDeg;
      trailing = i;
    }
    if (angleDeg[i]! <= finalAngleDeg) continue;
    finalAngleDeg = angleDeg[i]!;
    while (trailing + 1 < i && timeS[trailing + 1]! <= nowS - WINDOW_S) {
      trailing++;
      if (angleDeg[trailing]! <= beforeDeg) continue;
      beforeS = timeS[trailing]!;
      beforeDeg = angleDeg[trailing]!;
    }
    if (inside <= trailing) inside = trailing + 1;
    while (inside < i && angleDeg[inside]! <= beforeDeg) inside++;
    // divided only where it is faster: a division a sample would be a third of the time
    const spanS = nowS - beforeS > WINDOW_S ? nowS - beforeS : WINDOW_S;
    const wayDeg = finalAngleDeg - beforeDeg;
    if (wayDeg > fastestDegPerS * spanS) fastestDegPerS = wayDeg / spanS;
    const insideDeg = inside < i ? finalAngleDeg - angleDeg[inside]! : 0;
    if (insideDeg > fastestDegPerS * WINDOW_S) fastestDegPerS = insideDeg / WINDOW_S;
  }
  at[PEAK] = peakTorqueNm;
  at[FINAL] = finalAngleDeg;
  at[FASTEST] = fastestDegPerS;
  at[BEFORE_S] = beforeS;
  at[BEFORE_DEG] = beforeDeg;
  at[INSIDE] = inside;
  at[TRAILING] = trailing;
}
