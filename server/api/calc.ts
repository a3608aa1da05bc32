import { CALCULATIONS, inputJsonSchema, namesOwnRow, outputJsonSchema } from '@clampwright/core/calculations';
import { ok } from '@clampwright/core/failure';
import { z } from 'zod';
import { answerTo, type CalcQuestion } from '../calc/answer-to.ts';
import { answeredBeside } from '../calc/answered-beside.ts';
import type { Deps } from '../deps.ts';
import { anybody } from './access.ts';
import { json } from './gives.ts';
import type { Outcome } from './problem.ts';
import { type Route, route } from './route.ts';

type Entry = (typeof CALCULATIONS)[number];
const MAXIMUM_BYTES = 16 * 2 ** 20;
/** A longer list is answered beside. */
const MOST_AT_ONCE = 20;

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
export const calculations: readonly Route[] = CALCULATIONS.map(({ name, title, input, output, isLong = false }) =>
  route({
    method: 'post',
    path: `/calc/${name}`,
    title,
    access: anybody,
    takes: z.object({ body: z.unknown() }),
    bodyShown: z.union([input, z.array(input)]),
    gives: json(z.union([output, z.array(z.union([output, refusedItem]))])),
    maximumBytes: MAXIMUM_BYTES,
    handle: ({ body }, { store }, _, { req }) => {
      const isMany = Array.isArray(body) && body.length > MOST_AT_ONCE;
      return calculated({ name, input: body }, store, isLong || isMany ? req.raw.signal : undefined);
    },
  }),
);

/**
 * Own bolts, materials and lubricants may be named; they are looked up where something is named that is not shipped.
 *
 * @param beside until when somebody waits, of a calculation that is not done here
 */
async function calculated(
  asked: Omit<CalcQuestion, 'rows'>,
  { ownRows }: Deps['store'],
  beside: AbortSignal | undefined,
): Promise<Outcome<unknown>> {
  const rows = namesOwnRow(asked.input) ? await ownRows.list() : ok([]);
  if (!rows.ok) return rows;
  const question = { ...asked, rows: rows.value };
  return beside ? answeredBeside(question, beside) : answerTo(question);
}
