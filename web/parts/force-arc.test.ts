import { expect, it } from 'vitest';
import { forceArc } from './force-arc.ts';

it('goes as far round as the share says', () => {
  expect(forceArc(10, 0.25)).toBe('M0 -10 A10 10 0 0 1 10.000 -0.000');
  expect(forceArc(10, 0.75)).toBe('M0 -10 A10 10 0 1 1 -10.000 0.000');
});

it('is nothing for nothing, and the whole circle for the whole and more', () => {
  expect(forceArc(10, 0)).toBe('');
  expect(forceArc(10, 1)).toBe(forceArc(10, 1.3));
});
