import * as fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { type BrokenRow, LONGEST_ROW, type Row, rowSplitter } from './rows.ts';

function split(pieces: readonly string[], delimiter = ','): readonly (Row | BrokenRow)[] {
  const splitter = rowSplitter(delimiter);
  return [...pieces.flatMap((piece) => splitter.push(piece)), ...splitter.end()];
}
const cellsOf = (rows: readonly (Row | BrokenRow)[]) => rows.map((row) => ('cells' in row ? row.cells : row.broken));
const linesOf = (rows: readonly (Row | BrokenRow)[]) => rows.map((row) => row.line);

/** Cuts a text at any places. */
const pieces = (text: string) =>
  fc.array(fc.nat(text.length), { maxLength: 12 }).map((places) => {
    const sorted = [0, ...places.toSorted((a, b) => a - b), text.length];
    return sorted.slice(1).map((to, i) => text.slice(sorted[i], to));
  });
const cell = fc.string({ unit: fc.constantFrom('a', '1', ',', ';', '"', '\n', ' ', 'ü', '.'), maxLength: 6 });
const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 8 });

describe('rowSplitter', () => {
  it.each([',', ';', '\t', '|'])('reads what papaparse writes with “%s”, in any pieces', (delimiter) => {
    fc.assert(
      fc.property(
        table.chain((rows) => fc.tuple(fc.constant(rows), pieces(Papa.unparse(rows, { delimiter, newline: '\n' })))),
        ([rows, texts]) => {
          expect(cellsOf(split(texts, delimiter))).toEqual(rows);
        },
      ),
    );
  });

  it('reads what papaparse reads of any text whose quotes are sound', () => {
    const text = fc.string({ unit: fc.constantFrom('a', '1', ',', '"', '\n'), maxLength: 40 });
    fc.assert(
      fc.property(text, (csv) => {
        const theirs = Papa.parse<string[]>(csv, { delimiter: ',', newline: '\n' });
        fc.pre(theirs.errors.length === 0 && csv !== '' && !csv.endsWith('\n'));
        const ours = split([csv]);
        fc.pre(ours.every((row) => 'cells' in row));
        expect(cellsOf(ours)).toEqual(theirs.data);
      }),
    );
  });

  it.each(['\n', '\r\n', '\r'])('counts lines with %j as their end, also within quotes', (end) => {
    const text = ['a,b', '"two', 'lines",c', '', 'd,e'].join(end);
    fc.assert(
      fc.property(pieces(text), (texts) => {
        expect(linesOf(split(texts))).toEqual([1, 2, 4, 5]);
      }),
    );
  });

  it('takes a quote within a cell as it stands', () => {
    expect(cellsOf(split(['1/2" bolt,5"']))).toEqual([['1/2" bolt', '5"']]);
  });

  it('tells a quote that is never closed by its line and reads the lines after it', () => {
    const rows = split(['a,b\n1,"2\n3,4\n5,6\n']);
    expect(rows).toEqual([
      { line: 1, cells: ['a', 'b'] },
      { line: 2, broken: 'A quote is opened and not closed again.' },
      { line: 3, cells: ['3', '4'] },
      { line: 4, cells: ['5', '6'] },
    ]);
  });

  it('tells text after a closing quote by its line and reads the lines after it', () => {
    expect(split(['"a"b,c\n1,2'])).toEqual([
      { line: 1, broken: 'Something stands between a closing quote and the next delimiter.' },
      { line: 2, cells: ['1', '2'] },
    ]);
  });

  it('holds no more than the longest row of a quote that never closes', () => {
    const splitter = rowSplitter(',');
    const rows = [...splitter.push('"open\n')];
    for (let i = 0; i < 100; i++) rows.push(...splitter.push(`${i},${'x'.repeat(10_000)}\n`));
    rows.push(...splitter.end());
    expect(rows[0]).toMatchObject({ line: 1, broken: expect.stringContaining('quote') });
    expect(rows).toHaveLength(101);
    expect(linesOf(rows)).toEqual(Array.from({ length: 101 }, (_, i) => i + 1));
  });

  it('passes over a line without an end and reads the next one', () => {
    const splitter = rowSplitter(',');
    const rows = Array.from({ length: 20 }, () => splitter.push('x'.repeat(LONGEST_ROW))).flat();
    rows.push(...splitter.push('\n1,2\n'));
    expect(rows).toEqual([
      { line: 1, broken: expect.stringContaining('longer than') },
      { line: 2, cells: ['1', '2'] },
    ]);
  });
});
