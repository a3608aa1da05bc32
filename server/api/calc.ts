import {
  CALCULATIONS,
  type CalculationName,
  calculate,
  calculateMany,
  inputJsonSchema,
  namesOwnRow,
  outputJsonSchema,
} from '@clampwright/core/calculations';
import { ok } from '@clampwright/core/failure';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { anybody } from './access.ts';
import { json } from './gives.ts';
import type { Outcome } from './problem.ts';
import { type Route, route } from './route.ts';

type Entry = (typeof CALCULATIONS)[number];
const MAXIMUM_BYTES = 16 * 2 ** 20;

export const listCalculations = route({
  method: 'get',
  path: '/calc',
  title: 'list the calculations',
  access: anybody,
  takes: z.object({}),
  gives: json(
    z.array(
      z.strictObject({
        name: z.string(),
        title: z.string(),
        cautions: z.array(z.string()),
        sources: z.array(z.string()),
        example: z.unknown(),
        input: z.record(z.string(), z.unknown()).describe('JSON Schema (2020-12)'),
        output: z.record(z.string(), z.unknown()).describe('JSON Schema (2020-12)'),
      }),
    ),
  ),
  handle: () => ok(CALCULATIONS.map(shown)),
});

const shown = ({ name, title, cautions, sources, example }: Entry) => ({
  name,
  title,
  cautions,
  sources,
  example,
  input: { ...inputJsonSchema(name) },
  output: { ...outputJsonSchema(name) },
});

const refusedItem = z.strictObject({
  error: z.looseObject({ kind: z.string() }).describe('what is wrong with the input in this place'),
});

/** One route for each calculation: an array in gives an array out. */
export const calculations: readonly Route[] = CALCULATIONS.map(({ name, title, input, output }) =>
  route({
    method: 'post',
    path: `/calc/${name}`,
    title,
    access: anybody,
    takes: z.object({ body: z.unknown() }),
    bodyShown: z.union([input, z.array(input)]),
    gives: json(z.union([output, z.array(z.union([output, refusedItem]))])),
    maximumBytes: MAXIMUM_BYTES,
    handle: ({ body }, { store }) => calculated(name, body, store),
  }),
);

/** Own bolts, materials and lubricants may be named; they are looked up where something is named that is not shipped. */
async function calculated(
  name: CalculationName,
  input: unknown,
  { ownRows }: Deps['store'],
): Promise<Outcome<unknown>> {
  const rows = namesOwnRow(input) ? await ownRows.list() : ok([]);
  if (!rows.ok) return rows;
  return Array.isArray(input) ? ok(calculateMany(name, input, rows.value)) : calculate(name, input, rows.value);
}
