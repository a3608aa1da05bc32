import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import BetterSqlite from 'better-sqlite3';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openStore } from '../index.ts';
import { failureOf, freshFolder, storeIn, valueOf } from '../testing/contract/folder.ts';
import { firstEntries, hubSheet } from '../testing/workshop.ts';

const FILE = 'clampwright.sqlite';

/** A data folder with one job in it, closed. */
async function filledFolder(): Promise<string> {
  const folder = await freshFolder();
  const store = valueOf(await openStore(folder));
  valueOf(await store.jobs.open(firstEntries(hubSheet('tower 3'))));
  await store.close();
  return folder;
}

function changed(folder: string, ...statements: readonly string[]): BetterSqlite.Database {
  const db = new BetterSqlite(join(folder, FILE));
  for (const statement of statements) db.exec(statement);
  return db;
}

async function bytesIn(folder: string): Promise<Record<string, string>> {
  const names = (await readdir(folder)).toSorted();
  return Object.fromEntries(
    await Promise.all(names.map(async (name) => [name, (await readFile(join(folder, name))).toString('base64')])),
  );
}

const NEXT_VERSION = [
  "insert into schema_versions (version, name) values (9000, 'of a later day')",
  'pragma user_version = 9000',
] as const;

describe('a database from a newer version', () => {
  it.for([
    ['stamped in the file', NEXT_VERSION],
    ['known from its list of steps alone', NEXT_VERSION.slice(0, 1)],
    ['known from its stamp alone', NEXT_VERSION.slice(1)],
  ] as const)('%s is refused and stays as it is to the byte', async ([, statements]) => {
    const folder = await filledFolder();
    changed(folder, ...statements).close();
    const before = await bytesIn(folder);
    expect(failureOf(await openStore(folder))).toMatchObject({
      kind: 'unavailable',
      message: expect.stringContaining('newer'),
      remedy: expect.stringContaining('newer'),
    });
    expect(await bytesIn(folder)).toEqual(before);
  });

  it('is refused while the newer program is at work, whose log is left alone', async () => {
    const folder = await filledFolder();
    const newer = changed(folder, ...NEXT_VERSION);
    onTestFinished(() => void newer.close());
    const log = await readFile(join(folder, `${FILE}-wal`));
    expect(log.length).toBeGreaterThan(0);
    expect(failureOf(await openStore(folder)).kind).toBe('unavailable');
    expect((await readFile(join(folder, `${FILE}-wal`))).equals(log)).toBe(true);
  });
});

function foreign(path: string, statement: string): void {
  const db = new BetterSqlite(path);
  db.exec(statement);
  db.close();
}

describe('a file that is not ours', () => {
  it.for([
    ['text', async (path: string) => writeFile(path, 'position;torque\n1;100\n')],
    ['a cut-off header', async (path: string) => writeFile(path, 'SQLite format 3\0')],
    ['a database of another program', async (path: string) => foreign(path, 'create table birds (name text)')],
    ['a stamped database of another program', async (path: string) => foreign(path, 'pragma application_id = 42')],
  ] as const)('%s is refused and stays as it is to the byte', async ([, make]) => {
    const folder = await freshFolder();
    await make(join(folder, FILE));
    const before = await bytesIn(folder);
    expect(failureOf(await openStore(folder))).toMatchObject({
      kind: 'unavailable',
      message: expect.stringContaining('not a Clampwright database'),
    });
    expect(await bytesIn(folder)).toEqual(before);
  });

  it('a damaged database is refused', async () => {
    const folder = await filledFolder();
    const bytes = await readFile(join(folder, FILE));
    await writeFile(join(folder, FILE), bytes.fill(0x5a, 100, 4000));
    expect(failureOf(await openStore(folder))).toMatchObject({
      kind: 'unavailable',
      message: expect.stringContaining('damaged'),
    });
  });

  it('a folder in the place of the file, or a file in the place of the folder, is refused', async () => {
    const folder = await freshFolder();
    await mkdir(join(folder, FILE));
    expect(failureOf(await openStore(folder)).kind).toBe('unavailable');
    await writeFile(join(folder, 'data'), '');
    expect(failureOf(await openStore(join(folder, 'data'))).kind).toBe('unavailable');
    expect(failureOf(await openStore(join(folder, 'data', 'deeper'))).kind).toBe('unavailable');
  });
});

describe('a data folder', () => {
  it('is made with the folders above it, for its owner alone', async () => {
    const folder = join(await freshFolder(), 'a', 'b');
    await storeIn(folder, openStore);
    expect(await readdir(folder)).toContain(FILE);
  });

  it('with an empty file of the right name is taken as new', async () => {
    const folder = await freshFolder();
    await writeFile(join(folder, FILE), '');
    const store = await storeIn(folder, openStore);
    expect(valueOf(await store.jobs.list())).toEqual([]);
  });

  it('is opened again without a step being done twice', async () => {
    const folder = await filledFolder();
    const store = await storeIn(folder, openStore);
    expect(valueOf(await store.jobs.list())).toHaveLength(1);
  });

  it('can be opened by two at once from the beginning', async () => {
    const folder = await freshFolder();
    const opened = await Promise.all([openStore(folder), openStore(folder)]);
    for (const result of opened) {
      const store = valueOf(result);
      expect(valueOf(await store.jobs.list())).toEqual([]);
      await store.close();
    }
  });
});
