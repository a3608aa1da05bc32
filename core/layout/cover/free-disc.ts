import { type PlateOnBed, plateFigures } from '../interaction/plate-on-bed.ts';
import { choleskyOf, matrixOf, type SquareMatrix, solveCholesky } from '../interaction/square-matrix.ts';
import { gaussRule, jacobi, type Node } from './polynomials.ts';

/** A round cover with a free edge on a bed that is a ring, or the whole of what lies within its outer radius. */
export interface DiscOnBed extends PlateOnBed {
  readonly radiusMm: number;
  readonly bedOuterMm: number;
  /** Radius of what the bed leaves free in the middle, mm. */
  readonly bedInnerMm?: number | undefined;
}

/** Waves round the cover, and terms along its radius: doubled they change no bolt by more than 0.2 %. */
const WAVES = 48;
const TERMS = 14;

/**
 * How far the cover goes down at a bolt for a unit of force at another, mm/N, by steps of equal angle.
 *
 * @param atMm radius on which the bolts stand
 * @param count bolts round the cover
 * @returns by steps between the two bolts, from 0 to count - 1; undefined where rounding leaves no answer
 * @source Rayleigh and Ritz by waves round the cover and Jacobi polynomials of the radius, derivation ours; energy of a
 *         thin plate in polar coordinates: Timoshenko and Woinowsky-Krieger (from memory). Held to solid elements.
 */
export function discClosing(disc: DiscOnBed, atMm: number, count: number): readonly number[] | undefined {
  const rule = gaussRule(TERMS * 2 + WAVES);
  const waves: number[] = [];
  for (let n = 0; n <= WAVES; n++) {
    const lower = choleskyOf(stiffness(disc, n, rule));
    if (!lower) return undefined;
    const load = radial(n, atMm / disc.radiusMm).map(({ value }) => value);
    const amounts = solveCholesky(lower, load);
    const sum = load.reduce((all, one, k) => all + one * amounts[k]!, 0);
    waves.push(sum / (n === 0 ? 2 * Math.PI : Math.PI));
  }
  return Array.from({ length: count }, (_, steps) =>
    waves.reduce((sum, wave, n) => sum + wave * Math.cos((2 * Math.PI * n * steps) / count), 0),
  );
}

/** A term at a place of the radius, on which that of the cover is 1. */
interface Radial {
  readonly value: number;
  /** Curvature along the radius, round the middle, and twist, each by the square of the radius of the cover. */
  readonly along: number;
  readonly round: number;
  readonly twist: number;
}

/** ρⁿ·P(2ρ² − 1) with the polynomials of Jacobi that belong to n. */
function radial(n: number, rho: number): readonly Radial[] {
  const power = rho ** n;
  return jacobi(0, n, TERMS, 2 * rho * rho - 1).map((shape, k) => {
    const size = Math.sqrt(2 * (n + 2 * k + 1)) * power;
    // of f(ρ) = ρⁿ·p(x), x = 2ρ² − 1: ρ·f′ and ρ²·f″ over ρⁿ
    const slope = n * shape.value + 4 * rho ** 2 * shape.first;
    const bend = n * (n - 1) * shape.value + 4 * (2 * n + 1) * rho ** 2 * shape.first + 16 * rho ** 4 * shape.second;
    const scale = size / rho ** 2;
    return {
      value: size * shape.value,
      along: scale * bend,
      round: scale * (slope - n * n * shape.value),
      twist: scale * n * (slope - shape.value),
    };
  });
}

/** Second derivative of the energy by the amounts of each two terms with n waves, over that of the angle. */
function stiffness(disc: DiscOnBed, n: number, rule: readonly Node[]): SquareMatrix {
  const { radiusMm, bedOuterMm, bedInnerMm = 0, poisson, bedNPerMm3 } = disc;
  const { stiffnessNmm } = plateFigures(disc);
  const plate = over(rule, 0, 1, n);
  const bed = over(rule, bedInnerMm / radiusMm, bedOuterMm / radiusMm, n);
  return matrixOf(TERMS, (i, j) => {
    const bend = plate.reduce((sum, { weight, terms }) => {
      const [a, b] = [terms[i]!, terms[j]!];
      const mean = (a.along + a.round) * (b.along + b.round);
      const shape = a.along * b.round + a.round * b.along - 2 * a.twist * b.twist;
      return sum + weight * (mean - (1 - poisson) * shape);
    }, 0);
    const rests = bed.reduce((sum, { weight, terms }) => sum + weight * terms[i]!.value * terms[j]!.value, 0);
    return (stiffnessNmm / radiusMm ** 2) * bend + bedNPerMm3 * radiusMm ** 2 * rests;
  });
}

/** Places of the radius from one to another, with the weight that area has there. */
const over = (rule: readonly Node[], from: number, to: number, n: number) =>
  rule.map(({ x, weight }) => {
    const rho = from + ((to - from) * (1 + x)) / 2;
    return { weight: ((weight * (to - from)) / 2) * rho, terms: radial(n, rho) };
  });
