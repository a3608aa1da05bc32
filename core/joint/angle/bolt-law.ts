/** How a bolt's steel goes on stretching past yield. */
export type BoltLawKind = 'bilinear' | 'smooth';

export interface Strength {
  /** R_eL or R_p0.2. */
  readonly yieldMPa: number;
  readonly tensileMPa: number;
}

/** Plastic strain under an equivalent stress; rises with it and gives `uniformStrain` at the tensile strength. */
export type BoltLaw = (stressMPa: number) => number;

/** Plastic strain at which the proof stress R_p0.2 is told (ISO 6892-1). */
const PROOF_STRAIN = 0.002;

/**
 * A law of the steel from its two figures of strength; between them it is an assumption.
 *
 * @param kind          `bilinear`: nothing below yield, then a straight line; `smooth`: a power law through 0.2 % at
 *                      yield (Ramberg and Osgood), which begins to bend below it
 * @param uniformStrain plastic strain at the tensile strength, above 0.002
 * @source Ramberg and Osgood, NACA TN 902 (1943): ε = σ/E + 0.002·(σ/R_p0.2)^n
 */
export function boltLaw(kind: BoltLawKind, { yieldMPa, tensileMPa }: Strength, uniformStrain: number): BoltLaw {
  if (kind === 'bilinear') {
    const strainPerMPa = uniformStrain / (tensileMPa - yieldMPa);
    return (stressMPa) => Math.max(0, stressMPa - yieldMPa) * strainPerMPa;
  }
  const exponent = Math.log(uniformStrain / PROOF_STRAIN) / Math.log(tensileMPa / yieldMPa);
  return (stressMPa) => PROOF_STRAIN * (stressMPa / yieldMPa) ** exponent;
}
