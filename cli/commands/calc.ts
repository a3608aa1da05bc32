import {
  CALCULATIONS,
  calculate,
  calculateMany,
  inputJsonSchema,
  outputJsonSchema,
} from '@clampwright/core/calculations';
import { invalid, ok, type Result } from '@clampwright/core/failure';
import { readJson, standardInput } from '../input.ts';
import { answer, toJson } from '../say.ts';
import { table } from '../table.ts';

type Entry = (typeof CALCULATIONS)[number];

interface Wanted {
  readonly input?: string;
  readonly schema?: true;
}

/** `clampwright calc NAME`: JSON in, JSON out. */
export async function calc(name: string | undefined, { input, schema }: Wanted): Promise<Result<0>> {
  if (name === undefined) return said(list());
  const entry = CALCULATIONS.find((candidate) => candidate.name === name);
  if (!entry)
    return invalid(
      'name',
      `there is no calculation ${name}`,
      `one of ${CALCULATIONS.map((known) => known.name).join(', ')}`,
    );
  if (schema) return said(toJson({ input: inputJsonSchema(entry.name), output: outputJsonSchema(entry.name) }));
  if (input === undefined && process.stdin.isTTY) return said(explanation(entry));
  const result = await calculated(entry, input);
  return result.ok ? said(toJson(result.value)) : result;
}

async function calculated({ name }: Entry, given: string | undefined): Promise<Result<unknown>> {
  const source = given === undefined ? await standardInput() : ok(given);
  if (!source.ok) return source;
  const field = given === undefined ? '(standard input)' : '--input';
  const input = readJson(source.value, field, 'a JSON object, or an array of them');
  if (!input.ok) return input;
  return Array.isArray(input.value) ? ok(calculateMany(name, input.value)) : calculate(name, input.value);
}

function said(text: string): Result<0> {
  answer(text);
  return ok(0);
}

const list = (): string =>
  table(
    ['calculation', ''],
    CALCULATIONS.map(({ name, title }) => [name, title]),
  );

const explanation = ({ name, title, cautions, sources, example }: Entry): string =>
  [
    title,
    '',
    ...cautions.map((caution) => `Caution: ${caution}`),
    ...sources.map((source) => `Source: ${source}`),
    '',
    `echo '${JSON.stringify(example)}' | clampwright calc ${name}`,
  ].join('\n');
