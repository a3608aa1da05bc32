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
