import { failed, ok } from '@clampwright/core/failure';
import { describe, expect, it, onTestFinished } from 'vitest';
import { type Engine, transact } from '../engine.ts';
import { readSetting, writeSetting } from '../settings.ts';
import { freshFolder, valueOf } from '../testing/contract/folder.ts';
import { openSqlite } from './open.ts';

async function opened(): Promise<Engine> {
  const engine = valueOf(await openSqlite(await freshFolder()));
  onTestFinished(() => engine.close());
  return engine;
}

const FAILURE = { kind: 'not-found', what: 'anything', id: '1' } as const;

describe('a transaction', () => {
  it('keeps what went well', async () => {
    const engine = await opened();
    await transact(engine, async (trx) => ok(await writeSetting(trx, 'a', 'kept')));
    expect(await readSetting(engine.reading, 'a')).toBe('kept');
  });

  it('undoes what it wrote when it fails, and the next one can begin', async () => {
    const engine = await opened();
    const result = await transact(engine, async (trx) => {
      await writeSetting(trx, 'a', 'half');
      return failed(FAILURE);
    });
    expect(result).toEqual(failed(FAILURE));
    expect(await readSetting(engine.reading, 'a')).toBeUndefined();
    await transact(engine, async (trx) => ok(await writeSetting(trx, 'a', 'kept')));
    expect(await readSetting(engine.reading, 'a')).toBe('kept');
  });

  it('undoes what it wrote when it breaks down, and the bug is not hidden', async () => {
    const engine = await opened();
    const broken = transact(engine, async (trx) => {
      await writeSetting(trx, 'a', 'half');
      throw new RangeError('a bug');
    });
    await expect(broken).rejects.toThrow('a bug');
    expect(await readSetting(engine.reading, 'a')).toBeUndefined();
  });
});
