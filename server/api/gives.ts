import type { Context } from 'hono';
import { z } from 'zod';

/** A value that the handler only hands on. */
export type Frozen<T> = T extends readonly (infer Item)[]
  ? readonly Frozen<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Frozen<T[Key]> }
    : T;

/** What a route answers with, and how the answer becomes a response. */
export interface Gives<Answer> {
  readonly status: 200 | 201 | 204;
  readonly content: Readonly<Record<string, z.ZodType>>;
  readonly respond: (answer: Answer, c: Context) => Response;
}

const NO_STORE = { 'cache-control': 'no-store' };

/** A JSON document of this shape. */
export const json = <T>(schema: z.ZodType<T>, status: 200 | 201 = 200): Gives<Frozen<T>> => ({
  status,
  content: { 'application/json': schema },
  respond: (answer, c) => c.body(JSON.stringify(answer), status, { 'content-type': 'application/json', ...NO_STORE }),
});

/** Done, and nothing to say about it. */
export const nothing: Gives<unknown> = {
  status: 204,
  content: {},
  respond: (_, c) => c.body(null, 204, NO_STORE),
};

/** Bytes or text of a media type that the handler itself makes. */
export const media = (type: string, schema: z.ZodType = z.string()): Gives<Response> => ({
  status: 200,
  content: { [type]: schema },
  respond: (answer) => answer,
});
