import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkOf } from './check.ts';
import { examplePull } from './example.ts';
import { type LineEvent, LONGEST_LINE, READER_START, readLines } from './reader.ts';
import { linesOf } from './write.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const checked = (text: string) => `${text} ${checkOf(text)}`;
const PULLS = [1, 2, 3].map(examplePull);
const LINES = PULLS.map(({ pull, stamp }) => linesOf(pull, stamp));
const WHOLE = LINES.flat().join('');

function readAll(chunks: readonly Uint8Array[]): readonly LineEvent[] {
  let state = READER_START;
  return chunks.flatMap((chunk) => {
    const read = readLines(state, chunk);
    state = read.state;
    return read.events;
  });
}
const readText = (text: string) => readAll([bytes(text)]);
const pullsIn = (events: readonly LineEvent[]) => events.flatMap((event) => (event.kind === 'pull' ? [event] : []));
const wrongsIn = (events: readonly LineEvent[]) =>
  events.flatMap((event) => (event.kind === 'unreadable' ? [event] : []));

/** Cuts bytes at any places. */
const cuts = (text: string) =>
  fc.array(fc.nat(text.length), { maxLength: 30 }).map((places) => {
    const sorted = [0, ...places.toSorted((a, b) => a - b), text.length];
    return sorted.slice(1).map((to, i) => bytes(text).subarray(sorted[i], to));
  });

describe('readLines', () => {
  it('reads back what the wrench wrote', () => {
    const pulls = pullsIn(readText(WHOLE));
    expect(
      pulls.map(({ trace, torqueNm, angleDeg, id, samplesLost }) => ({ trace, torqueNm, angleDeg, id, samplesLost })),
    ).toEqual(
      PULLS.map(({ pull, stamp }) => ({
        trace: pull.trace,
        torqueNm: pull.shownTorqueNm,
        angleDeg: pull.shownAngleDeg,
        id: stamp.id,
        samplesLost: 0,
      })),
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
        const events = readAll([rubbish, bytes('\n'), ...chunks]);
        expect(pullsIn(events).slice(-3)).toEqual(pullsIn(readText(WHOLE)));
      }),
    );
  });

  it('keeps no more than a line of what has no end', () => {
    let state = READER_START;
    const events: LineEvent[] = [];
    for (let i = 0; i < 100; i++) {
      const read = readLines(state, new Uint8Array(65_536).fill(0x41));
      state = read.state;
      events.push(...read.events);
      expect(state.tail.length).toBeLessThanOrEqual(LONGEST_LINE);
    }
    expect(events).toHaveLength(1);
    expect(pullsIn(readLines(state, bytes(`\n${WHOLE}`)).events)).toHaveLength(3);
  });

  it('tells a flood of bad lines once a chunk, with their number', () => {
    expect(readText('xx\n'.repeat(5000))).toEqual([
      { kind: 'unreadable', lines: 5000, message: 'its check does not match', excerpt: 'xx' },
    ]);
  });

  it('keeps the reading of a pull whose samples are not all there, without a trace', () => {
    const lines = LINES[0] ?? [];
    const [pull] = pullsIn(readText([...lines.slice(0, 10), ...lines.slice(12)].join('')));
    expect(pull).toMatchObject({ torqueNm: PULLS[0]?.pull.shownTorqueNm, trace: undefined, samplesLost: 2 });
  });

  it('says so when a pull was never closed', () => {
    const events = readText([...(LINES[0] ?? []).slice(0, 5), ...(LINES[1] ?? [])].join(''));
    expect(wrongsIn(events)).toMatchObject([{ message: 'the result of pull 1 did not come' }]);
    expect(pullsIn(events)).toHaveLength(1);
  });

  it.each([
    ['x 1 2', 'it begins with neither s nor r'],
    ['s 1 0.1 5', 'a sample has four fields'],
    ['s 1 0.1 5,5 0', 'a field of the sample is not a number'],
    ['s 1 0.1 1e3 0', 'a field of the sample is not a number'],
    ['r 1 5', 'a result has eight fields'],
    [
      'r 1 NaN 0 0 2 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 KH',
      'a field of the result is not a number',
    ],
    [
      'r 1 5 ? 0 2 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 KH',
      'angle and speed are numbers or -',
    ],
    [
      'r 1 5 - - 2 2026-05-44T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 KH',
      'the time is not such as 2026-05-04T09:12:33.120Z',
    ],
    ['r 1 5 - - 2 2026-05-04T09:01:33.120Z 1 KH', 'the identity is not a UUID in small letters'],
    ['r 1 5 - - 2 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000001 ', 'the serial number is missing'],
  ])('says what is wrong with “%s”', (line, message) => {
    expect(readText(`${checked(line)}\n`)).toMatchObject([{ kind: 'unreadable', message }]);
  });

  it('takes a wrench without angle', () => {
    const line = checked('r 4 85.2 - - 0 2026-05-04T09:01:33.120Z 01973c3e-6a10-7000-8000-000000000004 KH-1');
    expect(readText(`${line}\n`)).toMatchObject([
      { kind: 'pull', torqueNm: 85.2, torqueText: '85.2', angleDeg: undefined, serial: 'KH-1' },
    ]);
  });
});
