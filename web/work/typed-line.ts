/** A key of a keyboard, as far as it matters here. */
export interface TypedKey {
  readonly key: string;
  readonly atMs: number;
}

/** No hand types a whole line with gaps this short, ms (common practice for readers that type like a keyboard). */
const LONGEST_GAP_MS = 50;
const SHORTEST_LINE = 3;
const LONGEST_LINE = 400;

/** Gathers what a wrench types: characters fast one after the other, ending with Enter. */
export function typedLines(): (typed: TypedKey) => string | undefined {
  let line = '';
  let lastMs = Number.NEGATIVE_INFINITY;
  return ({ key, atMs }) => {
    const isFast = atMs - lastMs <= LONGEST_GAP_MS;
    lastMs = atMs;
    if (key === 'Enter') {
      const whole = isFast && line.length >= SHORTEST_LINE ? line : undefined;
      line = '';
      return whole;
    }
    if (key.length !== 1) return undefined;
    line = isFast && line.length < LONGEST_LINE ? line + key : key;
    return undefined;
  };
}
