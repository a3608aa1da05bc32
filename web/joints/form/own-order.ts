/** An own order with a position tapped: put at its end, or, tapped again, taken out with the later ones closing up. */
export const tapped = (positions: readonly number[], position: number): readonly number[] =>
  positions.includes(position) ? positions.filter((other) => other !== position) : [...positions, position];

/** The positions in a typed list, split by whatever is no digit. */
export const positionsIn = (text: string): readonly number[] => (text.match(/\d{1,3}/g) ?? []).map(Number);

/** The positions that an own order does not have yet, in their natural sequence. */
export function stillMissing(positions: readonly number[], count: number): readonly number[] {
  const had = new Set(positions);
  return Array.from({ length: count }, (_, index) => index + 1).filter((position) => !had.has(position));
}

/** What an own order has twice, and what is no position of the joint; each named once. */
export function outOfPlace(positions: readonly number[], count: number): readonly number[] {
  const odd = positions.filter(
    (position, index) => position < 1 || position > count || positions.indexOf(position) < index,
  );
  return [...new Set(odd)];
}
