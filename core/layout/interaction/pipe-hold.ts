/** A pipe welded to the back of a flange, of the same bore and material. */
export interface WeldedPipe {
  readonly boreMm: number;
  readonly wallMm: number;
  readonly modulusMPa: number;
  readonly poisson: number;
}

/**
 * Moment with which the pipe holds the flange against twisting, for each mm of its own circle and each radian, N.
 *
 * The end of the pipe turns with the flange and is held where it is across: the flange is far stiffer that way.
 *
 * @source long thin cylinder turned at its end: M = 2·β·D·φ with β⁴ = 3(1 − ν²)/(R²t²), D = E·t³/(12(1 − ν²));
 *         Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells (from memory; held to solid elements)
 */
export function pipeHoldN({ boreMm, wallMm, modulusMPa, poisson }: WeldedPipe): number {
  const across = 1 - poisson ** 2;
  const beta = (3 * across) ** 0.25 / Math.sqrt(pipeRadiusMm({ boreMm, wallMm }) * wallMm);
  return (2 * beta * modulusMPa * wallMm ** 3) / (12 * across);
}

/** Of the middle of its wall. */
export const pipeRadiusMm = ({ boreMm, wallMm }: Pick<WeldedPipe, 'boreMm' | 'wallMm'>): number =>
  (boreMm + wallMm) / 2;
