/** Samples of one pull in the order they came; `timeS` is missing where nothing tells the time. */
export interface Samples {
  readonly angleDeg: ArrayLike<number>;
  readonly torqueNm: ArrayLike<number>;
  readonly timeS?: ArrayLike<number> | undefined;
}

/** The same as typed arrays, which is what the hot loops want; torque times `factor`. */
export function typed({ angleDeg, torqueNm, timeS }: Samples, factor = 1): Samples {
  const torque = Float64Array.from(torqueNm);
  if (factor !== 1) for (let i = 0; i < torque.length; i++) torque[i]! *= factor;
  return {
    angleDeg: Float64Array.from(angleDeg),
    torqueNm: torque,
    ...(timeS ? { timeS: Float64Array.from(timeS) } : {}),
  };
}
