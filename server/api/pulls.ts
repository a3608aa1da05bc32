import type { Device } from '@clampwright/core/device';
import { invalid, ok, parse, type Result } from '@clampwright/core/failure';
import type { ToldPull } from '@clampwright/core/line';
import { convert } from '@clampwright/core/quantity';
import type { Context } from 'hono';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { counted } from '../devices/inbox.ts';
import { linesIn } from '../devices/lines-in.ts';
import { type Taken, takePulls } from '../devices/take.ts';
import { anybody } from './access.ts';
import { readJson } from './body.ts';
import { type SentPull, sentPullSchema, type TakenPull, takenPullSchema } from './contract.ts';
import { keyHashOf } from './devices.ts';
import { media } from './gives.ts';
import { type Outcome, problemOf } from './problem.ts';
import { route } from './route.ts';

const MAXIMUM_BYTES = 16 * 2 ** 20;
const MOST_AT_ONCE = 10_000;
const JSON_LINES = ['application/jsonl', 'application/x-ndjson', 'application/json-lines'] as const;

export const sendPulls = route({
  method: 'post',
  path: '/pulls',
  title: 'take pulls of a device, with its key as bearer: one, a list, or JSON lines answered line by line',
  access: anybody,
  takes: z.object({}),
  streams: ['application/json', ...JSON_LINES],
  bodyShown: z.union([sentPullSchema, z.array(sentPullSchema)]),
  gives: media('application/json', z.union([takenPullSchema, z.array(takenPullSchema)])),
  handle: async (_, deps, __, c) => {
    const device = await deviceOf(c, deps);
    if (!device.ok) return device;
    deps.devices.standing(device.value.id)?.state('connected');
    const type = c.req.header('content-type')?.split(';')[0] ?? '';
    if (JSON_LINES.some((lines) => lines === type)) return ok(answerLines(c, deps, device.value));
    const body = await readJson(c.req.raw, MAXIMUM_BYTES);
    if (!body.ok) return body;
    return answerBody(deps, device.value, body.value);
  },
});

const BEARER = /^Bearer (\S{20,100})$/;

async function deviceOf(c: Context, { store }: Deps): Promise<Outcome<Device>> {
  const key = BEARER.exec(c.req.header('authorization') ?? '')?.[1];
  const device = key === undefined ? undefined : await store.devices.byKey(keyHashOf(key));
  if (device?.ok) return device;
  const message =
    key === undefined ? 'Send the key of the device as bearer.' : 'No device has this key; it may have been revoked.';
  return { ok: false, failure: { kind: 'not-signed-in', message } };
}

/** One pull is answered by itself, a list by a list in the same order. */
async function answerBody(deps: Deps, device: Device, body: unknown): Promise<Outcome<Response>> {
  const items: readonly unknown[] = Array.isArray(body) ? body : [body];
  if (items.length > MOST_AT_ONCE)
    return invalid(
      '(whole input)',
      `${items.length} pulls are too many at once`,
      `at most ${MOST_AT_ONCE}, or JSON lines`,
    );
  const taken = await takeItems(deps, device, items);
  if (Array.isArray(body)) return ok(Response.json(taken.map(told), NO_STORE));
  const [only] = taken;
  if (only?.state === 'refused') return { ok: false, failure: only.failure };
  return ok(Response.json(only && told(only), { ...NO_STORE, status: only?.state === 'added' ? 201 : 200 }));
}

const NO_STORE = { headers: { 'cache-control': 'no-store' } };

/** Each line is answered by one, and only once its pull is stored; whoever reads the answers slowly is read slowly. */
function answerLines(c: Context, deps: Deps, device: Device): Response {
  const batches = linesIn(c.req.raw.body);
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>({
    pull: async (room) => {
      const { done, value } = await batches.next();
      if (done) return room.close();
      const taken = await takeItems(deps, device, value);
      room.enqueue(encoder.encode(taken.map((one) => `${JSON.stringify(told(one))}\n`).join('')));
    },
    cancel: async () => {
      await batches.return(undefined);
    },
  });
  return new Response(body, { headers: { 'content-type': 'application/jsonl', 'cache-control': 'no-store' } });
}

/** Parses, then takes what could be parsed; the answers stand in the order of the items. */
async function takeItems(deps: Deps, device: Device, items: readonly unknown[]): Promise<readonly Taken[]> {
  const standing = deps.devices.standing(device.id);
  const read = items.map(readItem);
  const good = read.flatMap((one) => (one.ok ? [one.value] : []));
  const taken = (await takePulls(deps, device, good)).values();
  const last = items.at(-1);
  standing?.heard(rawOf(last), deps.now().toISOString());
  return read.map((one): Taken => {
    if (!one.ok) {
      standing?.count('unreadable');
      standing?.fault({ kind: 'other', message: problemOf(one.failure).detail });
      return { state: 'refused', failure: one.failure };
    }
    const outcome = taken.next().value ?? BROKEN;
    if (standing) counted(standing, outcome);
    return outcome.state === 'refused' ? { ...outcome, id: one.value.id } : outcome;
  });
}

const BROKEN: Taken = {
  state: 'refused',
  failure: { kind: 'broken', message: 'Something broke here. Send it again.' },
};
const LONGEST_RAW = 300;

const rawOf = (item: unknown): string =>
  (typeof item === 'string' ? item : (JSON.stringify(item) ?? '')).slice(0, LONGEST_RAW);

/** An item of a list, or a line of JSON lines as text. */
function readItem(item: unknown): Result<ToldPull> {
  const value = typeof item === 'string' ? jsonIn(item) : ok(item);
  const sent = value.ok ? parse(sentPullSchema, value.value) : value;
  return sent.ok ? toldOf(sent.value) : sent;
}

function jsonIn(text: string): Result<unknown> {
  try {
    return ok(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return invalid('(whole input)', `this line is no JSON: ${error.message}`, 'one pull as JSON on each line');
  }
}

function toldOf(sent: SentPull): Result<ToldPull> {
  const torqueNm = convert(sent.torque, sent.torqueUnit, 'N·m');
  if (!torqueNm.ok) return torqueNm;
  const angleDeg = sent.angle === undefined ? undefined : convert(sent.angle, sent.angleUnit, 'deg');
  if (angleDeg && !angleDeg.ok) return angleDeg;
  return ok({
    id: sent.id,
    from: sent.wrench === undefined ? [] : [sent.wrench],
    position: sent.position,
    takenAt: sent.takenAt === undefined ? undefined : new Date(sent.takenAt).toISOString(),
    torque: { text: String(sent.torque), unit: sent.torqueUnit, value: torqueNm.value },
    ...(angleDeg ? { angle: { text: String(sent.angle), unit: sent.angleUnit, value: angleDeg.value } } : {}),
    fastestDegPerS: sent.fastestDegPerS,
    trace: sent.trace,
    samplesLost: 0,
  });
}

function told(taken: Taken): TakenPull {
  if (taken.state === 'refused') return { id: taken.id ?? null, state: 'refused', problem: problemOf(taken.failure) };
  if (taken.state === 'compared') return { id: taken.id ?? null, state: 'compared' };
  return { id: taken.id, state: taken.state, verdict: taken.verdict };
}
