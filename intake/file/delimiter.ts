import { headRows, usualWidth } from './head-rows.ts';
import type { DELIMITERS, Mapping } from './mapping.ts';
import type { Row } from './rows.ts';

export type Delimiter = (typeof DELIMITERS)[number];

/** Rows that are looked at. */
const ROWS = 50;
const LEAST_EVEN = 0.6;

export interface GuessedDelimiter {
  readonly delimiter: Delimiter;
  /** False when none cuts the rows evenly. */
  readonly sure: boolean;
}

/**
 * The delimiter that cuts the first rows evenly into more than one cell, and no quoted cell in two. Where several do,
 * the sign that is rarer within figures wins: tab, semicolon, bar, and only then the comma, which may be a decimal sign.
 *
 * @param text beginning of the file
 */
export function guessDelimiter(text: string): GuessedDelimiter {
  const order: readonly Delimiter[] = ['\t', ';', '|', ','];
  const even = order.flatMap((delimiter) => {
    const rows = headRows(text, delimiter).slice(0, ROWS);
    return isEven(rows) ? [{ delimiter, torn: tornCells(rows) }] : [];
  });
  const [first] = even.toSorted((a, b) => a.torn - b.torn);
  return { delimiter: first?.delimiter ?? ',', sure: first !== undefined };
}

/** Whether most of the first rows have the same number of cells, more than one; a title above the table may differ. */
function isEven(rows: readonly Row[]): boolean {
  const { width, count } = usualWidth(rows);
  return width > 1 && count >= LEAST_EVEN * rows.length;
}

/** Cells with half a pair of quotes: a wrong delimiter has cut through them. */
const tornCells = (rows: readonly Row[]): number =>
  rows.flatMap(({ cells }) => cells.filter((cell) => cell.split('"').length % 2 === 0)).length;

/** The mapping's delimiter, or the guessed one. */
export function delimiterFor(mapping: Mapping, text: string): Delimiter {
  return mapping.delimiter === 'auto' ? guessDelimiter(text).delimiter : mapping.delimiter;
}
