import type { Document, TableBlock } from '@clampwright/core/record';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvField, renderCsv } from './csv.ts';

fc.configureGlobal({ seed: 24 });

const table = (
  name: string,
  caption: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
): TableBlock => ({
  kind: 'table',
  name,
  caption,
  columns: columns.map((title) => ({ title, align: 'left' })),
  groups: [{ title: 'G', rows: rows.map((texts) => ({ cells: texts.map((text) => ({ text })), voice: 'plain' })) }],
});

const documentOf = (...blocks: Document['blocks']): Document => ({
  title: 'T',
  subject: 'S',
  language: 'en',
  paper: 'A4',
  datedAt: '2026-03-04T00:00:00.000Z',
  banner: undefined,
  reference: 'R',
  blocks,
});

/** Reads one CSV file by the grammar of RFC 4180, section 2. */
function read(csv: string): readonly (readonly string[])[] {
  const fields = [...csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)];
  const records: string[][] = [[]];
  for (const [, quoted, plain, end] of fields) {
    records.at(-1)!.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'));
    if (end === '\r\n') records.push([]);
  }
  return records.slice(0, -1);
}

describe('renderCsv', () => {
  it('puts caption and group before each row', () => {
    const csv = renderCsv(documentOf(table('a', 'J1', ['Torque N·m', 'Why'], [['92,4', 'said "late"']])));
    expect(csv).toBe(',,Torque N·m,Why\r\nJ1,G,"92,4","said ""late"""\r\n');
  });

  it('says the header once for tables of the same columns, and pads the narrow ones', () => {
    const csv = renderCsv(
      documentOf(
        table('a', 'J1', ['x', 'y'], [['1', '2']]),
        table('a', 'J2', ['x', 'y'], [['3', '4']]),
        table('b', 'C', ['z'], [['5']]),
      ),
    );
    expect(csv).toBe(',,x,y\r\nJ1,G,1,2\r\nJ2,G,3,4\r\n,,z,\r\nC,G,5,\r\n');
  });

  it('takes only the tables of one name', () => {
    expect(renderCsv(documentOf(table('a', 'J1', ['x'], [['1']]), table('b', 'C', ['z'], [['5']])), 'b')).toBe(
      ',,z\r\nC,G,5\r\n',
    );
  });

  it('writes what RFC 4180 reads back, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ unit: 'grapheme' }), { minLength: 2, maxLength: 2 }), { minLength: 1 }),
        (rows) => {
          const records = read(renderCsv(documentOf(table('a', 'J1', ['x', 'y'], rows))));
          const withoutGuard = records
            .slice(1)
            .map((record) => record.slice(2).map((text) => text.replace(/^'(?=[=+\-@\t\r])/, '')));
          expect(withoutGuard).toEqual(rows);
        },
      ),
    );
  });
});

describe('csvField', () => {
  // OWASP, CSV Injection: cells that begin with = + - @ tab or carriage return
  it.each(['=1+2', '+cmd', '-2+3', '@SUM(A1)', '\tx', '\r=1', '=HYPERLINK("http://x")'])(
    'makes %j harmless',
    (text) => {
      expect(csvField(text)).toMatch(/^"'/);
    },
  );

  it.each(['-3.2', '+5', '-1,5', '12\u202f000'])('leaves the number %j a number', (text) => {
    expect(csvField(text).replaceAll('"', '')).toBe(text);
  });
});
