import { incomingPullSchema } from '@clampwright/core/record';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mapping } from './mapping.ts';
import { briefly, CONTEXT, ENCODED, mapping, outcomesOf, pullsOf, readText } from './testing/read-text.ts';

/** A row as a device would know it, and a layout in which it is written. */
const row = fc.record({
  position: fc.integer({ min: 1, max: 200 }),
  torque: fc.integer({ min: 1, max: 40_000 }).map((tenths) => (tenths / 10).toFixed(1)),
  angle: fc.integer({ min: 0, max: 3600 }).map((tenths) => (tenths / 10).toFixed(1)),
  at: fc.integer({ min: Date.UTC(2020, 0, 1) / 1000, max: Date.UTC(2030, 0, 1) / 1000 }).map((s) => new Date(1000 * s)),
  remark: fc.constantFrom('', 'läuft', 'say "when"', 'a;b,c\td|e', 'two\nlines'),
});
const layout = fc.record({
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  encoding: fc.constantFrom('utf-8', 'utf-16le', 'utf-16be', 'windows-1252'),
  decimalSign: fc.constantFrom('comma', 'point'),
  end: fc.constantFrom('\n', '\r\n', '\r'),
  mark: fc.boolean(),
  headerRow: fc.boolean(),
  quoteAll: fc.boolean(),
  blankLines: fc.boolean(),
  endsWithLine: fc.boolean(),
  told: fc.boolean(),
  order: fc.shuffledSubarray(['position', 'torque', 'angle', 'time', 'remark'], { minLength: 5 }),
  size: fc.integer({ min: 1, max: 90 }),
});
type Of<A> = A extends fc.Arbitrary<infer T> ? T : never;

const NAMES: Record<string, string> = {
  position: 'Größe Nr',
  torque: 'Drehmoment',
  angle: 'Winkel',
  time: 'Zeit',
  remark: 'Bemerkung',
};

function write(rows: readonly Of<typeof row>[], how: Of<typeof layout>): Uint8Array {
  const decimal = (text: string) => (how.decimalSign === 'comma' ? text.replace('.', ',') : text);
  const quoted = (text: string) =>
    how.quoteAll || /[",;\t|\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  const line = (cells: Record<string, string>) =>
    how.order.map((name) => quoted(cells[name] ?? '')).join(how.delimiter);
  const lines = rows.map(({ position, torque, angle, at, remark }) =>
    line({
      position: String(position),
      torque: decimal(torque),
      angle: decimal(angle),
      time: at.toISOString(),
      remark: remark.replace('\n', how.end),
    }),
  );
  const all = how.headerRow ? [line(NAMES), ...lines] : lines;
  const text = all.join(how.blankLines ? how.end + how.end : how.end) + (how.endsWithLine ? how.end : '');
  const mark = how.mark && how.encoding !== 'windows-1252' ? '\ufeff' : '';
  return ENCODED[how.encoding](mark + text);
}

function mappingOf(how: Of<typeof layout>): Mapping {
  const column = (name: string) => (how.headerRow ? (NAMES[name] ?? '') : how.order.indexOf(name) + 1);
  return mapping({
    delimiter: how.told ? how.delimiter : 'auto',
    encoding: how.told ? how.encoding : 'auto',
    decimalSign: how.decimalSign,
    headerRow: how.headerRow,
    position: column('position'),
    torque: column('torque'),
    angle: column('angle'),
    time: { column: column('time'), format: 'iso-8601', zone: 'UTC' },
    ignored: [column('remark')],
  });
}

describe('readPulls', () => {
  it('reads any table back, however it is laid out and cut into pieces', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(row, { minLength: 2, maxLength: 12 }), layout, async (rows, how) => {
        const outcomes = await outcomesOf(write(rows, how), mappingOf(how), CONTEXT, how.size);
        const read = pullsOf(outcomes).map((pull) => [
          pull.position,
          pull.shownTorqueNm,
          pull.shownAngleDeg,
          pull.takenAt,
        ]);
        expect(read).toEqual(
          rows.map(({ position, torque, angle, at }) => [position, Number(torque), Number(angle), at.toISOString()]),
        );
      }),
      { numRuns: 300 },
    );
  });

  it('gives pulls as the record takes them, with what the file wrote kept beside', async () => {
    const text =
      'pos;torque;unit;angle;unit2;when;stage;round;wrench\n7;62,7;ft-lb;0,5;turn;04.05.2026 11:00:00;2;1;KH-0417\n';
    const wrenchId = '01973c3e-6a10-7000-8000-000000000001';
    const outcomes = await readText(
      text,
      {
        decimalSign: 'comma',
        torqueUnit: { column: 'unit' },
        angleUnit: { column: 'unit2' },
        time: { column: 'when', format: 'dd.MM.yyyy HH:mm:ss', zone: 'Europe/Zurich' },
        stage: 'stage',
        round: 'round',
        wrenchSerial: 'wrench',
      },
      { ...CONTEXT, wrenches: new Map([['KH-0417', wrenchId]]) },
    );
    const [pull] = pullsOf(outcomes);
    expect(incomingPullSchema.parse(pull)).toEqual(pull);
    expect(pull).toMatchObject({
      jointRef: 'J1',
      position: 7,
      stage: 2,
      round: 1,
      wrenchId,
      takenAt: '2026-05-04T09:00:00.000Z',
      source: { kind: 'file', detail: 'hub.csv, line 2' },
      shown: { torque: { text: '62,7', unit: 'ft-lb' }, angle: { text: '0,5', unit: 'turn' } },
      shownAngleDeg: 180,
    });
    // 1 lbf·ft = 1.355 817 948 331 4 N·m (NIST SP 811:2008, appendix B).
    expect(pull?.shownTorqueNm).toBeCloseTo(62.7 * 1.3558179483314, 10);
  });

  it('refuses bad lines by number with the reason and takes the others', async () => {
    const text = [
      'pos,torque,angle',
      '1,60.0,30',
      '2,sixty,30',
      '0,60,30',
      '3,61',
      '',
      '4,60,5,30',
      '5,-12,30',
      '6,60,-3',
      '7,99000,3',
      '8,60.5,31',
    ].join('\n');
    expect(briefly(await readText(text))).toEqual([
      [2, 60],
      [3, 'torque', '“sixty” is no figure.'],
      [4, 'position', '“0” is no position.'],
      [5, 'file', expect.stringContaining('cut short')],
      [7, 'file', 'The row has 4 cells, the first one 3. Is the delimiter also the decimal sign?'],
      [8, 'torque', 'The torque is negative: this is a loosening, not a pull that tightens.'],
      [9, 'angle', 'The angle is negative while the torque tightens.'],
      [10, 'torque', expect.stringContaining('more than makes sense')],
      [11, 60.5],
    ]);
  });

  it.each([
    ['joint', 'pos,torque,angle,joint\n1,60,30,J9', { joint: 'joint' }, 'is no joint of this job'],
    ['wrenchSerial', 'pos,torque,angle,w\n1,60,30,KH-9', { wrenchSerial: 'w' }, 'No wrench with the serial number'],
    [
      'time',
      'pos,torque,angle,t\n1,60,30,yesterday',
      { time: { column: 't', format: 'iso-8601', zone: 'UTC' } },
      'is not written as iso-8601',
    ],
    ['torqueUnit', 'pos,torque,angle,u\n1,60,30,mm', { torqueUnit: { column: 'u' } }, 'is no unit of torque'],
    ['stage', 'pos,torque,angle,s\n1,60,30,two', { stage: 's' }, '“two” is no stage'],
    ['round', 'pos,torque,angle,r\n1,60,30,', { round: 'r' }, 'There is no round'],
  ] as const)('refuses a bad %s', async (field, text, changes, why) => {
    const outcomes = await readText(text, changes, { ...CONTEXT, joints: new Map([['hub', 'J1']]) });
    expect(outcomes).toMatchObject([{ kind: 'refused', line: 2, field, message: expect.stringContaining(why) }]);
  });

  it('takes a joint by the name that the job gives it, and its own for a row that names none', async () => {
    const outcomes = await readText(
      'pos,torque,angle,joint\n1,60,30,hub\n2,61,30,',
      { joint: 'joint' },
      { ...CONTEXT, joints: new Map([['hub', 'J3']]) },
    );
    expect(pullsOf(outcomes).map((pull) => pull.jointRef)).toEqual(['J3', 'J1']);
  });

  it('refuses a row without a joint when none was given', async () => {
    expect(await readText('pos,torque,angle\n1,60,30', {}, { ...CONTEXT, jointRef: undefined })).toMatchObject([
      { field: 'joint' },
    ]);
  });

  it('passes over the lines before the table', async () => {
    const text = 'Report of the day\n"Station; 4"\n\npos;torque;angle\n1;60;30\n';
    expect(briefly(await readText(text, { linesBefore: 3 }))).toEqual([[5, 60]]);
  });

  it('takes a negative torque for tightening where the mapping says so', async () => {
    const outcomes = await readText('pos,torque,angle\n1,-60,-30\n2,60,30\n', { signs: 'negative-tightens' });
    expect(outcomes).toMatchObject([
      { kind: 'pull', pull: { shownTorqueNm: 60, shownAngleDeg: 30 } },
      { kind: 'refused', line: 3, message: expect.stringContaining('loosening') },
    ]);
  });

  it.each([
    ['an empty file', '', 'The file is empty.'],
    ['blank lines', '\n\n \n', 'The file is empty.'],
    ['a header alone', 'pos,torque,angle\n', 'No row of figures follows the header.'],
    [
      'a missing column',
      'pos,moment,angle\n1,60,30',
      'No column is named “torque”; there are “pos”, “moment”, “angle”.',
    ],
    ['a name over two columns', 'pos,torque,Torque,angle\n1,60,61,30', 'Two columns are named “torque”.'],
    ['a broken header', '"pos,torque,angle\n1,60,30', 'A quote is opened and not closed again.'],
  ])('refuses %s once', async (_, text, message) => {
    expect(await readText(text)).toMatchObject([{ kind: 'refused', message }]);
  });
});
