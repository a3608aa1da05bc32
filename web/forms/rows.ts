/** Rows that can be added, moved and taken out keep their `key`, so that the screen keeps the cursor with them. */
export interface Keyed {
  readonly key: number;
}

/** The next free key of a list of rows. */
export const nextKey = (rows: readonly Keyed[]): number => rows.reduce((most, row) => Math.max(most, row.key), 0) + 1;

/** The list with one row replaced. */
export const withRow = <T extends Keyed>(rows: readonly T[], row: T): readonly T[] =>
  rows.map((other) => (other.key === row.key ? row : other));

/** The list without one row. */
export const withoutRow = <T extends Keyed>(rows: readonly T[], key: number): readonly T[] =>
  rows.filter((row) => row.key !== key);

/** The list with one row moved a place up (-1) or down (1); as it was where there is no such place. */
export function withRowMoved<T extends Keyed>(rows: readonly T[], key: number, by: -1 | 1): readonly T[] {
  const from = rows.findIndex((row) => row.key === key);
  const row = rows[from];
  if (!row || from + by < 0 || from + by >= rows.length) return rows;
  return rows.toSpliced(from, 1).toSpliced(from + by, 0, row);
}
