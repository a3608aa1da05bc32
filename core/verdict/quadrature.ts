/** Nodes in (0, 1) and weights of Gauss and Legendre with 16 points; the other half lies mirrored. */
// M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, table 25.4, n = 16 (from memory; the tests hold it)
const NODES = [
  0.0950125098376374, 0.2816035507792589, 0.4580167776572274, 0.6178762444026438, 0.755404408355003, 0.8656312023878318,
  0.9445750230732326, 0.9894009349916499,
];
const WEIGHTS = [
  0.1894506104550685, 0.1826034150449236, 0.1691565193950025, 0.1495959888165767, 0.1246289712555339,
  0.0951585116824928, 0.0622535239386479, 0.0271524594117541,
];

/** Integral of a smooth function over one panel, exact for polynomials up to degree 31. */
export function quadrature(f: (x: number) => number, from: number, to: number): number {
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  let sum = 0;
  for (let i = 0; i < NODES.length; i++) {
    const reach = half * NODES[i]!;
    sum += WEIGHTS[i]! * (f(middle - reach) + f(middle + reach));
  }
  return half * sum;
}

/** Panels between cuts, narrow enough for functions that bend over a or, near their cuts, over b. */
export function panelsOf(cuts: readonly number[], a: number, b: number): readonly (readonly [number, number])[] {
  const sorted = cuts.toSorted((x, y) => x - y);
  return sorted.slice(1).flatMap((right, index) => {
    const left = sorted[index]!;
    const scale = Math.max(right - left > 20 * b ? a : Math.min(a, b), (right - left) / MOST);
    const count = Math.max(1, Math.ceil((right - left) / scale));
    const at = (n: number) => left + ((right - left) * n) / count;
    return right > left ? Array.from({ length: count }, (_, n) => [at(n), at(n + 1)] as const) : [];
  });
}

const MOST = 64;
