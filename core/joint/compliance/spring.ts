/** A length of material under axial force, hollow where it has a hole. */
interface Body {
  readonly lengthMm: number;
  readonly modulusMPa: number;
  readonly holeMm: number;
}

/** Area of a full circle, mm². */
export const circleMm2 = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2;

/** A bar of constant area, mm/N: l/(E·A). */
export const barMmPerN = (lengthMm: number, areaMm2: number, modulusMPa: number): number =>
  lengthMm / (modulusMPa * areaMm2);

/** A hollow cylinder, mm/N. */
export const sleeveMmPerN = (outerMm: number, { lengthMm, modulusMPa, holeMm }: Body): number =>
  barMmPerN(lengthMm, circleMm2(outerMm) - circleMm2(holeMm), modulusMPa);

/**
 * A hollow frustum that widens along the force, mm/N: the integral of dz/(E·A(z)).
 *
 * @param narrowMm diameter at its narrow end, above the hole
 * @param tangent  of its half angle, above 0
 * @source VDI 2230-1:2015, (5.1/30); the same as Shigley, 9th ed., (8-19) with the half angle left open
 */
export function frustumMmPerN(narrowMm: number, tangent: number, { lengthMm, modulusMPa, holeMm }: Body): number {
  const wideMm = narrowMm + 2 * lengthMm * tangent;
  const ratio = ((narrowMm + holeMm) * (wideMm - holeMm)) / ((narrowMm - holeMm) * (wideMm + holeMm));
  return Math.log(ratio) / (Math.PI * modulusMPa * holeMm * tangent);
}
