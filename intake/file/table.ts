import { type Columns, findColumns, misshapen } from './columns.ts';
import type { FileContext } from './context.ts';
import { curveReader } from './curve-reader.ts';
import { delimiterFor } from './delimiter.ts';
import type { Mapping } from './mapping.ts';
import { type Outcome, refused, refusedFor } from './outcome.ts';
import { pullReader } from './pull-reader.ts';
import type { RowReader } from './row-reader.ts';
import { type BrokenRow, type Row, rowSplitter } from './rows.ts';

/** Reads the text of a table piece by piece. */
export interface TableReader {
  readonly push: (text: string) => readonly Outcome[];
  readonly end: () => readonly Outcome[];
  /** Nothing more can come of this file: it is no text, or has not the mapping's columns. */
  readonly stopped: () => boolean;
}

const BINARY = 'The file is not text: it holds a zero byte. A workbook must be saved as CSV first.';
const UNREADABLE = 'The row holds characters that are not of this encoding. Choose the encoding of the file.';

/** @param head the first piece of the text; the delimiter is told by it */
export function tableReader(mapping: Mapping, context: FileContext, head: string): TableReader {
  const splitter = rowSplitter(delimiterFor(mapping, withoutLines(head, mapping.linesBefore)));
  let columns: Columns | undefined;
  let reader: RowReader | undefined;
  let hasRows = false;
  let stopped = false;
  let suspect = false;

  const stop = (outcome: Outcome): readonly Outcome[] => {
    stopped = true;
    return [outcome];
  };

  const takeFirst = ({ line, cells }: Row): readonly Outcome[] => {
    const found = findColumns(mapping, cells);
    if (!found.ok) return stop(refusedFor(line, found.failure));
    columns = found.value;
    reader =
      mapping.rows.each === 'pull' ? pullReader(mapping, columns, context) : curveReader(mapping, columns, context);
    return mapping.headerRow ? [] : take({ line, cells });
  };

  const take = (row: Row | BrokenRow): readonly Outcome[] => {
    if (stopped || row.line <= mapping.linesBefore) return [];
    if ('broken' in row)
      return reader ? reader.broken(row.line, 'file', row.broken) : stop(refused(row.line, 'file', row.broken));
    if (isBlank(row.cells)) return [];
    if (!reader || !columns) return takeFirst(row);
    hasRows = true;
    const wrong =
      misshapen(row.cells, columns) ?? (suspect && isUnreadable(row.cells, columns) ? UNREADABLE : undefined);
    return wrong === undefined ? reader.row(row.line, row.cells) : reader.broken(row.line, 'file', wrong);
  };

  return {
    push: (text) => {
      const zero = text.indexOf('\0');
      suspect ||= text.includes('\ufffd');
      const outcomes = splitter.push(zero < 0 ? text : text.slice(0, zero)).flatMap(take);
      if (zero < 0) return outcomes;
      // Whatever else stopped it within the same bytes is a consequence.
      const before = stopped ? outcomes.slice(0, -1) : outcomes;
      return [...before, ...stop(refused(splitter.line(), 'file', BINARY))];
    },
    end: () => {
      if (stopped) return [];
      const outcomes = [...splitter.end().flatMap(take), ...(reader?.end() ?? [])];
      if (stopped || hasRows) return outcomes;
      return [
        ...outcomes,
        refused(splitter.line(), 'file', reader ? 'No row of figures follows the header.' : 'The file is empty.'),
      ];
    },
    stopped: () => stopped,
  };
}

const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');

const isUnreadable = (cells: readonly string[], { index }: Columns): boolean =>
  Object.values(index).some((at) => cells[at]?.includes('\ufffd'));

function withoutLines(text: string, count: number): string {
  let rest = text;
  for (let i = 0; i < count; i++) rest = rest.replace(/^[^\r\n]*(\r\n|\r|\n)/, '');
  return rest;
}
