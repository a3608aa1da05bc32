import { checkOf, type LineEvent, lineReader, OWN_LINES } from '@clampwright/core/line';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { examplePull } from './example.ts';
import { linesOf } from './write.ts';

const checked = (text: string) => `${text} ${checkOf(text)}`;
const PULLS = [1, 2, 3].map(examplePull);
const LINES = PULLS.map(({ pull, stamp }) => linesOf(pull, stamp));
const WHOLE = LINES.flat().join('');

function readAll(pieces: readonly string[]): readonly LineEvent[] {
  const reader = lineReader(OWN_LINES);
  return pieces.flatMap((piece) => reader.take(piece));
}
const readText = (text: string) => readAll([text]);
const pullsIn = (events: readonly LineEvent[]) =>
  events.flatMap((event) => (event.kind === 'pull' ? [event.pull] : []));
const wrongsIn = (events: readonly LineEvent[]) =>
  events.flatMap((event) => (event.kind === 'unreadable' ? [event] : []));

/** Cuts a text at any places. */
const cuts = (text: string) =>
  fc.array(fc.nat(text.length), { maxLength: 30 }).map((places) => {
    const sorted = [0, ...places.toSorted((a, b) => a - b), text.length];
    return sorted.slice(1).map((to, i) => text.slice(sorted[i], to));
  });

describe('the lines of the simulated wrench', () => {
  it('reads back what the wrench wrote', () => {
    const pulls = pullsIn(readText(WHOLE));
    expect(
      pulls.map(({ trace, torque, angle, id, from, samplesLost }) => [
        trace,
        torque.value,
        angle?.value,
        id,
        from,
        samplesLost,
      ]),
    ).toEqual(
      PULLS.map(({ pull, stamp }) => [pull.trace, pull.shownTorqueNm, pull.shownAngleDeg, stamp.id, [stamp.serial], 0]),
    );
  });

  it('tells each sample as it comes', () => {
    const samples = readText(LINES[0]?.slice(0, 5).join('') ?? '');
    expect(samples.map((event) => event.kind)).toEqual(Array(5).fill('sample'));
  });

  it('gives the same whatever the pieces in which bytes arrive', () => {
    fc.assert(
      fc.property(cuts(WHOLE), (chunks) => {
        expect(pullsIn(readAll(chunks))).toEqual(pullsIn(readText(WHOLE)));
      }),
      { numRuns: 30 },
    );
  });

  it.each([
    ['CR LF', '\r\n'],
    ['CR', '\r'],
  ])('takes %s as the end of a line', (_, end) => {
    expect(pullsIn(readText(WHOLE.replaceAll('\n', end)))).toEqual(pullsIn(readText(WHOLE)));
  });

  it('notices a line that is cut, whatever is left of it', () => {
    const result = LINES[0]?.at(-1)?.trimEnd() ?? '';
    for (let length = 1; length < result.length; length++) {
      const events = readText(`${result.slice(0, length)}\n`);
      expect(events.map((event) => event.kind)).toEqual(['unreadable']);
    }
  });

  it('notices any one changed character', () => {
    const line = LINES[0]?.at(-1)?.trimEnd() ?? '';
    fc.assert(
      fc.property(fc.nat(line.length - 1), fc.stringMatching(/^[\x20-\x7e]$/), (at, char) => {
        fc.pre(line[at] !== char);
        const events = readText(`${line.slice(0, at)}${char}${line.slice(at + 1)}\n`);
        expect(pullsIn(events)).toEqual([]);
        expect(wrongsIn(events)).toHaveLength(1);
      }),
    );
  });

  it('reads on after rubbish of any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 2000 }), cuts(WHOLE), (rubbish, chunks) => {
        const events = readAll([Buffer.from(rubbish).toString('latin1'), '\n', ...chunks]);
        expect(pullsIn(events).slice(-3)).toEqual(pullsIn(readText(WHOLE)));
      }),
      { numRuns: 30 },
    );
  });

  it('reads on after what has no end', () => {
    const reader = lineReader(OWN_LINES);
    const events = Array.from({ length: 100 }, () => reader.take('A'.repeat(65_536))).flat();
    expect(events).toMatchObject([{ kind: 'unreadable', fault: { code: 'too-long' } }]);
    expect(pullsIn(reader.take(`\n${WHOLE}`))).toHaveLength(3);
  });

  it('tells a flood of bad lines once a chunk, with their number', () => {
    expect(readText('xx\n'.repeat(5000))).toEqual([
      { kind: 'unreadable', lines: 5000, fault: { code: 'no-such-line' }, raw: 'xx' },
    ]);
  });

  it('keeps the reading of a pull whose samples are not all there, without a trace', () => {
    const lines = LINES[0] ?? [];
    const [pull] = pullsIn(readText([...lines.slice(0, 10), ...lines.slice(12)].join('')));
    expect(pull).toMatchObject({ torque: { value: PULLS[0]?.pull.shownTorqueNm }, samplesLost: 2 });
    expect(pull?.trace).toBeUndefined();
  });

  it('says so when a pull was never closed', () => {
    const events = readText([...(LINES[0] ?? []).slice(0, 5), ...(LINES[1] ?? [])].join(''));
    expect(wrongsIn(events)).toMatchObject([{ fault: { code: 'no-result' } }]);
    expect(pullsIn(events)).toHaveLength(1);
  });

  it.each([
    ['x 1 2', { code: 'no-such-line' }],
    ['s 1 0.1 5', { code: 'no-such-line' }],
    ['s 1 0.1 5,5 0', { code: 'figure', cell: 4 }],
    ['s 1 0.1 1e3 0', { code: 'figure', cell: 4 }],
    ['r 1 NaN 0 0 2 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 KH', { code: 'figure', cell: 3 }],
    ['r 1 5 ? 0 2 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 KH', { code: 'figure', cell: 4 }],
    ['r 1 5 - - 2 2026-05-44T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 KH', { code: 'time', cell: 7 }],
    ['r 1 5 - - 2 2026-05-04T09:01:33.120Z 1 KH', { code: 'identity', cell: 8 }],
    ['r 1 5 - - 2 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 ', { code: 'serial', cell: 9 }],
    ['r 1 30000 - - 2 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 KH', { code: 'absurd', cell: 3 }],
  ])('says what is wrong with “%s”, and where', (line, fault) => {
    expect(readText(`${checked(line)}\n`)).toMatchObject([{ kind: 'unreadable', fault }]);
  });

  it('takes a wrench without angle', () => {
    const line = checked('r 4 85.2 - - 0 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000004 KH-1');
    const [pull] = pullsIn(readText(`${line}\n`));
    expect(pull).toMatchObject({ torque: { text: '85.2', unit: 'N·m', value: 85.2 }, from: ['KH-1'] });
    expect(pull?.angle).toBeUndefined();
  });
});
