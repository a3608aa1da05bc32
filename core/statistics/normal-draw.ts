import type { RandomWords } from './random-words.ts';

/** Where draws lie, and how far about it. */
export interface Scatter {
  readonly value: number;
  readonly standardUncertainty: number;
}

/** Where the base strip ends and the tail begins, and the area of each of 256 strips under exp(−x²/2). */
const TAIL = 3.6541528853610088;
const AREA = 0.00492867323399;

/** Right ends of the strips: EDGES[0] is as wide as the base with its tail spread out, EDGES[256] is 0. */
const EDGES = new Float64Array(257);
EDGES[0] = AREA / Math.exp(-0.5 * TAIL ** 2);
EDGES[1] = TAIL;
for (let i = 2; i < 256; i++) {
  const below = EDGES[i - 1]!;
  EDGES[i] = Math.sqrt(-2 * Math.log(AREA / below + Math.exp(-0.5 * below ** 2)));
}
const HEIGHTS = EDGES.map((edge) => Math.exp(-0.5 * edge ** 2));

const PER_HALF_RANGE = 2 ** -52;

/**
 * Fills a column with draws from a normal distribution.
 *
 * Hot: 99 of 100 draws take two words, one multiplication and one comparison.
 *
 * @source G. Marsaglia and W. W. Tsang, The Ziggurat Method for Generating Random Variables, J. Stat. Softw. 5 (2000) 8;
 *         strip and place in it from bits of their own, as J. A. Doornik asked for in 2005
 */
export function fillNormal(words: RandomWords, column: Float64Array, count: number, about: Scatter): void {
  const { value, standardUncertainty: u } = about;
  for (let i = 0; i < count; i++) {
    const high = words.next();
    const low = words.next();
    const strip = low & 255;
    const z = (high * 2_097_152 + (low >>> 11)) * PER_HALF_RANGE * EDGES[strip]!;
    column[i] = value + u * (Math.abs(z) < EDGES[strip + 1]! ? z : atTheEdge(words, strip, z));
  }
}

/** A draw outside of the part of its strip that lies under the curve whole: kept, taken from the tail, or drawn anew. */
function atTheEdge(words: RandomWords, firstStrip: number, firstZ: number): number {
  let strip = firstStrip;
  let z = firstZ;
  while (Math.abs(z) >= EDGES[strip + 1]!) {
    if (strip === 0) return z < 0 ? -inTheTail(words) : inTheTail(words);
    const height = HEIGHTS[strip]! + words.fraction() * (HEIGHTS[strip + 1]! - HEIGHTS[strip]!);
    if (height < Math.exp(-0.5 * z ** 2)) return z;
    const high = words.next();
    const low = words.next();
    strip = low & 255;
    z = (high * 2_097_152 + (low >>> 11)) * PER_HALF_RANGE * EDGES[strip]!;
  }
  return z;
}

/** @source G. Marsaglia, Technometrics 6 (1964) 101 */
function inTheTail(words: RandomWords): number {
  for (;;) {
    const beyond = -Math.log(words.fraction()) / TAIL;
    if (-2 * Math.log(words.fraction()) >= beyond ** 2) return TAIL + beyond;
  }
}
