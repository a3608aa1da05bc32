import { describe, expect, it } from 'vitest';
import { INK_COLOURS } from './palette.ts';

/** WCAG 2.2, relative luminance. */
function luminance(colour: string): number {
  const linear = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * linear[0]! + 0.7152 * linear[1]! + 0.0722 * linear[2]!;
}

describe('the inks', () => {
  // WCAG 2.2, 1.4.3 Contrast (Minimum): 4.5 to 1 for text
  it.each(Object.entries(INK_COLOURS))('%s can be read on white paper', (_, colour) => {
    expect(1.05 / (luminance(colour) + 0.05)).toBeGreaterThan(4.5);
  });
});
