import { parse } from '../failure/parse.ts';
import { canonical } from './canonical.ts';
import { hashOfEntry, NO_HASH } from './chain.ts';
import { digestOf } from './digest.ts';
import type { Entry } from './entry.ts';
import { type RecordFile, recordFileSchema } from './file.ts';
import { changedLeaves, leafAt } from './locate.ts';
import { readJson } from './read-json.ts';
import { keyFingerprint, sealHolds } from './seal.ts';

/** Something in a record that is not as it was sealed. */
export interface RecordFault {
  readonly part: 'file' | 'entry' | 'seal' | 'trace' | 'fingerprint';
  /** Which entry, counted from 1. */
  readonly seq?: number;
  /** The field, as a JSON Pointer within that part. */
  readonly field?: string;
  readonly message: string;
}

/** What a record says of itself, and whether it still is what was sealed. */
export interface Verification {
  /** No fault was found. An open job without a seal can be whole, but is not proven. */
  readonly whole: boolean;
  readonly sealed: boolean;
  readonly faults: readonly RecordFault[];
  readonly jobId?: string;
  readonly title?: string;
  readonly entryCount?: number;
  readonly signedAt?: string;
  /** Of the key that signed; compare it with the workshop's own. */
  readonly keyFingerprint?: string;
  readonly headHash?: string;
}

/**
 * Verifies an exported record with nothing but its text: form, chain, traces, seal.
 * Names the entry and the field of whatever was altered.
 *
 * @source chain of SHA-256 (FIPS 180-4) over canonical JSON (RFC 8785), signature Ed25519 (RFC 8032)
 */
export function verifyRecord(text: string): Verification {
  const read = readJson(text);
  if (!read.ok) {
    const where = read.at.path === '' ? '' : `, in ${read.at.path}`;
    return broken({
      part: 'file',
      field: read.at.path,
      message: `The file stops being JSON at character ${read.at.offset + 1}${where}: ${read.at.wants} should stand there.`,
    });
  }
  const file = parse(recordFileSchema, read.value);
  if (!file.ok) {
    const { failure } = file;
    const field = failure.kind === 'invalid' ? failure.field : '';
    return broken({
      part: 'file',
      field,
      message: `${field} is not as a record has it${failure.kind === 'invalid' ? `: ${failure.message.replace(/\.$/, '')}` : ''}.`,
      ...seqOf(field),
    });
  }
  const faults = [
    ...formFaults(text, file.value),
    ...chainFaults(file.value),
    ...traceFaults(file.value),
    ...sealFaults(file.value),
  ];
  return summary(file.value, faults);
}

const broken = (fault: RecordFault): Verification => ({ whole: false, sealed: false, faults: [fault] });

function seqOf(field: string): { seq?: number } {
  const index = /^entries\[(\d+)\]/.exec(field)?.[1];
  return index === undefined ? {} : { seq: Number(index) + 1 };
}

function summary(file: RecordFile, faults: readonly RecordFault[]): Verification {
  const [first] = file.entries;
  const last = file.entries.at(-1)!;
  return {
    whole: faults.length === 0,
    sealed: file.seal !== undefined,
    faults,
    jobId: last.jobId,
    ...(first?.body.kind === 'opened' ? { title: first.body.sheet.title } : {}),
    entryCount: file.entries.length,
    headHash: last.hash,
    ...(file.seal ? { signedAt: file.seal.signedAt, keyFingerprint: keyFingerprint(file.seal.publicKey) } : {}),
  };
}

/** Every byte has one right value: what reads alike but is written otherwise was touched too. */
function formFaults(text: string, file: RecordFile): readonly RecordFault[] {
  const right = `${canonical(file)}\n`;
  if (text === right) return [];
  const at = firstDifference(text, right);
  return [
    {
      part: 'file',
      message: `The file is not in canonical form from character ${at + 1} on: ${excerpt(text, at)} stands where ${excerpt(right, at)} should.`,
    },
  ];
}

function firstDifference(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return at;
}

const excerpt = (text: string, at: number): string => JSON.stringify(text.slice(at, at + 24));

function chainFaults(file: RecordFile): readonly RecordFault[] {
  const faults: RecordFault[] = [];
  if (file.entries[0]?.body.kind !== 'opened')
    faults.push({ part: 'entry', seq: 1, message: 'A record begins with the sheet of its job.' });
  if (file.fingerprints.length !== file.entries.length)
    faults.push({
      part: 'fingerprint',
      message: `${file.fingerprints.length} fingerprints stand for ${file.entries.length} entries.`,
    });
  for (const [index, entry] of file.entries.entries()) faults.push(...entryFaults(file, entry, index));
  return faults;
}

function entryFaults(file: RecordFile, entry: Entry, index: number): readonly RecordFault[] {
  const seq = index + 1;
  const changed = changedLeaves(entry, file.fingerprints[index] ?? {});
  const previous = file.entries[index - 1];
  const hashFits = hashOfEntry(entry) === entry.hash;
  const linkFits =
    entry.previousHash === (previous?.hash ?? NO_HASH) && entry.seq === seq && entry.jobId === file.entries[0]!.jobId;
  if (hashFits && linkFits) {
    return changed.map((field) => ({
      part: 'fingerprint',
      seq,
      field,
      message: `The fingerprint of ${field} in entry ${seq} was altered; the entry itself is whole.`,
    }));
  }
  const altered = changed.map(
    (field): RecordFault => ({ part: 'entry', seq, field, message: alteredText(entry, seq, field) }),
  );
  if (altered.length > 0) return altered;
  if (!hashFits)
    return [
      {
        part: 'entry',
        seq,
        message: `Entry ${seq} (${entry.body.kind}) does not fit its hash: it was altered together with its fingerprints.`,
      },
    ];
  return [
    {
      part: 'entry',
      seq,
      message: `Entry ${seq} does not follow entry ${seq - 1}: an entry was removed, added or exchanged here.`,
    },
  ];
}

function alteredText(entry: Entry, seq: number, field: string): string {
  const leaf = leafAt(entry, field);
  const now = leaf === undefined ? 'is missing' : `now reads ${JSON.stringify(leaf)}`;
  return `Entry ${seq} (${entry.body.kind}): ${field} ${now}, which is not what was recorded.`;
}

function traceFaults(file: RecordFile): readonly RecordFault[] {
  const digests = new Map(
    file.entries.flatMap(({ id, body }) =>
      body.kind === 'pull' && body.pull.trace ? [[id, body.pull.trace.sha256] as const] : [],
    ),
  );
  const missing = [...digests.keys()].filter((id) => !(id in file.traces));
  const altered = Object.entries(file.traces).filter(([id, trace]) => digests.get(id) !== digestOf(trace));
  return [
    ...missing.map((id): RecordFault => ({ part: 'trace', field: id, message: `The trace of pull ${id} is missing.` })),
    ...altered.map(
      ([id]): RecordFault => ({
        part: 'trace',
        field: id,
        message: digests.has(id)
          ? `The trace of pull ${id} was altered.`
          : `The trace ${id} belongs to no pull of this record.`,
      }),
    ),
  ];
}

function sealFaults(file: RecordFile): readonly RecordFault[] {
  const last = file.entries.at(-1)!;
  const closed = last.body.kind === 'closed';
  const { seal } = file;
  if (!seal) return closed ? [{ part: 'seal', message: 'The job was closed, but the seal is missing.' }] : [];
  if (!closed)
    return [
      {
        part: 'seal',
        message: 'A seal stands under a job that was not closed: entries at the end were removed or added.',
      },
    ];
  return sealHolds(seal, last)
    ? []
    : [{ part: 'seal', message: 'The signature does not fit: the seal, the key or the last entry was altered.' }];
}
