import { sql } from 'kysely';
import { describe, expect, it, onTestFinished } from 'vitest';
import { freshFolder, valueOf } from '../testing/contract/folder.ts';
import { openSqlite } from './open.ts';

describe('the connection that writes', () => {
  it.for([
    ['journal_mode', 'wal'],
    ['synchronous', 2],
    ['foreign_keys', 1],
  ] as const)('has %s set to %s, so that a commit outlives a power cut and hangs together', async ([pragma, value]) => {
    const engine = valueOf(await openSqlite(await freshFolder()));
    onTestFinished(() => engine.close());
    const { trx, rollback } = await engine.begin();
    const { rows } = await sql.raw(`pragma ${pragma}`).execute(trx);
    await rollback();
    expect(rows).toEqual([{ [pragma]: value }]);
  });

  it('is the only one that can', async () => {
    const engine = valueOf(await openSqlite(await freshFolder()));
    onTestFinished(() => engine.close());
    await expect(engine.reading.insertInto('settings').values({ name: 'a', value: 'b' }).execute()).rejects.toThrow(
      'readonly',
    );
  });
});
