import type { Outcome } from './outcome.ts';

/** Turns the rows of a file into outcomes, one after the other. */
export interface RowReader {
  readonly row: (line: number, cells: readonly string[]) => readonly Outcome[];
  /** A row that has no readable cells. */
  readonly broken: (line: number, field: string, message: string) => readonly Outcome[];
  /** There are no more rows. */
  readonly end: () => readonly Outcome[];
}
