/** One row of a table as it stands in the file. */
export interface Row {
  /** Line of the file on which it begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** A row that cannot be cut into cells. */
export interface BrokenRow {
  readonly line: number;
  readonly broken: string;
}

export interface RowSplitter {
  /** Takes the next piece of text; gives the rows that are whole by now. */
  readonly push: (text: string) => readonly (Row | BrokenRow)[];
  /** The text is at its end; gives what is left. */
  readonly end: () => readonly (Row | BrokenRow)[];
  /** Line that the next row begins on. */
  readonly line: () => number;
}

/** Longest row, characters, also one with line ends within quotes: bounds what is held back. */
export const LONGEST_ROW = 65_536;

const UNCLOSED = 'A quote is opened and not closed again.';
const STRAY = 'Something stands between a closing quote and the next delimiter.';
const TOO_LONG = `The line is longer than ${LONGEST_ROW} characters; this is no table of pulls.`;

type Cut = { readonly row: Row | BrokenRow; readonly next: number; readonly lines: number };

/**
 * Cuts text into rows and cells piece by piece (RFC 4180, any delimiter; line ends LF, CR LF or CR).
 *
 * A row with a broken quote is told by its line, and reading goes on with the line after it: an unclosed quote
 * swallows no good lines. Lines without a quote take a fast way.
 */
export function rowSplitter(delimiter: string): RowSplitter {
  let rest = '';
  let line = 1;
  let skipping = false;

  const take = (text: string, atEnd: boolean): (Row | BrokenRow)[] => {
    const rows: (Row | BrokenRow)[] = [];
    let at = 0;
    while (at < text.length) {
      const cut = cutRow(text, at, delimiter, line, atEnd);
      if (!cut) break;
      if (!skipping) rows.push(cut.row);
      skipping = false;
      at = cut.next;
      line += cut.lines;
    }
    rest = text.slice(at);
    if (rest.length > LONGEST_ROW) {
      if (!skipping) rows.push({ line, broken: TOO_LONG });
      skipping = true;
      rest = '';
    }
    return rows;
  };

  return {
    push: (text) => {
      // A CR at the very end may have its LF in the next piece.
      const held = rest + text;
      const cut = held.endsWith('\r') ? held.length - 1 : held.length;
      const rows = take(unified(held.slice(0, cut)), false);
      rest += held.slice(cut);
      return rows;
    },
    end: () => take(unified(rest), true),
    line: () => line,
  };
}

const unified = (text: string): string => (text.includes('\r') ? text.replaceAll(/\r\n?/g, '\n') : text);

/** The row that begins at `at`; undefined while its end has not come. */
function cutRow(text: string, at: number, delimiter: string, line: number, atEnd: boolean): Cut | undefined {
  const found = text.indexOf('\n', at);
  if (found < 0 && !atEnd) return undefined;
  const end = found < 0 ? text.length : found;
  const plain = text.slice(at, end);
  if (!plain.includes('"')) return { row: { line, cells: plain.split(delimiter) }, next: end + 1, lines: 1 };
  return cutQuotedRow(text, at, delimiter, line, atEnd, end + 1);
}

function cutQuotedRow(
  text: string,
  from: number,
  delimiter: string,
  line: number,
  atEnd: boolean,
  nextLine: number,
): Cut | undefined {
  const broken = (what: string): Cut => ({ row: { line, broken: what }, next: nextLine, lines: 1 });
  const cells: string[] = [];
  let lines = 1;
  let at = from;
  for (;;) {
    const quoted = text[at] === '"';
    const end = quoted ? closingQuote(text, at) : endOfPlain(text, at, delimiter);
    if (end === undefined) return atEnd || text.length - from > LONGEST_ROW ? broken(UNCLOSED) : undefined;
    const cell = text.slice(quoted ? at + 1 : at, end);
    cells.push(quoted && cell.includes('"') ? cell.replaceAll('""', '"') : cell);
    if (quoted && cell.includes('\n')) lines += cell.split('\n').length - 1;
    at = quoted ? end + 1 : end;
    if (at >= text.length && !atEnd) return undefined;
    if (at >= text.length || text[at] === '\n') return { row: { line, cells }, next: at + 1, lines };
    if (text[at] !== delimiter) return broken(STRAY);
    at += 1;
  }
}

/** Index of the quote that closes the one at `from`; doubled quotes stand for one. */
function closingQuote(text: string, from: number): number | undefined {
  for (let at = text.indexOf('"', from + 1); at >= 0; at = text.indexOf('"', at + 2)) {
    if (text[at + 1] !== '"') return at;
  }
  return undefined;
}

function endOfPlain(text: string, from: number, delimiter: string): number {
  const [stop, code] = [delimiter.charCodeAt(0), '\n'.charCodeAt(0)];
  let at = from;
  while (at < text.length && text.charCodeAt(at) !== stop && text.charCodeAt(at) !== code) at++;
  return at;
}
