import type { Ink, Tone } from '@clampwright/core/record';

/**
 * Inks on white paper. Verdicts differ in hue and lightness so that they hold apart without red-green sight,
 * and always come with a shape and a word.
 */
export const INK_COLOURS: Readonly<Record<Ink, string>> = {
  line: '#1c1b19',
  quiet: '#625e57',
  within: '#00664f',
  under: '#1f4e9e',
  over: '#9c1c00',
  doubtful: '#7d5700',
  accepted: '#6a3382',
};

export const TONE_INKS: Readonly<Record<Tone, Ink>> = {
  caution: 'line',
  exception: 'over',
  doubt: 'doubtful',
  notice: 'quiet',
};

/** Fine rules between rows; carries no meaning. */
export const HAIRLINE = '#d8d3ca';

/** Plots on white paper; what must not be is hatched as well. */
export const PLOT_COLOURS = {
  axis: INK_COLOURS.line,
  line: INK_COLOURS.line,
  quiet: INK_COLOURS.quiet,
  grid: HAIRLINE,
  well: '#eeebe5',
  outside: INK_COLOURS.over,
  band: { ground: '#dbe4f1', edge: '#7d96bd' },
  bars: { ground: '#7d96bd', edge: INK_COLOURS.under },
  window: { ground: '#d9eae4', edge: INK_COLOURS.within },
} as const;

/** Parts of one bar, beside each other: plain, hatched, empty. */
export const PART_LOOKS = [
  { ground: PLOT_COLOURS.bars.ground, isHatched: false },
  { ground: '#ffffff', isHatched: true },
  { ground: '#ffffff', isHatched: false },
] as const;
