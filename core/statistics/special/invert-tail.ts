const MOST_STEPS = 200;

/** Logarithm of a tail at a place, and of the density there. */
export interface Tail {
  readonly logTail: (at: number) => number;
  readonly logDensity: (at: number) => number;
}

/**
 * Place at which a tail has a given logarithm, by Newton's method on the logarithm. The tails of a density whose
 * logarithm is concave are log-concave themselves, so that the steps lead to the place from every start; only the first
 * may go too far, and is held back. Where numbers end, the start is the answer.
 *
 * @param side 1 for a lower tail, which grows with the place; −1 for an upper one
 */
export function invertTail({ logTail, logDensity }: Tail, side: 1 | -1, wanted: number, start: number): number {
  let at = start;
  let last = Infinity;
  for (let step = 0; step < MOST_STEPS; step++) {
    const tail = logTail(at);
    if (!Number.isFinite(tail)) return at;
    const move = side * (wanted - tail) * Math.exp(tail - logDensity(at));
    const most = 4 + Math.abs(at);
    const held = Math.max(-most, Math.min(most, move));
    at += held;
    const size = Math.abs(held);
    if (size <= 4e-16 * Math.abs(at) || (size < 1e-11 && size >= last)) return at;
    last = size;
  }
  return at;
}
