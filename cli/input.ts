import { readFileSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { invalid, ok, type Result } from '@clampwright/core/failure';

const because = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Everything on standard input, as text; a byte order mark is passed over. */
export async function standardInput(): Promise<Result<string>> {
  try {
    return ok(await text(process.stdin));
  } catch (error) {
    return invalid('(standard input)', `it cannot be read: ${because(error)}`, 'JSON');
  }
}

/** The bytes of a file that the command line names as `field`. */
export function readBytes(file: string, field: string, wanted: string): Result<Buffer> {
  try {
    return ok(readFileSync(file));
  } catch (error) {
    return invalid(field, `${file} cannot be read: ${because(error)}`, wanted);
  }
}

/** Reads JSON, or says where it stops being JSON. */
export function readJson(source: string, field: string, wanted: string): Result<unknown> {
  if (source.trim() === '') return invalid(field, 'nothing came in', wanted);
  try {
    const value: unknown = JSON.parse(source);
    return ok(value);
  } catch (error) {
    return invalid(field, `not JSON: ${because(error)}`, wanted);
  }
}
