/** How far apart two of the things to be ordered are, by index; ties must be told by equal figures. */
export type Distance = (a: number, b: number) => number;

/** How far `b` is from lying across from `a`; infinite where it does not lie on the other side at all. */
export type AcrossGap = (a: number, b: number) => number;

/**
 * Orders 0 to count - 1 so that each next one is as far as can be from all that came before; ties go to the one
 * farther from the last chosen, then from the one before that and so on back, then to the lowest number.
 * Starts with 0. With `acrossGap`, each one chosen brings along the one that lies across from it.
 *
 * @source spread of the starting bolts in the legacy cross pattern of ASME PCC-1 (from memory): looking further back
 * in a tie is what gives its 28-bolt list
 */
export function farthestFirst(count: number, distance: Distance, acrossGap?: AcrossGap): readonly number[] {
  const open = new Set(Array.from({ length: count }, (_, index) => index));
  const nearest = Array.from({ length: count }, () => Number.POSITIVE_INFINITY);
  const chosen: number[] = [];
  const choose = (index: number): void => {
    chosen.push(index);
    open.delete(index);
    for (const other of open) nearest[other] = Math.min(nearest[other]!, distance(index, other));
  };
  while (open.size > 0) {
    const next = farthest(open, nearest, chosen, distance);
    choose(next);
    const across = acrossGap && opposite(next, open, acrossGap);
    if (across !== undefined) choose(across);
  }
  return chosen;
}

function farthest(
  open: ReadonlySet<number>,
  nearest: readonly number[],
  chosen: readonly number[],
  distance: Distance,
): number {
  let best: number | undefined;
  for (const index of open) {
    if (best === undefined || isFarther(index, best, nearest, chosen, distance)) best = index;
  }
  if (best === undefined) throw new Error('nothing left to choose from');
  return best;
}

function isFarther(
  a: number,
  b: number,
  nearest: readonly number[],
  chosen: readonly number[],
  distance: Distance,
): boolean {
  if (nearest[a] !== nearest[b]) return nearest[a]! > nearest[b]!;
  for (let i = chosen.length - 1; i >= 0; i--) {
    const difference = distance(a, chosen[i]!) - distance(b, chosen[i]!);
    if (difference !== 0) return difference > 0;
  }
  return false;
}

function opposite(index: number, open: ReadonlySet<number>, acrossGap: AcrossGap): number | undefined {
  let best: number | undefined;
  let bestGap = Number.POSITIVE_INFINITY;
  for (const other of open) {
    const gap = acrossGap(index, other);
    if (gap < bestGap) [best, bestGap] = [other, gap];
  }
  return best;
}
