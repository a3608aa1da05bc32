import type { z } from 'zod';
import { describedAt } from './described.ts';
import { invalid, ok, type Result } from './failure.ts';

/**
 * Reads unknown input through a schema; the first refusal becomes an `invalid` failure that names the field, says
 * what is wrong with it and what it wants.
 *
 * @param schema what is wanted; `.describe()` on a field is told with what it expects, and a message given in the
 *               schema goes before ours
 * @param input  anything
 */
export function parse<T>(schema: z.ZodType<T>, input: unknown): Result<T> {
  const read = schema.safeParse(input, { error: messageOf });
  if (read.success) return ok(read.data);
  const issue = read.error.issues.map((found) => innermost(found))[0];
  if (!issue) throw new Error('a refusal without an issue');
  const wants = expectation(issue);
  const description = describedAt(schema, issue.path);
  const expected = description === undefined ? wants : wants === undefined ? description : `${wants}: ${description}`;
  return invalid(fieldName(issue), issue.message, expected ?? issue.message);
}

/** `stages[0].torque.lowerNm`; for a key that is not known, that key. */
function fieldName(issue: z.core.$ZodIssue): string {
  const unknownKeys = issue.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [];
  const segments = [...issue.path, ...unknownKeys].map((segment, index) => {
    if (typeof segment === 'number') return `[${segment}]`;
    return `${index === 0 ? '' : '.'}${String(segment)}`;
  });
  return segments.join('') || '(whole input)';
}

/** Of the ways in which a union refused, the one that got furthest into the input. */
function innermost(issue: z.core.$ZodIssue): z.core.$ZodIssue {
  if (issue.code !== 'invalid_union') return issue;
  const within = issue.errors
    .flatMap((branch) => branch.slice(0, 1))
    .map((found) => innermost(found))
    .filter(isOfTheRightType);
  const deepest = within.toSorted((a, b) => b.path.length - a.path.length)[0];
  return deepest === undefined ? issue : { ...deepest, path: [...issue.path, ...deepest.path] };
}

/** A string that stands for an object, say, was not meant in that way at all. */
const isOfTheRightType = ({ code, path }: z.core.$ZodIssue): boolean => code !== 'invalid_type' || path.length > 0;

/** Our words for a refusal; those of the schema, where it has some, go before them. */
function messageOf(issue: z.core.$ZodRawIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.input === undefined
        ? 'It is missing.'
        : `It is ${nameOf(issue.input)}, not ${article(issue.expected)}.`;
    case 'too_small':
      return ofSize(issue.input, issue.origin, { number: 'small', string: 'short', array: 'few' });
    case 'too_big':
      return ofSize(issue.input, issue.origin, { number: 'large', string: 'long', array: 'many' });
    case 'invalid_value':
      return issue.input === undefined ? 'It is missing.' : `${nameOf(issue.input)} is not among the choices.`;
    case 'unrecognized_keys':
      return `There is no field ${issue.keys.join(', ')} here.`;
    case 'invalid_union':
      return issue.input === undefined ? 'It is missing.' : `${nameOf(issue.input)} fits none of the forms.`;
    case 'invalid_format':
    case 'not_multiple_of':
    case 'invalid_key':
    case 'invalid_element':
    case 'custom':
      return `${nameOf(issue.input)} is not of the right form.`;
  }
}

const article = (type: string): string => (/^[aeiou]/.test(type) ? `an ${type}` : `a ${type}`);

function nameOf(input: unknown): string {
  if (input === null) return 'null';
  if (Array.isArray(input)) return 'an array';
  if (typeof input === 'string') return `“${input.length > 60 ? `${input.slice(0, 60)}…` : input}”`;
  return typeof input === 'number' || typeof input === 'boolean' ? String(input) : article(typeof input);
}

function ofSize(
  input: unknown,
  origin: string,
  words: Readonly<Record<'number' | 'string' | 'array', string>>,
): string {
  if (origin === 'string') return `It is too ${words.string}.`;
  return origin === 'array' ? `It has too ${words.array} elements.` : `${nameOf(input)} is too ${words.number}.`;
}

function expectation(issue: z.core.$ZodIssue): string | undefined {
  switch (issue.code) {
    case 'invalid_type':
      return article(issue.expected);
    case 'too_small':
      return `${issue.inclusive === false ? 'more than' : 'at least'} ${amount(issue.minimum, issue.origin)}`;
    case 'too_big':
      return `${issue.inclusive === false ? 'less than' : 'at most'} ${amount(issue.maximum, issue.origin)}`;
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`;
    case 'unrecognized_keys':
      return 'no such field';
    case 'invalid_format':
      return issue.format === 'regex' ? undefined : issue.format;
    case 'not_multiple_of':
      return `a multiple of ${issue.divisor}`;
    case 'invalid_union':
    case 'invalid_key':
    case 'invalid_element':
      return undefined;
    case 'custom':
      return typeof issue.params?.['expected'] === 'string' ? issue.params['expected'] : undefined;
  }
}

function amount(size: number | bigint, origin: string): string {
  if (origin === 'string') return `${size} character${size === 1 ? '' : 's'}`;
  return origin === 'array' ? `${size} element${size === 1 ? '' : 's'}` : String(size);
}
