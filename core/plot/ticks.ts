const E10 = Math.sqrt(50);
const E5 = Math.sqrt(10);
const E2 = Math.sqrt(2);

/** 1, 2, 5 or 10 times a power of ten, so that a range is parted into about `count` steps. */
function stepOf(range: number, count: number): number {
  const rough = range / Math.max(count, 1);
  const power = 10 ** Math.floor(Math.log10(rough));
  const excess = rough / power;
  if (excess >= E10) return 10 * power;
  if (excess >= E5) return 5 * power;
  return excess >= E2 ? 2 * power : power;
}

/** Without the crumbs that binary fractions leave: 0.30000000000000004 is shown as nobody writes it. */
const clean = (value: number): number => Number(value.toPrecision(12));

/**
 * Round figures inside a range, about `count` of them.
 *
 * @returns ascending; empty for a range without width
 */
export function ticks(from: number, to: number, count: number): readonly number[] {
  if (!(to > from)) return [];
  const step = stepOf(to - from, count);
  const first = Math.ceil(clean(from / step));
  const last = Math.floor(clean(to / step));
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, index) => clean((first + index) * step));
}

/** The range widened to round figures, so that an axis begins and ends at a tick. */
export function roundRange(from: number, to: number, count: number): readonly [number, number] {
  if (!(to > from)) return from === 0 ? [0, 1] : [Math.min(0, from), Math.max(0, from)];
  const step = stepOf(to - from, count);
  return [clean(Math.floor(clean(from / step)) * step), clean(Math.ceil(clean(to / step)) * step)];
}
