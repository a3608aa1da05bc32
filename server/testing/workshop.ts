import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Result, Role } from '@clampwright/core/failure';
import type { JointContent } from '@clampwright/core/joint';
import { sha256Hex, uuidV8 } from '@clampwright/core/record';
import type { Wrench } from '@clampwright/core/wrench';
import { openStore, type Store } from '@clampwright/store';
import type { Hono } from 'hono';
import { pino } from 'pino';
import { createApp } from '../app.ts';
import type { Deps } from '../deps.ts';
import { hashPin } from '../guard/pin.ts';
import { depsFor } from '../start.ts';

/* The invented workshop behind the real server, on a real store in a folder of its own. For tests. */

export const PIN = '739151';
/** Hashing is dear on purpose, so everybody in the tests has the same PIN and it is hashed once. */
const pinHash = hashPin(PIN);

/** The same word gives the same identity. */
export const identity = (word: string): string => uuidV8(sha256Hex(word));

export const ROLES_AT_WORK = ['technician', 'lead', 'keeper', 'reader'] as const satisfies readonly Role[];
export const personId = (role: Role): string => identity(`person ${role}`);

export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
  /** The answer as JSON; for tests to look into with `toMatchObject` or a schema. */
  readonly body: unknown;
}

export interface Workshop {
  readonly app: Hono;
  readonly store: Store;
  /** Where the store lies. */
  readonly folder: string;
  readonly deps: Deps;
  /** Sets the clock forward. */
  readonly wait: (ms: number) => void;
  /** Asks below `/api/v1`, as somebody or as nobody. */
  readonly ask: (method: string, path: string, body?: unknown, as?: string) => Promise<Answer>;
  /** Sends a file as it is. */
  readonly askRaw: (path: string, bytes: string | Uint8Array<ArrayBuffer>, as?: string) => Promise<Answer>;
  /** The cookie of somebody who has signed in. */
  readonly signIn: (role: Role) => Promise<string>;
  readonly close: () => Promise<void>;
}

export interface WorkshopOptions {
  readonly people?: boolean;
  readonly webFolder?: string;
}

const FIRST_SHIFT_MS = Date.UTC(2026, 2, 2, 6);

export async function workshop({ people = true, webFolder }: WorkshopOptions = {}): Promise<Workshop> {
  const folder = await mkdtemp(join(tmpdir(), 'clampwright-server-'));
  const store = have(await openStore(folder));
  let nowMs = FIRST_SHIFT_MS;
  const closing = new AbortController();
  const deps = depsFor({ store, logger: pino({ level: 'silent' }), now: () => new Date(nowMs) }, closing.signal);
  const app = createApp(deps, webFolder);
  if (people) await addPeople(store);
  const ask = asking(app);
  return {
    app,
    folder,
    store,
    deps,
    ask,
    askRaw: (path, bytes, as) =>
      answerTo(app, path, { method: 'POST', body: bytes, headers: as === undefined ? {} : { cookie: as } }),
    wait: (ms) => {
      nowMs += ms;
    },
    signIn: async (role) => {
      const { headers } = await ask('POST', '/session', { personId: personId(role), pin: PIN });
      return cookieIn(headers);
    },
    close: async () => {
      closing.abort();
      await deps.devices.close();
      await deps.ports.close();
      await store.close();
      await rm(folder, { recursive: true });
    },
  };
}

export const cookieIn = (headers: Headers): string => headers.get('set-cookie')?.split(';')[0] ?? '';

function asking(app: Hono): Workshop['ask'] {
  return (method, path, body, as) => {
    const headers = {
      ...(as === undefined ? {} : { cookie: as }),
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
    };
    const sent = body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) };
    return answerTo(app, path, { method, headers, ...sent });
  };
}

async function answerTo(app: Hono, path: string, init: RequestInit): Promise<Answer> {
  const response = await app.request(`/api/v1${path}`, init);
  const text = await response.text();
  const isJson = response.headers.get('content-type')?.includes('json') ?? false;
  return { status: response.status, headers: response.headers, text, body: isJson ? JSON.parse(text) : undefined };
}

async function addPeople(store: Store): Promise<void> {
  for (const role of ROLES_AT_WORK) {
    have(await store.people.add({ id: personId(role), name: `The ${role}`, role, pinHash: await pinHash }));
  }
}

/** The value of a result that a test takes for granted. */
export function have<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}

/** Four bolts of a bracket, one stage, typed or simulated wrenches will do. */
export const bracketContent: JointContent = {
  name: 'Bracket of a line sensor',
  fastener: { thread: 'M10', propertyClass: '8.8', description: 'hexagon bolt', lubricant: 'dry', reuse: 'reusable' },
  layout: { kind: 'rectangle', rows: 2, columns: 2, pitchXMm: 80, pitchYMm: 60, edgeOnly: false },
  stages: [
    {
      kind: 'torque',
      torque: {
        lowerNm: 38,
        targetNm: 42,
        upperNm: 46,
        typed: { form: 'plus-minus', target: '42', plusMinus: '4', unit: 'N·m' },
      },
      rounds: [{ share: 1, order: { method: 'circular' } }],
    },
  ],
  numbersSource: { kind: 'trial', text: 'Kestrelhorn valley workshop, trial of 2 March' },
  cautions: ['Lock the drive before the sensor line is touched.'],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
  retorque: { after: 30, unit: 'd', note: 'after settling' },
};

export const aWrench = (word: string, connection: Wrench['connection'] = { kind: 'typed' }): Wrench => ({
  id: identity(`wrench ${word}`),
  name: `Wrench ${word}`,
  serial: `KH-${word}`,
  type: 'I',
  class: 'C',
  lowestNm: 10,
  highestNm: 100,
  resolutionNm: 0.1,
  angleResolutionDeg: 0.5,
  leverMm: 400,
  connection,
  calibration: {
    calibratedOn: '2026-01-10',
    dueOn: '2027-01-10',
    certificate: 'KC-26-014',
    by: 'Valley laboratory',
    maximumDeviationPercent: 1.2,
    expandedUncertaintyPercent: 0.8,
  },
});

export const tower = { id: identity('tower 3'), name: 'Tower 3', location: 'Kestrelhorn Ropeway, lower section' };

/** Lets the lead write and release the bracket, and make a job of so many of them. */
export async function jobOnBracket({ ask, signIn }: Workshop, brackets = 1): Promise<string> {
  const lead = await signIn('lead');
  const jointId = identity('bracket');
  await ask('POST', '/joints', { id: jointId, content: bracketContent }, lead);
  await ask('POST', `/joints/${jointId}/release`, undefined, lead);
  const jobId = identity('bracket job');
  const joints = Array.from({ length: brackets }, (_, i) => ({
    jointId,
    revision: 1,
    label: `Sensor bracket ${i + 1}`,
  }));
  const made = await ask('POST', '/jobs', { id: jobId, title: 'Sensor of tower 3', asset: tower, joints }, lead);
  if (made.status !== 201) throw new Error(made.text);
  return jobId;
}

/** Takes a wrench of the register for the bracket. */
export async function takeWrench({ ask, store }: Workshop, jobId: string, wrench: Wrench, as: string): Promise<void> {
  have(await store.wrenches.add(wrench));
  const taken = await ask(
    'POST',
    `/jobs/${jobId}/commands`,
    { command: { kind: 'take-tool', wrenchId: wrench.id, jointRefs: ['J1'] } },
    as,
  );
  if (taken.status !== 200) throw new Error(taken.text);
}

/** A pull typed by hand. */
export const typedPull = (word: string, torqueNm: number, more: Readonly<Record<string, unknown>> = {}) => ({
  kind: 'record-pull',
  id: identity(word),
  jointRef: 'J1',
  source: { kind: 'typed' },
  takenAt: '2026-03-02T06:00:10.000Z',
  shown: { torque: { text: String(torqueNm), unit: 'N·m' } },
  shownTorqueNm: torqueNm,
  ...more,
});
