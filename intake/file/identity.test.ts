import { describe, expect, it } from 'vitest';
import type { FileContext } from './context.ts';
import type { WrittenMapping } from './mapping.ts';
import { CONTEXT, pullsOf, readText } from './testing/read-text.ts';

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
