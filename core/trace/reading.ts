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
 * Hot loop: one pass with two indices trailing, nothing allocated.
 */
export function readingOf({ timeS, angleDeg, torqueNm }: TraceSamples): TraceReading {
  const count = Math.min(timeS.length, angleDeg.length, torqueNm.length);
  if (count === 0) return { peakTorqueNm: 0, finalAngleDeg: 0, fastestDegPerS: 0 };
  let peakTorqueNm = torqueNm[0]!;
  let finalAngleDeg = angleDeg[0]!;
  let fastestDegPerS = 0;
  // the last step forward before the window, and the index of the first one inside it
  let beforeS = timeS[0]!;
  let beforeDeg = angleDeg[0]!;
  let inside = 0;
  let trailing = 0;
  for (let i = 1; i < count; i++) {
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
  return { peakTorqueNm, finalAngleDeg, fastestDegPerS };
}
