/**
 * Moves labels apart that would stand on each other, each as little as the others allow.
 *
 * @param places where the labels want to stand, in any order
 * @param gap    least distance of two neighbours
 * @param from   where the first may stand
 * @param to     where the last may stand; more labels than fit go past it rather than onto each other
 * @returns places in the order of the input
 */
export function spread(places: readonly number[], gap: number, from: number, to: number): readonly number[] {
  const order = places.map((_, index) => index).toSorted((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
  const moved = [...places];
  let free = from;
  for (const index of order) {
    moved[index] = Math.max(places[index] ?? 0, free);
    free = (moved[index] ?? 0) + gap;
  }
  let last = Math.max(to, from + gap * (places.length - 1));
  for (const index of order.toReversed()) {
    moved[index] = Math.min(moved[index] ?? 0, last);
    last = (moved[index] ?? 0) - gap;
  }
  return moved;
}
