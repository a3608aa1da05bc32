/** A plate on an elastic bed. */
export interface PlateOnBed {
  readonly heightMm: number;
  readonly modulusMPa: number;
  readonly poisson: number;
  /** Under each mm², N/mm³. */
  readonly bedNPerMm3: number;
}

/** Beyond so many characteristic lengths, where it is 5·10⁻⁵ of that under the force, it is taken for nothing. */
const FARTHEST = 12;
const TERMS = 60;

/**
 * kei of order zero.
 *
 * @param x at least 0; beyond 12 the answer is 0, which is off by at most 4·10⁻⁵
 * @source series of ber, bei and kei: Abramowitz and Stegun, 9.9.10 to 9.9.12 (from memory; checked against scipy)
 */
export function kei(x: number): number {
  if (x === 0) return -Math.PI / 4;
  if (x > FARTHEST) return 0;
  const square = (x * x) / 4;
  let [ber, bei, extra] = [0, 0, 0];
  // Terms (x²/4)^m/(m!)² go by turns to ber (m even) and bei (m odd); ψ(m+1) = H_m − γ.
  let term = 1;
  let harmonic = -0.577_215_664_901_532_9;
  for (let m = 0; m < 2 * TERMS; m++) {
    const sign = Math.floor(m / 2) % 2 === 0 ? 1 : -1;
    if (m % 2 === 0) ber += sign * term;
    else {
      bei += sign * term;
      extra += sign * term * harmonic;
    }
    harmonic += 1 / (m + 1);
    term *= square / (m + 1) ** 2;
  }
  return -Math.log(x / 2) * bei - (Math.PI / 4) * ber + extra;
}

/** Characteristic length (D/k)^¼, mm, and plate stiffness D, N·mm. */
export function plateFigures({ heightMm, modulusMPa, poisson, bedNPerMm3 }: PlateOnBed) {
  const stiffnessNmm = (modulusMPa * heightMm ** 3) / (12 * (1 - poisson ** 2));
  return { stiffnessNmm, lengthMm: (stiffnessNmm / bedNPerMm3) ** 0.25 };
}

/**
 * How far an endless plate goes down at a distance from a unit of force, mm/N.
 *
 * @source Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, plate on elastic foundation:
 *         w = −ℓ²/(2πD)·kei(r/ℓ) (from memory; checked against finite differences)
 */
export function plateClosing(plate: PlateOnBed): (distanceMm: number) => number {
  const { stiffnessNmm, lengthMm } = plateFigures(plate);
  const factor = lengthMm ** 2 / (2 * Math.PI * stiffnessNmm);
  return (distanceMm) => -factor * kei(distanceMm / lengthMm);
}
