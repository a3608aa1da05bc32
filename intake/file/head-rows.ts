import { type Row, rowSplitter } from './rows.ts';

/** Rows of a file's beginning that are not blank; its last line is left out, as it may be cut, unless it is the only one. */
export function headRows(text: string, delimiter: string): readonly Row[] {
  const splitter = rowSplitter(delimiter);
  const whole = splitter.push(text);
  const rows = whole.length > 0 ? whole : splitter.end();
  return rows.flatMap((row) => ('cells' in row && row.cells.some((cell) => cell.trim() !== '') ? [row] : []));
}

/** The number of cells that most rows have, and how many have it. */
export function usualWidth(rows: readonly Row[]): { readonly width: number; readonly count: number } {
  const counts = new Map<number, number>();
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a);
  return { width: most?.[0] ?? 0, count: most?.[1] ?? 0 };
}
