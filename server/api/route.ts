import { parse, type Role } from '@clampwright/core/failure';
import type { Context } from 'hono';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { personOf } from '../guard/session.ts';
import type { Access } from './access.ts';
import { readJson } from './body.ts';
import type { Gives } from './gives.ts';
import { type Outcome, problemResponse } from './problem.ts';

const MEGABYTE = 2 ** 20;

/** What can be said of a route without running it. */
export interface RouteFace {
  readonly method: 'get' | 'post' | 'delete';
  /** As in OpenAPI, below `/api/v1`: `/jobs/{id}`. */
  readonly path: `/${string}`;
  /** What it does, imperative; a person who may not do it is told so in these words. */
  readonly title: string;
  /** An object of any of `params`, `query` and `body`. */
  readonly takes: z.ZodType;
  /** The body as the document shows it, where the call below does the reading. */
  readonly bodyShown?: z.ZodType;
  /** Media types of a body that the handler reads as a stream. */
  readonly streams?: readonly string[];
}

export interface Route extends RouteFace {
  readonly roles: readonly Role[] | 'anybody';
  readonly gives: Pick<Gives<never>, 'status' | 'content'>;
  readonly answer: (c: Context, deps: Deps) => Promise<Response>;
}

interface Definition<Taken, Who, Answer> extends RouteFace {
  readonly takes: z.ZodType<Taken>;
  readonly access: Access<Who>;
  readonly gives: Gives<Answer>;
  readonly maximumBytes?: number;
  readonly handle: (taken: Taken, deps: Deps, who: Who, c: Context) => Outcome<Answer> | Promise<Outcome<Answer>>;
}

/** A route: schema in, one call, schema out. */
export function route<Taken, Who, Answer>(definition: Definition<Taken, Who, Answer>): Route {
  const { access, gives, handle, maximumBytes = MEGABYTE, ...face } = definition;
  const outcome = async (c: Context, deps: Deps): Promise<Outcome<Answer>> => {
    const person = await personOf(c, deps);
    if (!person.ok) return person;
    const who = await access.admit(person.value, definition.title, deps);
    if (!who.ok) return who;
    const taken = await take(c, definition.takes, maximumBytes);
    return taken.ok ? handle(taken.value, deps, who.value, c) : taken;
  };
  const answer = async (c: Context, deps: Deps): Promise<Response> => {
    const said = await outcome(c, deps);
    return said.ok ? gives.respond(said.value, c) : problemResponse(said.failure);
  };
  return { ...face, roles: access.roles, gives, answer };
}

export const shapeOf = (takes: z.ZodType): Readonly<Record<string, z.core.$ZodType>> =>
  takes instanceof z.ZodObject ? takes.shape : {};

async function take<Taken>(c: Context, takes: z.ZodType<Taken>, maximumBytes: number): Promise<Outcome<Taken>> {
  const body = 'body' in shapeOf(takes) ? await readJson(c.req.raw, maximumBytes) : undefined;
  if (body && !body.ok) return body;
  const taken = parse(takes, { params: c.req.param(), query: c.req.query(), body: body?.value });
  if (taken.ok || taken.failure.kind !== 'invalid') return taken;
  return { ok: false, failure: { ...taken.failure, field: withoutPart(taken.failure.field) } };
}

/** The sender knows a field by its own name, not by the part of the request it came in. */
const withoutPart = (field: string): string => field.replace(/^(?:params|query|body)\.?/, '') || '(whole input)';
