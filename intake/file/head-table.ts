import { invalid, ok, type Result } from '@clampwright/core/failure';
import { readDecimal } from './decimal.ts';
import { decoderOf } from './decode.ts';
import { type GuessedDelimiter, guessDelimiter } from './delimiter.ts';
import { type GuessedEncoding, guessEncoding } from './encoding.ts';
import { headRows, usualWidth } from './head-rows.ts';
import type { Row } from './rows.ts';

/** The beginning of a file as a table. */
export interface HeadTable {
  readonly encoding: GuessedEncoding;
  readonly delimiter: GuessedDelimiter;
  readonly linesBefore: number;
  /** Cells of the header row; undefined: there is none. */
  readonly header: readonly string[] | undefined;
  readonly rows: readonly Row[];
}

const MOST_ROWS = 200;

/** Cuts the first bytes of a file into a table; refused when they are no text, or hold no row. */
export function headTable(head: Uint8Array): Result<HeadTable> {
  const encoding = guessEncoding(head);
  const text = decoderOf(encoding.encoding).push(head.subarray(encoding.markBytes));
  if (text.includes('\0'))
    return invalid(
      'file',
      'The file is not text: it holds a zero byte. A workbook must be saved as CSV first.',
      'a text file',
    );
  const delimiter = guessDelimiter(text);
  const all = headRows(text, delimiter.delimiter);
  const { width } = usualWidth(all);
  const first = all.findIndex((row) => row.cells.length === width);
  const [top, ...rest] = all.slice(Math.max(0, first), MOST_ROWS);
  if (!top) return invalid('file', 'The file has no row.', 'a table');
  const isHeader = !top.cells.some(isFigure);
  return ok({
    encoding,
    delimiter,
    linesBefore: top.line - 1,
    header: isHeader ? top.cells.map((cell) => cell.trim()) : undefined,
    rows: isHeader ? rest : [top, ...rest],
  });
}

export const isFigure = (cell: string): boolean =>
  readDecimal(cell, 'comma', '').ok || readDecimal(cell, 'point', '').ok;
