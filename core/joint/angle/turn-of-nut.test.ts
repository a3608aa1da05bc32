import { describe, expect, it } from 'vitest';
import { en1090Turn, rcscTurn } from './turn-of-nut.ts';

describe('turn-of-nut', () => {
  it.each([
    [3.9, 120, 180, 240],
    [4, 120, 180, 240],
    [4.01, 180, 240, 300],
    [8, 180, 240, 300],
    [8.01, 240, 300, 360],
    [12, 240, 300, 360],
  ])('RCSC turns a bolt of %d diameters by %d°, %d°, %d°', (diameters, none, one, both) => {
    const turns = (['none', 'one', 'both'] as const).map((sloped) => rcscTurn(diameters * 20, 20, sloped)?.angleDeg);
    expect(turns).toEqual([none, one, both]);
  });

  it('is found by test beyond the tables', () => {
    expect(rcscTurn(12.01 * 20, 20, 'none')).toBeUndefined();
    expect(en1090Turn(10.01 * 20, 20)).toBeUndefined();
  });

  it.each([
    [1.99, 60],
    [2, 90],
    [5.99, 90],
    [6, 120],
    [10, 120],
  ])('EN 1090-2 turns parts of %d diameters by %d°', (diameters, angleDeg) => {
    expect(en1090Turn(diameters * 24, 24)?.angleDeg).toBe(angleDeg);
  });

  it('takes inch sizes for what they are in spite of binary fractions', () => {
    expect(rcscTurn(3.5 * 25.4, 0.875 * 25.4, 'none')).toEqual({ angleDeg: 120, row: '≤ 4 d' });
    expect(en1090Turn(0.1 * 3 * 40, 6)?.row).toBe('≥ 2 d, < 6 d');
  });
});
