import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readThread } from './read-thread.ts';
import { THREADS } from './thread.ts';

fc.configureGlobal({ seed: 24 });

describe('readThread', () => {
  it.each(THREADS.map((thread) => [thread.designation, thread] as const))('reads %s', (designation, thread) => {
    expect(readThread(designation)).toEqual({ ok: true, value: thread });
  });

  it.each([
    ['M10', ['m10', 'M 10', ' M10 ', 'M10x1.5', 'M10-6g', 'M10 x 1.5 - 6g']],
    ['M10x1.25', ['M10X1.25', 'M10×1.25', 'm10 x 1,25', 'M10*1.25', 'M10-1.25', 'M10x1.25-6g6h']],
    [
      '3/8-16 UNC',
      [
        '3/8-16',
        '3/8-16unc',
        '3/8 - 16 UNC',
        '3/8 UNC',
        '3/8"-16 UNC',
        '3/8 in-16 UNC',
        '0.375-16',
        '⅜-16 UNC',
        '3/8-16 UNC-2A',
      ],
    ],
    ['1/4-28 UNF', ['1/4-28', '.250-28 UNF', '¼-28 UNF']],
    ['5/16-18 UNC', ['.313-18', '.3125-18']],
    ['#8-32 UNC', ['#8-32', '8-32', 'No. 8-32 UNC', 'no 8-32', '8-32 unc', '# 8 - 32']],
    ['#4-40 UNC', ['4-40', '#4-40']],
    ['4-4 UNC', ['4-4']],
    ['1-8 UNC', ['1-8', '1"-8 UNC', '1 UNC']],
    ['1 1/2-6 UNC', ['1-1/2-6 UNC', '1 1/2-6', '1½-6 UNC', '1.5-6 UNC']],
    ['2-4.5 UNC', ['2-4.5']],
    ['2-8 UN', ['2-8', '2-8UN', '2 8-UN', '2"-8 UN-2A']],
    ['1 1/8-8 UN', ['1-1/8-8', '1 1/8 UN', '1⅛-8 UN']],
    ['#2-56 UNC', ['2-56', '#2 UNC']],
  ])('reads the spellings of %s', (designation, spellings) => {
    expect(spellings.map((text) => [text, readThread(text)])).toEqual(
      spellings.map((text) => [text, { ok: true, value: expect.objectContaining({ designation }) }]),
    );
  });

  it.each([
    ['M13', 'M12 or M14'],
    ['M99', 'M64 or M60'],
    ['M10.01', 'M10 or M11'],
    ['M10x2', 'M10 or M10x1.25 or M10x1 or M10x0.75'],
    ['M10x40', 'M10 or M10x1.25 or M10x1 or M10x0.75'],
    ['M28', 'M28x2 or M28x1.5 or M28x1'],
    ['3/8-18 UNC', '3/8-16 UNC or 3/8-24 UNF'],
    ['3/8-16 UNF', '3/8-16 UNC or 3/8-24 UNF'],
    ['3/8', '3/8-16 UNC or 3/8-24 UNF'],
    ['0.4-16 UNC', '3/8-16 UNC or 7/16-14 UNC'],
    ['1 5/8 UNC', '1 5/8-8 UN'],
    ['4 UNC', '#4-40 UNC or #4-48 UNF or 4-4 UNC or 4-8 UN'],
  ])('refuses %s and tells what is near', (text, expected) => {
    expect(readThread(text, 'fastener.thread')).toMatchObject({
      failure: { kind: 'invalid', field: 'fastener.thread', expected },
    });
  });

  it.each(['', 'Q7', 'M', 'bolt', 'M10x', 'M-10', '10', 'Tr20x4', '3/0-16', '1/2-13 UNS', 'M10 LH'])(
    'refuses “%s” and shows what a designation looks like or what is near',
    (text) => {
      const read = readThread(text);
      expect(!read.ok && read.failure.kind === 'invalid' && read.failure.expected).toMatch(/M10|-\d+ UNC/);
    },
  );

  it('answers for any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[M#]?[\dx/ .,-]{0,12}(UN[CF])?$/)), (text) => {
        const read = readThread(text);
        expect(read.ok || read.failure.kind === 'invalid').toBe(true);
      }),
    );
  });
});
