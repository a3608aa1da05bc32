import { parse } from '../failure/parse.ts';
import { hashOfEntry, NO_HASH } from './chain.ts';
import { digestOf, type Sha256, sha256Hex } from './digest.ts';
import type { Entry } from './entry.ts';
import { recordText } from './export.ts';
import { type RecordFile, recordFileSchema } from './file.ts';
import { changedLeaves, leafAt } from './locate.ts';
import { type JsonBreak, readJson, readNatively } from './read-json.ts';
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
 * @param sha256 of the platform, where it has one that answers at once
 * @source chain of SHA-256 (FIPS 180-4) over canonical JSON (RFC 8785), signature Ed25519 (RFC 8032)
 */
export function verifyRecord(text: string, sha256: Sha256 = sha256Hex): Verification {
  const file = wellFormed(text);
  if (file) return summary(file, recordFaults(file, sha256));
  const read = readJson(text);
  return read.ok ? verifyForm(text, read.value, sha256) : notJson(read.at);
}

/** A file that is in form, read natively, which takes a tenth of the time: whatever is not is looked through anew. */
function wellFormed(text: string): RecordFile | undefined {
  const read = readNatively(text);
  const file = read && recordFileSchema.safeParse(read.value);
  return file?.success && recordText(file.data) === text ? file.data : undefined;
}

function verifyForm(text: string, value: unknown, sha256: Sha256): Verification {
  const file = parse(recordFileSchema, value);
  if (file.ok) return summary(file.value, [...formFaults(text, file.value), ...recordFaults(file.value, sha256)]);
  const { failure } = file;
  const field = failure.kind === 'invalid' ? failure.field : '';
  return broken({
    part: 'file',
    field,
    message: `${field} is not as a record has it${failure.kind === 'invalid' ? `: ${failure.message}` : ''}`.replace(
      /\.?$/,
      '.',
    ),
    ...seqOf(field),
  });
}

function notJson({ offset, path, wants }: JsonBreak): Verification {
  const where = path === '' ? '' : `, in ${path}`;
  return broken({
    part: 'file',
    field: path,
    message: `The file stops being JSON at character ${offset + 1}${where}: ${wants} should stand there.`,
  });
}

/** What in the content of a record is not as it was sealed: chain, traces, seal. */
export const recordFaults = (file: RecordFile, sha256: Sha256 = sha256Hex): readonly RecordFault[] => [
  ...chainFaults(file, sha256),
  ...traceFaults(file, sha256),
  ...sealFaults(file),
];

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
  const right = recordText(file);
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

function chainFaults(file: RecordFile, sha256: Sha256): readonly RecordFault[] {
  const faults: RecordFault[] = [];
  if (file.entries[0]?.body.kind !== 'opened')
    faults.push({ part: 'entry', seq: 1, message: 'A record begins with the sheet of its job.' });
  if (file.fingerprints.length !== file.entries.length)
    faults.push({
      part: 'fingerprint',
      message: `${file.fingerprints.length} fingerprints stand for ${file.entries.length} entries.`,
    });
  for (const [index, entry] of file.entries.entries()) faults.push(...entryFaults(file, entry, index, sha256));
  return faults;
}

function entryFaults(file: RecordFile, entry: Entry, index: number, sha256: Sha256): readonly RecordFault[] {
  const seq = index + 1;
  const changed = changedLeaves(entry, file.fingerprints[index] ?? {}, sha256);
  const previous = file.entries[index - 1];
  const hashFits = hashOfEntry(entry, sha256) === entry.hash;
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

function traceFaults(file: RecordFile, sha256: Sha256): readonly RecordFault[] {
  const digests = new Map(
    file.entries.flatMap(({ id, body }) =>
      body.kind === 'pull' && body.pull.trace ? [[id, body.pull.trace.sha256] as const] : [],
    ),
  );
  const missing = [...digests.keys()].filter((id) => !(id in file.traces));
  const altered = Object.entries(file.traces).filter(([id, trace]) => digests.get(id) !== digestOf(trace, sha256));
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
