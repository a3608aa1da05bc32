import { canonical } from './canonical.ts';
import type { Trace } from './command.ts';
import type { Sha256 } from './digest.ts';
import type { Entry } from './entry.ts';
import type { RecordFile, Seal } from './file.ts';
import { fingerprintsOf } from './locate.ts';

/** A record as data, with what is needed to verify it alone. */
export function recordFile(
  entries: readonly Entry[],
  traces: Readonly<Record<string, Trace>>,
  seal?: Seal,
  sha256?: Sha256,
): RecordFile {
  return {
    format: 'clampwright-record',
    version: 1,
    entries: [...entries],
    fingerprints: entries.map((entry) => fingerprintsOf(entry, sha256)),
    traces: { ...traces },
    ...(seal ? { seal } : {}),
  };
}

/** The text of an exported record: canonical JSON and one line feed, so that every byte has one right value. */
export const recordText = (file: RecordFile): string => `${canonical(file)}\n`;

/** The text of a record from its parts. */
export const exportRecord = (...parts: Parameters<typeof recordFile>): string => recordText(recordFile(...parts));
