import { headRows, usualWidth } from './head-rows.ts';
import { DELIMITERS, type Mapping } from './mapping.ts';

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
 * The delimiter that cuts the first rows evenly into more than one cell. Where several do, the sign that is rarer
 * within figures wins: tab, semicolon, bar, and only then the comma, which may be a decimal sign.
 *
 * @param text beginning of the file
 */
export function guessDelimiter(text: string): GuessedDelimiter {
  const order: readonly Delimiter[] = ['\t', ';', '|', ','];
  const [first] = order.filter((delimiter) => cutsEvenly(text, delimiter));
  return { delimiter: first ?? ',', sure: first !== undefined };
}

/** Whether most of the first rows have the same number of cells, more than one; a title above the table may differ. */
function cutsEvenly(text: string, delimiter: Delimiter): boolean {
  const rows = headRows(text, delimiter).slice(0, ROWS);
  const { width, count } = usualWidth(rows);
  return width > 1 && count >= LEAST_EVEN * rows.length;
}

/** The mapping's delimiter, or the guessed one. */
export function delimiterFor(mapping: Mapping, text: string): Delimiter {
  return mapping.delimiter === 'auto' ? guessDelimiter(text).delimiter : mapping.delimiter;
}
