import type { Language } from '@clampwright/core/quantity';
import { type Block, type Cell, type Document, plotTable, type TableBlock } from '@clampwright/core/record';

/** A leading character that a spreadsheet takes for the beginning of a formula. */
const FORMULA = /^[=+\-@\t\r]/;
const PLAIN_NUMBER = /^[+-]?\d[\d.,\u00a0\u202f]*$/;
const NEEDS_QUOTES = /[",\r\n]/;

/** A field as RFC 4180 writes it; what a spreadsheet would run as a formula gets an apostrophe in front. */
export function csvField(text: string): string {
  const harmless = FORMULA.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(harmless) || harmless !== text ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/**
 * The tables of a document, and the figures of its plots, as one CSV file (RFC 4180: comma, CRLF, UTF-8). The caption of the table and the
 * title of the group stand in front of each row; a header comes wherever the columns change. Every line has
 * the same number of fields.
 *
 * @param name only the tables of this name; left out: all
 */
export function renderCsv(document: Document, name?: string): string {
  const tables = document.blocks
    .flatMap((block) => tablesOf(block, document.language))
    .filter((table) => name === undefined || table.name === name);
  const width = Math.max(0, ...tables.map(({ columns }) => columns.length + 2));
  const lines = tables.flatMap((table, index) => [...header(table, tables[index - 1]), ...rows(table)]);
  return lines.map((fields) => `${padded(fields, width).map(csvField).join(',')}\r\n`).join('');
}

function tablesOf(block: Block, language: Language): readonly TableBlock[] {
  if (block.kind === 'plot') return [plotTable(block, language)];
  return block.kind === 'table' ? [block] : [];
}

function header(table: TableBlock, before: TableBlock | undefined): readonly (readonly string[])[] {
  const titles = table.columns.map(({ title }) => title);
  const same = before?.columns.map(({ title }) => title).join('\n') === titles.join('\n');
  return same ? [] : [['', '', ...titles]];
}

const rows = (table: TableBlock): readonly (readonly string[])[] =>
  table.groups.flatMap((group) => group.rows.map((row) => [table.caption, group.title, ...row.cells.map(textOf)]));

const textOf = (cell: Cell): string => cell.text;

const padded = (fields: readonly string[], width: number): readonly string[] => [
  ...fields,
  ...Array.from({ length: width - fields.length }, () => ''),
];
