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

/** Peak torque, final angle and fastest turning of one pull. */
export function readingOf({ timeS, angleDeg, torqueNm }: TraceSamples): TraceReading {
  const count = Math.min(timeS.length, angleDeg.length, torqueNm.length);
  let peakTorqueNm = count > 0 ? torqueNm[0]! : 0;
  for (let i = 1; i < count; i++) if (torqueNm[i]! > peakTorqueNm) peakTorqueNm = torqueNm[i]!;
  return { peakTorqueNm, ...turningOf(timeS, angleDeg, count) };
}

/**
 * Final angle and fastest turning of so many samples.
 *
 * Turning is timed between steps of the angle, never over less than the window, so that neither a coarse display nor
 * repeated time stamps make it look faster than it was. Where the clock jumps back, timing begins anew.
 *
 * Hot loop: one pass with two indices trailing, nothing allocated in it. It goes in stretches, with what it has come to in
 * a typed array: V8 boxes the figures of one long loop that is entered once a pull, which took longer than the reading.
 */
export function turningOf(
  timeS: ArrayLike<number>,
  angleDeg: ArrayLike<number>,
  count: number,
): Omit<TraceReading, 'peakTorqueNm'> {
  if (count === 0) return { finalAngleDeg: 0, fastestDegPerS: 0 };
  const at = Float64Array.of(angleDeg[0]!, 0, timeS[0]!, angleDeg[0]!, 0, 0);
  for (let from = 1; from < count; from += STRETCH) goOn(timeS, angleDeg, from, Math.min(count, from + STRETCH), at);
  return { finalAngleDeg: at[FINAL]!, fastestDegPerS: at[FASTEST]! };
}

const STRETCH = 256;

/** Places in what a reading has come to. */
const FINAL = 0;
const FASTEST = 1;
/** The last step forward before the window, and the index of the first one inside it. */
const BEFORE_S = 2;
const BEFORE_DEG = 3;
const INSIDE = 4;
const TRAILING = 5;

function goOn(timeS: ArrayLike<number>, angleDeg: ArrayLike<number>, from: number, to: number, at: Float64Array): void {
  let finalAngleDeg = at[FINAL]!;
  let fastestDegPerS = at[FASTEST]!;
  let beforeS = at[BEFORE_S]!;
  let beforeDeg = at[BEFORE_DEG]!;
  let inside = at[INSIDE]! | 0;
  let trailing = at[TRAILING]! | 0;
  let lastS = timeS[from - 1]!;
  let nextS = timeS[trailing + 1]!;
  let fastestDeg = fastestDegPerS * WINDOW_S;
  for (let i = from; i < to; i++) {
    const nowS = timeS[i]!;
    if (nowS < lastS) {
      beforeS = nowS;
      beforeDeg = finalAngleDeg;
      trailing = i;
      nextS = i + 1 < timeS.length ? timeS[i + 1]! : nowS;
    }
    lastS = nowS;
    const deg = angleDeg[i]!;
    if (deg <= finalAngleDeg) continue;
    finalAngleDeg = deg;
    while (trailing + 1 < i && nextS <= nowS - WINDOW_S) {
      trailing++;
      nextS = timeS[trailing + 1]!;
      if (angleDeg[trailing]! <= beforeDeg) continue;
      beforeS = timeS[trailing]!;
      beforeDeg = angleDeg[trailing]!;
    }
    const wayDeg = deg - beforeDeg;
    if (wayDeg <= fastestDeg) continue;
    // divided only where it is faster: a division a sample would be a third of the time
    const spanS = nowS - beforeS > WINDOW_S ? nowS - beforeS : WINDOW_S;
    if (wayDeg > fastestDegPerS * spanS) fastestDegPerS = wayDeg / spanS;
    if (inside <= trailing) inside = trailing + 1;
    while (inside < i && angleDeg[inside]! <= beforeDeg) inside++;
    const insideDeg = inside < i ? deg - angleDeg[inside]! : 0;
    if (insideDeg > fastestDegPerS * WINDOW_S) fastestDegPerS = insideDeg / WINDOW_S;
    fastestDeg = fastestDegPerS * WINDOW_S;
  }
  at[FINAL] = finalAngleDeg;
  at[FASTEST] = fastestDegPerS;
  at[BEFORE_S] = beforeS;
  at[BEFORE_DEG] = beforeDeg;
  at[INSIDE] = inside;
  at[TRAILING] = trailing;
}
