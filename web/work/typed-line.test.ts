import { describe, expect, it } from 'vitest';
import { typedLines } from './typed-line.ts';

function typed(text: string, gapMs: number): readonly (string | undefined)[] {
  const take = typedLines();
  return Array.from(`${text}\n`, (key, i) => take({ key: key === '\n' ? 'Enter' : key, atMs: i * gapMs }));
}

describe('a line typed by a wrench', () => {
  it('is whole with its Enter', () => {
    expect(typed('60,5;35', 5).at(-1)).toBe('60,5;35');
  });

  it('is told from what a hand types', () => {
    expect(typed('60,5;35', 120).at(-1)).toBeUndefined();
  });

  it('is not mixed with what a hand typed before', () => {
    const take = typedLines();
    take({ key: 'x', atMs: 0 });
    const keys = Array.from('60;35', (key, i) => take({ key, atMs: 1000 + 5 * i }));
    expect(keys.every((line) => line === undefined)).toBe(true);
    take({ key: 'Shift', atMs: 1024 });
    expect(take({ key: 'Enter', atMs: 1025 })).toBe('60;35');
  });

  it('is no line when it is empty or a single Enter', () => {
    expect(typed('', 5)).toEqual([undefined]);
  });
});
