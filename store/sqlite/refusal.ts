import type { Failure } from '@clampwright/core/failure';
import type BetterSqlite from 'better-sqlite3';
import { z } from 'zod';
import { NEWEST_VERSION } from '../migrations/index.ts';
import type { FileHeader } from './header.ts';

/** "Clmp": tells our files from databases of other programs (SQLite file format, 1.3.15). */
export const APPLICATION_ID = 0x436c6d70;

const newer = (version: number): Failure => ({
  kind: 'unavailable',
  message: `The data folder was written by a newer Clampwright (schema ${version}; this one knows ${NEWEST_VERSION}). Nothing was changed.`,
  remedy: 'Install the newer Clampwright, or choose another data folder.',
});

const FOREIGN: Failure = {
  kind: 'unavailable',
  message: 'The file clampwright.sqlite is not a Clampwright database. Nothing was changed.',
  remedy: 'Move it away, or choose another data folder.',
};

/** Why a file is not opened at all, by its first bytes. */
export function refuseHeader(header: FileHeader | undefined): Failure | undefined {
  if (!header || header.kind === 'empty') return undefined;
  if (header.kind === 'something-else') return FOREIGN;
  if (header.applicationId === APPLICATION_ID)
    return header.version > NEWEST_VERSION ? newer(header.version) : undefined;
  return header.applicationId === 0 ? undefined : FOREIGN;
}

const count = z.object({ newest: z.number().nullable() });

/** Why an opened file is not written to: what a write-ahead log hides from the header. Only reads. */
export function refuseContent(handle: BetterSqlite.Database): Failure | undefined {
  const tables = handle.prepare("select name from sqlite_master where type = 'table'").pluck().all();
  if (tables.length === 0) return undefined;
  if (!tables.includes('schema_versions')) return FOREIGN;
  const { newest } = count.parse(handle.prepare('select max(version) as newest from schema_versions').get());
  return newest !== null && newest > NEWEST_VERSION ? newer(newest) : undefined;
}
