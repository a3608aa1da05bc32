import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { briefly, CONTEXT, ENCODED, mapping, outcomesOf, pullsOf, readText } from './testing/read-text.ts';

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
