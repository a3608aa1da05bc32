import { invalid, ok, parse, type Result } from '@clampwright/core/failure';
import { guessMapping, isZone, type Mapping, mappingSchema } from '@clampwright/intake/file';
import type { Store } from '@clampwright/store';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { readBytes } from './body.ts';
import { guessQuerySchema, guessSchema } from './contract.ts';
import { type Frozen, json } from './gives.ts';
import { route } from './route.ts';

export const listMappings = route({
  method: 'get',
  path: '/mappings',
  title: 'list the saved mappings of files',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(mappingSchema)),
  handle: async (_, { store }) => {
    const saved = await store.mappings.list();
    if (!saved.ok) return saved;
    const read = saved.value.map(({ mapping }) => mappingSchema.parse(mapping));
    return ok(read);
  },
});

export const saveMapping = route({
  method: 'post',
  path: '/mappings',
  title: 'save a mapping under its name',
  access: onlyFor('technician', 'lead'),
  takes: z.object({ body: mappingSchema }),
  gives: json(mappingSchema),
  handle: async ({ body }, { store }, { demo }): Promise<Result<Frozen<Mapping>>> => {
    const saved = await store.mappings.save(body.name, body, { demo });
    return saved.ok ? ok(body) : saved;
  },
});

const GUESSED_FROM_BYTES = 2 ** 20;

export const guess = route({
  method: 'post',
  path: '/mappings/guess',
  title: 'propose how a file is to be read',
  access: anybody,
  takes: z.object({ query: guessQuerySchema }),
  streams: ['text/csv', 'application/octet-stream'],
  gives: json(guessSchema),
  handle: async ({ query }, { now }, _, c) => {
    if (!isZone(query.zone))
      return invalid('zone', `${query.zone} is no time zone`, 'an IANA time zone such as Europe/Zurich');
    const bytes = await readBytes(c.req.raw, GUESSED_FROM_BYTES);
    return bytes.ok ? guessMapping(bytes.value, { zone: query.zone, now: now().toISOString() }) : bytes;
  },
});

function mappingFromText(text: string): Result<Mapping> {
  try {
    return parse(mappingSchema, JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return invalid('mapping', `this is no JSON: ${error.message}`, 'a mapping as JSON, or the name of a saved one');
  }
}

/** The mapping that is meant: itself as JSON, or saved under this name. */
export async function mappingMeant(store: Store, text: string): Promise<Result<Mapping>> {
  if (text.trimStart().startsWith('{')) return mappingFromText(text);
  const saved = await store.mappings.get(text);
  return saved.ok ? parse(mappingSchema, saved.value.mapping) : saved;
}
