import { describe, expect, it } from 'vitest';
import { RandomWords, randomWords } from './random-words.ts';

describe('random words', () => {
  it('are those of the reference program of xoshiro128++', () => {
    // First ten words from the state 1 2 3 4, as the tests of public implementations print them (read).
    const words = new RandomWords([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, () => words.next() >>> 0)).toEqual([
      641, 1573767, 3222811527, 3517856514, 836907274, 4247214768, 3867114732, 1355841295, 495546011, 621204420,
    ]);
  });

  it('are the same for the same seed and others for the next', () => {
    const first = (seed: number) => randomWords(seed).next();
    expect(first(7)).toBe(first(7));
    expect(new Set([0, 1, 2, 3, 4_294_967_295].map(first)).size).toBe(5);
  });

  it('make fractions inside of 0 and 1', () => {
    const words = randomWords(5);
    for (let i = 0; i < 10_000; i++) {
      const fraction = words.fraction();
      const fine = words.fineFraction();
      expect(fraction > 0 && fraction < 1 && fine >= 0 && fine < 1).toBe(true);
    }
  });
});
