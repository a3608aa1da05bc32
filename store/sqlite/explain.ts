import type { Failure } from '@clampwright/core/failure';

const FULL = 'The disk of the data folder is full; nothing was stored.';
const READ_ONLY = 'The data folder or a file in it cannot be written; nothing was stored.';
const DAMAGED = 'The database file is damaged or is not a database.';
const UNREADABLE = 'The disk of the data folder refuses to read or write.';

const remedies: Readonly<Record<string, readonly [message: string, remedy: string]>> = {
  SQLITE_FULL: [FULL, 'Free some space, then do it again.'],
  ENOSPC: [FULL, 'Free some space, then do it again.'],
  EDQUOT: [FULL, 'Free some space or raise the quota, then do it again.'],
  EFBIG: [FULL, 'Raise the limit on file size, then do it again.'],
  SQLITE_READONLY: [READ_ONLY, 'Give this user the right to write there, or choose another folder.'],
  SQLITE_CANTOPEN: [
    READ_ONLY,
    'Check that the folder exists and that this user may write there, or choose another folder.',
  ],
  SQLITE_PERM: [READ_ONLY, 'Give this user the right to write there, or choose another folder.'],
  EACCES: [READ_ONLY, 'Give this user the right to write there, or choose another folder.'],
  EPERM: [READ_ONLY, 'Give this user the right to write there, or choose another folder.'],
  ENOENT: [READ_ONLY, 'Check that the folder can be made where it should be, or choose another one.'],
  EROFS: [READ_ONLY, 'Choose a folder on a disk that can be written.'],
  ENOTDIR: ['The data folder is a file or lies inside one.', 'Choose another folder.'],
  EEXIST: ['The data folder is a file.', 'Choose another folder.'],
  EISDIR: ['A folder stands where the database file should.', 'Move it away, or choose another data folder.'],
  SQLITE_NOTADB: [DAMAGED, 'Put the latest backup in its place; keep the damaged file for inspection.'],
  SQLITE_CORRUPT: [DAMAGED, 'Put the latest backup in its place; keep the damaged file for inspection.'],
  SQLITE_IOERR: [UNREADABLE, 'Check the disk and its free space, then do it again.'],
  EIO: [UNREADABLE, 'Check the disk, then do it again.'],
  SQLITE_BUSY: [
    'Another process is writing a great deal just now; nothing was stored.',
    'Wait until it is done, then do it again.',
  ],
};

/** `SQLITE_IOERR_WRITE` and its like are kinds of the code before the last word. */
function known(code: string): readonly [string, string] | undefined {
  return remedies[code] ?? remedies[code.split('_').slice(0, 2).join('_')];
}

/** What the disk or the database refused, with a remedy; undefined when the error is a bug of ours. */
export function explain(error: unknown): Failure | undefined {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return undefined;
  const told = known(error.code);
  return told && { kind: 'unavailable', message: told[0], remedy: told[1] };
}
