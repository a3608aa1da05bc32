import { isUtf8 } from 'node:buffer';
import { hash } from 'node:crypto';
import { ok, type Result } from '@clampwright/core/failure';
import { type RecordFault, type Verification, verifyRecord } from '@clampwright/core/record';
import { readBytes } from '../input.ts';
import { answer, type ExitCode, remark, toJson } from '../say.ts';

/** What takes about a second (5 MB a second, measured with Node 20.20 on two shared cores). */
const LARGE_BYTES = 5e6;

interface Wanted {
  readonly json?: true;
  readonly key?: string;
}

/** `clampwright record verify FILE`: no server, no database. Exit code 0 whole, 1 not so, 3 whole without a seal. */
export async function verify(file: string, { json, key }: Wanted): Promise<Result<ExitCode>> {
  const bytes = readBytes(file, 'file', 'an exported record');
  if (!bytes.ok) return bytes;
  if (bytes.value.length > LARGE_BYTES) remark(`Verifying ${(bytes.value.length / 1e6).toFixed(0)} MB …`);
  const found = verifyBytes(bytes.value);
  const verification = key === undefined ? found : { ...found, ...comparedWith(key, found) };
  const line = `${standing(bytes.value, found, verification)}: ${file}`;
  answer(json ? toJson(verification) : [line, ...findings(verification), ...facts(verification)].join('\n'));
  if (!verification.whole) return ok(1);
  return ok(verification.sealed ? 0 : 3);
}

const withFault = ({ faults }: Verification, part: RecordFault['part'], message: string) => ({
  whole: false,
  faults: [...faults, { part, message }],
});

/** Bytes that are no text are read as a replacement character, so that two files could read alike. */
function verifyBytes(bytes: Buffer): Verification {
  const read = verifyRecord(bytes.toString('utf8'), (text) => hash('sha256', text));
  return isUtf8(bytes) ? read : { ...read, ...withFault(read, 'file', 'The file holds bytes that are not UTF-8.') };
}

const plain = (fingerprint: string): string => fingerprint.replaceAll(/\s/g, '').toLowerCase();

/** A record may be whole and yet be somebody else's: the key is compared where the reader knows it. */
function comparedWith(key: string, found: Verification): Partial<Verification> {
  const { keyFingerprint } = found;
  if (keyFingerprint === undefined)
    return withFault(found, 'seal', 'No seal could be read, so no key can be compared.');
  if (plain(keyFingerprint) === plain(key)) return {};
  return withFault(found, 'seal', `The key that sealed it is ${keyFingerprint}, not ${key}.`);
}

/** What the file is, in capitals, so that nobody reads on without having seen it. */
function standing(bytes: Buffer, found: Verification, { whole, sealed }: Verification): string {
  if (!bytes.includes('"clampwright-record"')) return 'NOT A RECORD';
  if (!found.whole) return 'ALTERED';
  if (!sealed) return 'NOT SEALED (the job is not closed, so nothing proves it)';
  return whole ? 'WHOLE and unchanged since it was sealed' : 'WHOLE, BUT SEALED BY ANOTHER KEY';
}

const findings = ({ faults }: Verification): readonly string[] => faults.map(({ message }) => `  ✗ ${message}`);

function facts({ title, entryCount, headHash, signedAt, keyFingerprint }: Verification): readonly string[] {
  const all: readonly (readonly [string, string | number | undefined])[] = [
    ['job', title],
    ['entries', entryCount],
    ['last hash', headHash],
    ['sealed', signedAt],
    ['key', keyFingerprint && `${keyFingerprint}  (compare it with the workshop’s own)`],
  ];
  return all.flatMap(([name, value]) => (value === undefined ? [] : [`  ${name.padEnd(9)}  ${value}`]));
}
