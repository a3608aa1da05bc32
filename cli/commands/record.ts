import { readFileSync } from 'node:fs';
import { invalid, ok, type Result } from '@clampwright/core/failure';
import { type Verification, verifyRecord } from '@clampwright/core/record';
import { endWith } from '../say.ts';

/** `clampwright record verify FILE`: no server, no database. Exit code 0 whole, 1 altered or not readable. */
export async function verify(file: string, options: { readonly json?: boolean; readonly key?: string }): Promise<void> {
  const text = readUtf8(file);
  if (!text.ok) return endWith(text.failure);
  const verification = withKey(verifyRecord(text.value), options.key);
  process.stdout.write(options.json ? `${JSON.stringify(verification, null, 2)}\n` : report(file, verification));
  process.exitCode = verification.whole ? 0 : 1;
}

function readUtf8(file: string): Result<string> {
  let bytes: Buffer;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    return invalid(
      'file',
      `${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`,
      'an exported record',
    );
  }
  try {
    return ok(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes));
  } catch {
    return ok(bytes.toString('utf8'));
  }
}

const plain = (fingerprint: string): string => fingerprint.replaceAll(/\s/g, '').toLowerCase();

/** A record may be whole and yet be somebody else's: the key is compared where the reader knows it. */
function withKey(verification: Verification, key: string | undefined): Verification {
  if (key === undefined) return verification;
  const found = verification.keyFingerprint;
  if (found !== undefined && plain(found) === plain(key)) return verification;
  const message =
    found === undefined
      ? 'No seal stands under this record, so no key can be compared.'
      : `The record was sealed with another key: ${found}.`;
  return { ...verification, whole: false, faults: [...verification.faults, { part: 'seal', message }] };
}

function report(file: string, verification: Verification): string {
  const lines = [verdictLine(file, verification), ...verification.faults.map(({ message }) => `  ✗ ${message}`)];
  const { title, entryCount, signedAt, keyFingerprint, headHash } = verification;
  if (title !== undefined) lines.push(`  job          ${title}`);
  if (entryCount !== undefined) lines.push(`  entries      ${entryCount}`);
  if (headHash !== undefined) lines.push(`  last hash    ${headHash}`);
  if (signedAt !== undefined) lines.push(`  sealed       ${signedAt}`);
  if (keyFingerprint !== undefined)
    lines.push(`  key          ${keyFingerprint}  (compare it with the workshop’s own)`);
  return `${lines.join('\n')}\n`;
}

function verdictLine(file: string, { whole, sealed, faults }: Verification): string {
  if (!whole) return `ALTERED: ${file} (${faults.length} ${faults.length === 1 ? 'finding' : 'findings'})`;
  return sealed
    ? `WHOLE: ${file} is unchanged since it was sealed.`
    : `NOT SEALED: ${file} is consistent, but the job is not closed; nothing proves it.`;
}
