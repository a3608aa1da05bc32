import { incomingPullSchema } from '@clampwright/core/record';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FileContext } from './context.ts';
import { type Mapping, mappingSchema, type WrittenMapping } from './mapping.ts';
import type { Outcome } from './outcome.ts';
import { readPulls } from './read.ts';

const CONTEXT: FileContext = {
  jobId: '01973c3e-6a10-7000-8000-00000000000a',
  jointRef: 'J1',
  readAt: '2026-05-04T09:00:00.000Z',
  fileName: 'hub.csv',
};
const PLAIN: WrittenMapping = {
  name: 'plain',
  decimalSign: 'point',
  headerRow: true,
  position: 'pos',
  torque: 'torque',
  torqueUnit: { unit: 'N·m' },
  angle: 'angle',
};
const mapping = (changes: Partial<WrittenMapping> = {}): Mapping => mappingSchema.parse({ ...PLAIN, ...changes });

async function* inPieces(bytes: Uint8Array, size = 7): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}
async function outcomesOf(
  bytes: Uint8Array,
  how: Mapping,
  context = CONTEXT,
  size?: number,
): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = [];
  for await (const outcome of readPulls(inPieces(bytes, size), how, context)) outcomes.push(outcome);
  return outcomes;
}
const readText = (text: string, changes?: Partial<WrittenMapping>, context?: FileContext) =>
  outcomesOf(new TextEncoder().encode(text), mapping(changes), context);
const pullsOf = (outcomes: readonly Outcome[]) =>
  outcomes.flatMap((outcome) => (outcome.kind === 'pull' ? [outcome.pull] : []));
const briefly = (outcomes: readonly Outcome[]) =>
  outcomes.map((outcome) =>
    outcome.kind === 'pull'
      ? [outcome.line, outcome.pull.shownTorqueNm]
      : [outcome.line, outcome.field, outcome.message],
  );

const ENCODED = {
  'utf-8': (text: string) => new TextEncoder().encode(text),
  'utf-16le': (text: string) => Uint8Array.from(Buffer.from(text, 'utf16le')),
  'utf-16be': (text: string) => Uint8Array.from(Buffer.from(text, 'utf16le').swap16()),
  // All letters used here stand alike in ISO 8859-1 and Windows-1252.
  'windows-1252': (text: string) => Uint8Array.from(Buffer.from(text, 'latin1')),
} as const;

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

describe('files that are not whole', () => {
  it('tells an unclosed quote at the end by its line, after all that came before', async () => {
    expect(briefly(await readText('pos,torque,angle\n1,60,30\n2,61,"30'))).toEqual([
      [2, 60],
      [3, 'file', 'A quote is opened and not closed again.'],
    ]);
  });

  it('tells a last line that is cut short', async () => {
    expect(briefly(await readText('pos,torque,angle\n1,60,30\n2,6'))).toEqual([
      [2, 60],
      [3, 'file', expect.stringContaining('cut short')],
    ]);
  });

  it('stops at a zero byte and keeps the lines before it', async () => {
    expect(briefly(await readText('pos,torque,angle\n1,60,30\n2,6\0\0\0\n3,60,30\n'))).toEqual([
      [2, 60],
      [3, 'file', expect.stringContaining('not text')],
    ]);
  });

  it('refuses a workbook, a picture and other binary files once', async () => {
    const heads = [
      [0x50, 0x4b, 0x03, 0x04, 0x14, 0x00, 0x06, 0x00],
      [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00, 0x00, 0x00, 0x0d],
      [0x1f, 0x8b, 0x08, 0x00, 0x00, 0x00, 0x00, 0x00],
    ];
    for (const head of heads) {
      const outcomes = await outcomesOf(Uint8Array.from([...head, ...Array(500).fill(0x81)]), mapping());
      expect(outcomes).toHaveLength(1);
      expect(outcomes).toMatchObject([{ kind: 'refused', field: 'file' }]);
    }
  });

  it('answers to any bytes with refusals and never with an exception', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
        const outcomes = await outcomesOf(bytes, mapping({ headerRow: false, position: 1, torque: 2, angle: 3 }));
        expect(outcomes.length).toBeGreaterThan(0);
      }),
    );
  });

  it('refuses a row in the wrong encoding, if a column that counts is hit', async () => {
    const bytes = ENCODED['windows-1252']('pos,torque,angle,remark\n1,60,30,größer\n2,60°,30,ok\n');
    expect(briefly(await outcomesOf(bytes, mapping({ encoding: 'utf-8' })))).toEqual([
      [2, 60],
      [3, 'file', expect.stringContaining('encoding')],
    ]);
  });

  it.each(['utf-8', 'windows-1252'] as const)(
    'tells %s by its first letter, however late it comes',
    async (encoding) => {
      const rows = Array.from({ length: 20_000 }, (_, i) => `1,60,30,${i === 15_000 ? 'größer' : 'plain'}`);
      const bytes = ENCODED[encoding](['pos,torque,angle,w', ...rows].join('\n'));
      const outcomes = await outcomesOf(
        bytes,
        mapping({ wrenchSerial: 'w' }),
        { ...CONTEXT, wrenches: new Map([['größer', '01973c3e-6a10-7000-8000-000000000001']]) },
        5000,
      );
      expect(pullsOf(outcomes)).toHaveLength(1);
    },
  );

  it('lets the mark of the file speak before the mapping', async () => {
    const bytes = ENCODED['utf-16le']('\ufeffpos,torque,angle\n1,60,30\n');
    expect(briefly(await outcomesOf(bytes, mapping({ encoding: 'windows-1252' })))).toEqual([[2, 60]]);
  });
});

describe('identities of pulls from a file', () => {
  const TIMED: Partial<WrittenMapping> = { time: { column: 'time', format: 'iso-8601', zone: 'UTC' } };
  const file =
    'pos,torque,angle,time\n1,60,30,2026-05-04T09:00:00Z\n2,61,30,2026-05-04T09:01:00Z\n1,60,30,2026-05-04T09:02:00Z\n';
  const idsOf = async (text: string, changes?: Partial<WrittenMapping>, context?: FileContext) =>
    pullsOf(await readText(text, changes, context)).map((pull) => pull.id);

  it('are the same when the same file is read again', async () => {
    expect(await idsOf(file, TIMED)).toEqual(await idsOf(file, TIMED));
    expect(await idsOf(file)).toEqual(await idsOf(file));
  });

  it('differ from row to row and from job to job', async () => {
    const ids = [
      ...(await idsOf(file, TIMED)),
      ...(await idsOf(file, TIMED, { ...CONTEXT, jobId: '01973c3e-6a10-7000-8000-00000000000b' })),
    ];
    expect(new Set(ids).size).toBe(6);
  });

  it('stay the same when lines are put before or between, as long as rows have their time', async () => {
    const longer = file.replace('\n1,60', '\n\n9,50,30,2026-05-04T08:00:00Z\n1,60');
    expect(await idsOf(longer, TIMED)).toEqual(expect.arrayContaining(await idsOf(file, TIMED)));
  });

  it('are the same for identical rows with a time, and differ by line without one', async () => {
    const twice = 'pos,torque,angle,time\n1,60,30,2026-05-04T09:00:00Z\n1,60,30,2026-05-04T09:00:00Z\n';
    expect(new Set(await idsOf(twice, TIMED)).size).toBe(1);
    expect(new Set(await idsOf(twice)).size).toBe(2);
  });

  it('are UUIDs of version 8 and the variant of RFC 9562', async () => {
    for (const id of await idsOf(file))
      expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });
});

describe('curves', () => {
  const CURVES: Partial<WrittenMapping> = {
    position: 'pos',
    rows: { each: 'sample', curveBy: 'run' },
    time: { column: 't', format: 'elapsed-seconds', start: '2026-05-04T09:00:00.000Z' },
  };
  const HEAD = 'run,pos,t,torque,angle';
  const curve = (run: string, position: number, torques: readonly (number | string)[]) =>
    torques.map((torque, i) => `${run},${position},${i / 10},${torque},${5 * i}`);
  const read = (lines: readonly string[], changes: Partial<WrittenMapping> = {}) =>
    readText([HEAD, ...lines].join('\n'), { ...CURVES, ...changes });

  it('become a pull with the trace, its peak torque and its furthest angle', async () => {
    const outcomes = await read([...curve('a', 1, [0, 20, 61.5, 60, 0]), ...curve('b', 2, [0, 62])]);
    expect(outcomes).toMatchObject([
      {
        line: 2,
        pull: {
          position: 1,
          shownTorqueNm: 61.5,
          shownAngleDeg: 20,
          shown: { torque: { text: '61.5', unit: 'N·m' }, angle: { text: '20', unit: 'deg' } },
          takenAt: '2026-05-04T09:00:00.400Z',
          trace: { timeS: [0, 0.1, 0.2, 0.3, 0.4], torqueNm: [0, 20, 61.5, 60, 0], angleDeg: [0, 5, 10, 15, 20] },
        },
      },
      { line: 7, pull: { position: 2, shownTorqueNm: 62 } },
    ]);
  });

  it('convert their units sample by sample', async () => {
    const [outcome] = await read(curve('a', 1, [0, 6000]), {
      torqueUnit: { unit: 'cN·m' },
      angleUnit: { unit: 'turn' },
    });
    expect(outcome).toMatchObject({
      pull: { shownTorqueNm: 60, shownAngleDeg: 1800, trace: { torqueNm: [0, 60], angleDeg: [0, 1800] } },
    });
  });

  it('are spoiled by one bad row, told by its line, and the next one is read', async () => {
    const outcomes = await read([...curve('a', 1, [0, 'x', 60]), ...curve('b', 2, [0, 62])]);
    expect(briefly(outcomes)).toEqual([
      [3, 'torque', '“x” is no figure.'],
      [5, 62],
    ]);
  });

  it.each([
    ['a single row', curve('a', 1, [60]), 'The curve has a single row.'],
    [
      'a loosening',
      curve('a', 1, [0, -60, 20]),
      'The torque is negative: this is a loosening, not a pull that tightens.',
    ],
    ['a time that goes back', ['a,1,0.2,0,0', 'a,1,0.1,60,5'], 'The time goes back within the curve.'],
    ['a short row', ['a,1,0.1,0,0', 'a,1,0.2'], 'The row has 3 cells; it is cut short, as 5 are needed.'],
    ['an absurd peak', curve('a', 1, [0, 99_000]), expect.stringContaining('more than makes sense')],
  ])('refuse %s', async (_, lines, message) => {
    expect(await read(lines)).toMatchObject([{ kind: 'refused', message }]);
  });

  it('have the same identity when read again, and another one when a sample differs', async () => {
    const ids = async (lines: readonly string[]) => pullsOf(await read(lines)).map((pull) => pull.id);
    const first = await ids(curve('a', 1, [0, 60, 59]));
    expect(await ids(curve('a', 1, [0, 60, 59]))).toEqual(first);
    expect(await ids(curve('a', 1, [0, 60, 58]))).not.toEqual(first);
    expect(await ids(curve('b', 1, [0, 60, 59]))).not.toEqual(first);
  });
});
