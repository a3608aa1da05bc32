import type { z } from 'zod';
import { invalid, ok, type Result } from './failure.ts';

const path = (segments: readonly PropertyKey[]): string =>
  segments
    .map((segment, index) =>
      typeof segment === 'number' ? `[${segment}]` : `${index === 0 ? '' : '.'}${String(segment)}`,
    )
    .join('');

/**
 * Reads unknown input through a schema; the first refusal becomes an `invalid` failure that names the field.
 *
 * @param schema what is wanted; `.describe()` on a field is told as what it expects
 * @param input  anything
 */
export function parse<T>(schema: z.ZodType<T>, input: unknown): Result<T> {
  const read = schema.safeParse(input);
  if (read.success) return ok(read.data);
  const issue = read.error.issues[0];
  if (!issue) throw new Error('a refusal without an issue');
  const unknownKeys = issue.code === 'unrecognized_keys' ? issue.keys : [];
  const field = path([...issue.path, ...unknownKeys.slice(0, 1)]) || '(whole input)';
  return invalid(field, issue.message, expectation(issue));
}

function expectation(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected;
    case 'too_small':
      return `${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}`;
    case 'too_big':
      return `${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}`;
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`;
    case 'unrecognized_keys':
      return 'no such field';
    case 'invalid_format':
      return issue.format;
    case 'not_multiple_of':
      return `a multiple of ${issue.divisor}`;
    case 'invalid_union':
    case 'invalid_key':
    case 'invalid_element':
    case 'custom':
      return issue.message;
  }
}
