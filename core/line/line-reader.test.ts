import { describe, expect, it } from 'vitest';
import { type LineDescription, lineDescriptionSchema } from './description.ts';
import { type LineEvent, lineReader } from './line-reader.ts';

type Written = Partial<Omit<LineDescription, 'name'>>;
const describeLines = (more: Written): LineDescription =>
  lineDescriptionSchema.parse({
    name: 'Bench wrench',
    delimiter: ';',
    decimalSign: 'comma',
    torqueUnit: 'N·m',
    lines: [RESULT],
    endOfPull: { by: 'result' },
    ...more,
  });

const RESULT = {
  says: 'result',
  fields: [
    { means: 'mark', text: 'T' },
    { means: 'number' },
    { means: 'torque' },
    { means: 'torque-unit' },
    { means: 'angle' },
    { means: 'serial' },
  ],
} satisfies LineDescription['lines'][number];
const STREAM = {
  delimiter: ',',
  decimalSign: 'point',
  samplesPerSecond: 100,
  lines: [{ says: 'sample', fields: [{ means: 'torque' }, { means: 'angle' }] }],
} satisfies Written;

const read = (description: LineDescription, text: string): readonly LineEvent[] => lineReader(description).take(text);
const pullsIn = (events: readonly LineEvent[]) =>
  events.flatMap((event) => (event.kind === 'pull' ? [event.pull] : []));
const samples = (torques: readonly number[]) => torques.map((torque, i) => `${torque},${5 * i}\n`).join('');

describe('a line that tells results', () => {
  it('is read with its own decimal sign and unit', () => {
    // 50 lbf·ft = 67.790897 N·m (NIST SP 811:2008, appendix B.8: 1 lbf·ft = 1.355818 N·m)
    expect(pullsIn(read(describeLines({}), 'T;7;50,0;ft-lb;35,5;KH-0417\r\n'))).toMatchObject([
      {
        torque: { text: '50,0', unit: 'lbf·ft', value: expect.closeTo(67.790897, 4) },
        angle: { text: '35,5', unit: 'deg', value: 35.5 },
        from: ['KH-0417'],
      },
    ]);
  });

  it('sent again at once is the same pull, the next number another one', () => {
    const again = 'T;7;50,0;Nm;35,5;KH\nT;7;50,0;Nm;35,5;KH\nT;8;50,0;Nm;35,5;KH\n';
    expect(pullsIn(read(describeLines({}), again))).toHaveLength(2);
  });

  it('has the same identity whenever it is sent, where it tells the time', () => {
    const timed = describeLines({
      lines: [{ says: 'result', fields: [{ means: 'torque' }, { means: 'time', written: 'iso-8601' }] }],
    });
    const line = '60,5;2026-05-04T11:01:33+02:00\n';
    const [first, second] = [pullsIn(read(timed, line)), pullsIn(read(timed, line))];
    expect(first).toMatchObject([{ takenAt: '2026-05-04T09:01:33.000Z', id: expect.any(String) }]);
    expect(first).toEqual(second);
  });

  it.each([
    ['T;7;50.0;Nm;35;KH', 'figure', 3],
    ['T;7;50,0;bar;35;KH', 'unit', 4],
    ['T;x;50,0;Nm;35;KH', 'count', 2],
    ['T;7;50,0;Nm;35', 'no-such-line', undefined],
    ['R;7;50,0;Nm;35;KH', 'no-such-line', undefined],
  ])('is refused as a whole: %s', (line, code, cell) => {
    expect(read(describeLines({}), `${line}\n`)).toMatchObject([
      { kind: 'unreadable', fault: { code, ...(cell ? { cell } : {}) }, raw: line },
    ]);
  });

  // Exclusive or and sum modulo 256 over 'T;5,5': 0x54^0x3B^0x35^0x2C^0x35 = 0x43, 0x54+0x3B+0x35+0x2C+0x35 = 0x125 (worked out by hand)
  it.each([
    ['xor-8', '43'],
    ['sum-8', '25'],
  ] as const)('is held to its check: %s', (method, check) => {
    const checked = describeLines({
      lines: [
        { says: 'result', fields: [{ means: 'mark', text: 'T' }, { means: 'torque' }, { means: 'check', method }] },
      ],
    });
    expect(pullsIn(read(checked, `T;5,5;${check}\n`))).toHaveLength(1);
    expect(read(checked, 'T;5,5;00\n')).toMatchObject([{ fault: { code: 'check', cell: 3 } }]);
  });
});

describe('a stream of samples', () => {
  const byFall = describeLines({ ...STREAM, endOfPull: { by: 'fall', below: 5, samples: 3 } });

  it('is a pull from the torque that begins it to its fall, with trace, peak and furthest angle', () => {
    const events = read(byFall, samples([0, 1, 20, 61.5, 60, 2, 1, 0, 0]));
    expect(pullsIn(events)).toMatchObject([
      {
        torque: { value: 61.5 },
        angle: { value: 35 },
        trace: { timeS: [0, 0.01, 0.02, 0.03, 0.04, 0.05], torqueNm: [20, 61.5, 60, 2, 1, 0] },
      },
    ]);
  });

  it('goes on through a ratchet stroke shorter than that', () => {
    expect(pullsIn(read(byFall, samples([20, 60, 0, 0, 40, 65, 0, 0, 0])))).toMatchObject([{ torque: { value: 65 } }]);
  });

  it('is a pull once it falls silent, where silence ends it', () => {
    const reader = lineReader(describeLines({ ...STREAM, endOfPull: { by: 'silence', seconds: 1 } }));
    expect(pullsIn(reader.take(samples([20, 60, 30])))).toEqual([]);
    expect(pullsIn(reader.fallSilent())).toMatchObject([{ torque: { value: 60 } }]);
    expect(reader.fallSilent()).toEqual([]);
  });

  it('is no pull when the connection breaks in the middle of it', () => {
    const reader = lineReader(byFall);
    reader.take(samples([20, 60]));
    expect(reader.breakOff()).toMatchObject([{ kind: 'unreadable', fault: { code: 'cut-off' } }]);
    expect(pullsIn(reader.take(samples([0, 0, 0, 0])))).toEqual([]);
  });
});

describe('a description', () => {
  it.each([
    [
      'ends by a result that no line tells',
      'a line that tells the result',
      { ...STREAM, endOfPull: { by: 'result' as const } },
    ],
    [
      'streams samples without any time',
      'how many samples',
      { ...STREAM, samplesPerSecond: undefined, endOfPull: { by: 'silence' as const, seconds: 1 } },
    ],
    ['has the comma for two things', 'another one than the decimal sign', { delimiter: ',' as const }],
    [
      'has a result without a torque',
      'a field with the torque',
      { lines: [{ says: 'result' as const, fields: [{ means: 'number' as const }] }] },
    ],
    [
      'has two torques',
      'each meaning once',
      { lines: [{ says: 'result' as const, fields: [{ means: 'torque' as const }, { means: 'torque' as const }] }] },
    ],
    [
      'has its check in the middle',
      'the check as the last field',
      {
        lines: [
          {
            says: 'result' as const,
            fields: [{ means: 'check' as const, method: 'xor-8' as const }, { means: 'torque' as const }],
          },
        ],
      },
    ],
  ])('is refused when it %s', (_, message, more) => {
    expect(() => describeLines(more)).toThrow(message);
  });
});
