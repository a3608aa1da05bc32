import { readFileSync } from 'node:fs';
import { invalid, ok, type Result } from '@clampwright/core/failure';

/** Everything on standard input, as text. */
export const standardInput = (): string => readFileSync(0, 'utf8');

/** Reads JSON, or says where it stops being JSON. */
export function readJsonText(text: string): Result<unknown> {
  if (text.trim() === '') return invalid('(standard input)', 'nothing came in', 'a JSON object, or an array of them');
  try {
    const value: unknown = JSON.parse(text);
    return ok(value);
  } catch (error) {
    return invalid(
      '(standard input)',
      `not JSON: ${error instanceof Error ? error.message : String(error)}`,
      'a JSON object, or an array of them',
    );
  }
}
