import { existsSync } from 'node:fs';
import {
  CALCULATIONS,
  calculate,
  calculateMany,
  inputJsonSchema,
  namesOwnRow,
  outputJsonSchema,
} from '@clampwright/core/calculations';
import { invalid, ok, type Result } from '@clampwright/core/failure';
import type { OwnRow } from '@clampwright/core/fastener';
import type { Outcome } from '@clampwright/server';
import { dataFolder } from '../data-folder.ts';
import { readJson, standardInput } from '../input.ts';
import { answer, toJson } from '../say.ts';
import { table } from '../table.ts';

type Entry = (typeof CALCULATIONS)[number];

interface Wanted {
  readonly data?: string;
  readonly input?: string;
  readonly schema?: true;
}

/** `clampwright calc NAME`: JSON in, JSON out. */
export async function calc(name: string | undefined, { data, input, schema }: Wanted): Promise<Outcome<0>> {
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
  const result = await calculated(entry, input, data);
  return result.ok ? said(toJson(result.value)) : result;
}

async function calculated(
  { name }: Entry,
  given: string | undefined,
  data: string | undefined,
): Promise<Outcome<unknown>> {
  const source = given === undefined ? await standardInput() : ok(given);
  if (!source.ok) return source;
  const field = given === undefined ? '(standard input)' : '--input';
  const input = readJson(source.value, field, 'a JSON object, or an array of them');
  if (!input.ok) return input;
  const rows = namesOwnRow(input.value) ? await ownRowsIn(data) : ok([]);
  if (!rows.ok) return rows;
  return Array.isArray(input.value)
    ? ok(calculateMany(name, input.value, rows.value))
    : calculate(name, input.value, rows.value);
}

/** The workshop's own rows, none where there is no workshop and none was asked for; the store is loaded for them alone. */
async function ownRowsIn(asked: string | undefined): Promise<Outcome<readonly OwnRow[]>> {
  const folder = dataFolder(asked);
  if (asked === undefined && !existsSync(folder)) return ok([]);
  const { withStore } = await import('../open.ts');
  return withStore(folder, (store) => store.ownRows.list());
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
