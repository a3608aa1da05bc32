import { open } from 'node:fs/promises';

/** What a database file says of itself in its first bytes. */
export interface FileHeader {
  readonly kind: 'empty' | 'database' | 'something-else';
  /** `user_version`: the schema version, stamped by the migrations. */
  readonly version: number;
  readonly applicationId: number;
}

const MAGIC = 'SQLite format 3\0';
const VERSION_AT = 60;
const APPLICATION_AT = 68;
const HEADER_BYTES = 100;

/**
 * Reads the header without the database library: even a read-only connection would leave files beside it.
 * Opens for writing as well, since the library takes a file that cannot be written without a word.
 *
 * @returns undefined when there is no such file
 * @throws what the system says when the file cannot be read or written
 * @source SQLite database file format, section 1.3 (the database header)
 */
export async function readHeader(path: string): Promise<FileHeader | undefined> {
  const bytes = await firstBytes(path);
  if (!bytes) return undefined;
  if (bytes.length === 0) return { kind: 'empty', version: 0, applicationId: 0 };
  if (bytes.length < HEADER_BYTES || bytes.toString('latin1', 0, MAGIC.length) !== MAGIC) {
    return { kind: 'something-else', version: 0, applicationId: 0 };
  }
  return {
    kind: 'database',
    version: bytes.readUInt32BE(VERSION_AT),
    applicationId: bytes.readUInt32BE(APPLICATION_AT),
  };
}

async function firstBytes(path: string): Promise<Buffer | undefined> {
  const file = await open(path, 'r+').catch((error: unknown) => {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  });
  if (!file) return undefined;
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(HEADER_BYTES), 0, HEADER_BYTES, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}
