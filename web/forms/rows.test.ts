import { expect, it } from 'vitest';
import { nextKey, withoutRow, withRow, withRowMoved } from './rows.ts';

const ROWS = [
  { key: 3, text: 'a' },
  { key: 1, text: 'b' },
  { key: 7, text: 'c' },
] as const;
const textsOf = (rows: readonly { readonly text: string }[]) => rows.map((row) => row.text).join('');

it('gives a key that no row has', () => {
  expect(nextKey(ROWS)).toBe(8);
  expect(nextKey([])).toBe(1);
});

it('replaces and removes the row that is meant, wherever it stands', () => {
  expect(textsOf(withRow<{ key: number; text: string }>(ROWS, { key: 1, text: 'B' }))).toBe('aBc');
  expect(textsOf(withoutRow(ROWS, 1))).toBe('ac');
});

it('moves a row by one place and stops at the ends', () => {
  expect(textsOf(withRowMoved(ROWS, 1, -1))).toBe('bac');
  expect(textsOf(withRowMoved(ROWS, 1, 1))).toBe('acb');
  expect(textsOf(withRowMoved(ROWS, 3, -1))).toBe('abc');
  expect(textsOf(withRowMoved(ROWS, 7, 1))).toBe('abc');
});
