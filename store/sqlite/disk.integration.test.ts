import { readdir, readFile, unlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Failure } from '@clampwright/core/failure';
import { exportRecord, verifyRecord } from '@clampwright/core/record';
import { describe, expect, it, type TestContext } from 'vitest';
import { openStore, type Store } from '../index.ts';
import { failureOf, freshFolder, storeIn, valueOf } from '../testing/contract/folder.ts';
import { NEEDS_ROOT, readOnly, smallDisk } from '../testing/mounts.ts';
import { deciding, firstEntries, hubSheet, pullNumber } from '../testing/workshop.ts';

const sheet = hubSheet('tower 3');
const FILE = 'clampwright.sqlite';
const BALLAST = 'ballast';

const pulled = (store: Store, n: number) => store.jobs.append(sheet.id, deciding(pullNumber(sheet.id, n), 10 + n));

/** Appends until the store refuses; gives how many were acknowledged and why it stopped. */
async function pulledUntilRefused(
  store: Store,
  first: number,
): Promise<{ readonly count: number; readonly failure: Failure }> {
  for (let count = 0; ; count++) {
    const appended = await pulled(store, first + count);
    if (!appended.ok) return { count, failure: appended.failure };
  }
}

/** A folder on a disk that is full but for what ballast takes up. */
async function fullFolder(context: TestContext, freeMegabytes: number): Promise<string> {
  const folder = await freshFolder();
  if (!smallDisk(folder, 4)) context.skip(NEEDS_ROOT);
  await writeFile(join(folder, BALLAST), Buffer.alloc((4 - freeMegabytes) * 1024 * 1024));
  return folder;
}

describe('a full disk', () => {
  it('refuses the next pull, keeps every one before, and goes on once there is space', async (context) => {
    const folder = await fullFolder(context, 2);
    const store = await storeIn(folder, openStore);
    valueOf(await store.jobs.open(firstEntries(sheet)));
    const { count, failure } = await pulledUntilRefused(store, 0);
    expect(failure).toMatchObject({
      kind: 'unavailable',
      message: expect.stringContaining('full'),
      remedy: expect.stringContaining('space'),
    });
    expect(count).toBeGreaterThan(10);
    expect(valueOf(await store.jobs.get(sheet.id)).lastSeq).toBe(2 + count);
    await unlink(join(folder, BALLAST));
    valueOf(await pulled(store, count));
    const entries = valueOf(await store.jobs.entries(sheet.id));
    expect(entries).toHaveLength(3 + count);
    expect(verifyRecord(exportRecord(entries, {})).faults).toEqual([]);
  });

  it('refuses a new data folder and leaves nothing half made', async (context) => {
    const folder = await fullFolder(context, 0);
    expect(failureOf(await openStore(folder))).toMatchObject({
      kind: 'unavailable',
      message: expect.stringContaining('full'),
    });
    await unlink(join(folder, BALLAST));
    const store = await storeIn(folder, openStore);
    expect(valueOf(await store.jobs.list())).toEqual([]);
  });
});

describe('a read-only disk', () => {
  const refused = {
    kind: 'unavailable',
    message: expect.stringContaining('cannot be written'),
    remedy: expect.stringMatching(/folder/),
  };

  it('refuses a new data folder', async (context) => {
    const folder = await freshFolder();
    if (!readOnly(folder)) context.skip(NEEDS_ROOT);
    expect(failureOf(await openStore(folder))).toMatchObject(refused);
    expect(failureOf(await openStore(join(folder, 'data')))).toMatchObject(refused);
    expect(await readdir(folder)).toEqual([]);
  });

  it.for(['folder', 'file'])(
    'refuses a data %s that can only be read and leaves it as it is',
    async (what, context: TestContext) => {
      const folder = await freshFolder();
      const store = valueOf(await openStore(folder));
      valueOf(await store.jobs.open(firstEntries(sheet)));
      await store.close();
      const before = await readFile(join(folder, FILE));
      if (!readOnly(what === 'folder' ? folder : join(folder, FILE))) context.skip(NEEDS_ROOT);
      expect(failureOf(await openStore(folder))).toMatchObject(refused);
      expect(await readdir(folder)).toEqual([FILE]);
      expect((await readFile(join(folder, FILE))).equals(before)).toBe(true);
    },
  );
});
