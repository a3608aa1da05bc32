import { canonical } from './canonical.ts';
import type { Trace } from './command.ts';
import type { Entry } from './entry.ts';
import type { RecordFile, Seal } from './file.ts';
import { fingerprintsOf } from './locate.ts';

/** A record as data, with what is needed to verify it alone. */
export function recordFile(
  entries: readonly Entry[],
  traces: Readonly<Record<string, Trace>>,
  seal?: Seal,
): RecordFile {
  return {
    format: 'clampwright-record',
    version: 1,
    entries: [...entries],
    fingerprints: entries.map(fingerprintsOf),
    traces: { ...traces },
    ...(seal ? { seal } : {}),
  };
}

/** The text of an exported record: canonical JSON and one line feed, so that every byte has one right value. */
export function exportRecord(entries: readonly Entry[], traces: Readonly<Record<string, Trace>>, seal?: Seal): string {
  return `${canonical(recordFile(entries, traces, seal))}\n`;
}
