import { lstatSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { failed, invalid, ok, type Result } from '@clampwright/core/failure';

/**
 * Writes a file so that it is there whole or not at all: under another name first, in the same folder.
 *
 * @param target path; `-` for standard output
 * @param field  the option that named it
 */
export function writeWhole(target: string, content: string | Uint8Array, field: string): Result<undefined> {
  if (target === '-') {
    process.stdout.write(content);
    return ok(undefined);
  }
  if (lstatSync(target, { throwIfNoEntry: false })?.isFile() === false)
    return invalid(field, `${target} is there and is not a file`, 'a file, or - for standard output');
  const part = `${target}.part`;
  try {
    writeFileSync(part, content);
    renameSync(part, target);
    return ok(undefined);
  } catch (error) {
    rmSync(part, { force: true });
    return failed({
      kind: 'unavailable',
      message: `${target} cannot be written: ${error instanceof Error ? error.message : String(error)}`,
      remedy: `Choose another file with ${field}.`,
    });
  }
}
