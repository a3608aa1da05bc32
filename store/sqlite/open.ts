import { join } from 'node:path';
import { type Failure, failed, ok, type Result } from '@clampwright/core/failure';
import BetterSqlite from 'better-sqlite3';
import { sql } from 'kysely';
import { z } from 'zod';
import { type Engine, transact, type Writer } from '../engine.ts';
import { makeFolder } from '../folder.ts';
import { NEWEST_VERSION } from '../migrations/index.ts';
import { migrate } from '../migrations/migrate.ts';
import { builderOn, dialect } from './dialect.ts';
import { explain } from './explain.ts';
import { readHeader } from './header.ts';
import { patiently } from './patience.ts';
import { APPLICATION_ID, refuseContent, refuseHeader } from './refusal.ts';
import { openSpool } from './spool.ts';
import { turnsOn } from './turns.ts';

const DATABASE_FILE = 'clampwright.sqlite';

/** The writer waits outside the library, see `patiently`; readers meet a lock only while a log is recovered. */
const WRITER_BUSY_MS = 25;
const READER_BUSY_MS = 5000;

/** A long transaction swells the log; afterwards the disk gets its space back. */
const LOG_KEPT_BYTES = 64 * 1024 * 1024;

/** For long files, whose identities lie anywhere in their index; see README. */
const CACHE_KB = 32 * 1024;
const LOG_PAGES = 8000;

const NO_LOG: Failure = {
  kind: 'unavailable',
  message: 'The disk of the data folder cannot share memory between programs, which the database needs.',
  remedy: 'Choose a data folder on a disk of this computer, not on a network.',
};

/**
 * Opens the database of a data folder, made and brought up to date where need be.
 * A file that is not ours, or is from a newer version, is refused before anything is written.
 */
export async function openSqlite(folder: string): Promise<Result<Engine>> {
  try {
    await makeFolder(folder);
    const path = join(folder, DATABASE_FILE);
    const refusal = refuseHeader(await readHeader(path));
    return refusal ? failed(refusal) : await openFile(path);
  } catch (error) {
    const failure = explain(error);
    if (failure) return failed(failure);
    throw error;
  }
}

async function openFile(path: string): Promise<Result<Engine>> {
  const handle = new BetterSqlite(path, { timeout: WRITER_BUSY_MS });
  try {
    const ready = await prepareFile(handle);
    if (ready.ok) return ok(engineOn(handle, new BetterSqlite(path, { readonly: true, timeout: READER_BUSY_MS })));
    handle.close();
    return ready;
  } catch (error) {
    handle.close();
    throw error;
  }
}

async function prepareFile(handle: BetterSqlite.Database): Promise<Result<number>> {
  const refusal = refuseContent(handle);
  if (refusal) return failed(refusal);
  await patiently(() => handle.pragma('journal_mode = wal'));
  if (handle.pragma('journal_mode', { simple: true }) !== 'wal') return failed(NO_LOG);
  handle.pragma('synchronous = full');
  handle.pragma('foreign_keys = on');
  handle.pragma(`journal_size_limit = ${LOG_KEPT_BYTES}`);
  handle.pragma(`cache_size = -${CACHE_KB}`);
  handle.pragma(`wal_autocheckpoint = ${LOG_PAGES}`);
  return bringUpToDate(handle, { begin: turnsOn(handle).begin, explain });
}

async function bringUpToDate(handle: BetterSqlite.Database, writer: Writer): Promise<Result<number>> {
  const steps = await transact(writer, async (trx) => {
    const taken = await migrate(trx, dialect);
    if (taken > 0) {
      await sql.raw(`pragma application_id = ${APPLICATION_ID}`).execute(trx);
      await sql.raw(`pragma user_version = ${NEWEST_VERSION}`).execute(trx);
    }
    return ok(taken);
  });
  // Older programs look at the header of the file itself: what the log still holds must get there.
  if (steps.ok && steps.value > 0) handle.pragma('wal_checkpoint(truncate)');
  return steps;
}

function engineOn(writer: BetterSqlite.Database, reader: BetterSqlite.Database): Engine {
  const turns = turnsOn(writer);
  const version = writer.prepare('pragma data_version').pluck();
  return {
    reading: builderOn(reader),
    begin: turns.begin,
    explain,
    spool: openSpool,
    dataVersion: () => z.number().parse(version.get()),
    close: async () => {
      reader.close();
      // Who may write goes last: it brings the log into the database and takes it away.
      await turns.close();
    },
  };
}
