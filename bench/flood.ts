import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { request } from 'node:http';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { sha256Hex, uuidV8 } from '@clampwright/core/record';
import { openStore } from '@clampwright/store';
import { z } from 'zod';
import type { BenchResult } from './result.ts';
import { inScratchFolder } from './scratch-folder.ts';

export interface Flooding {
  readonly perSecond: number;
  readonly seconds: number;
}

export interface Flooded {
  readonly sent: number;
  readonly acknowledged: number;
  /** Acknowledged, and not there after the server was killed. */
  readonly lost: number;
  /** How long it took until the last one was acknowledged. */
  readonly tookS: number;
}

const PIN = '2468';
const DEVICE = '0197f3c1-0000-7000-8000-0000000000f1';
const SERIAL = 'KH-102';
const TICK_MS = 20;

/**
 * Sends pulls to a real server at a pace, kills it without warning once the last one is acknowledged, and looks in the
 * store for every one that was acknowledged.
 */
export function flood(flooding: Flooding): Promise<Flooded> {
  return inScratchFolder(async (folder) => {
    const server = spawn(process.execPath, ['cli/bin/clampwright.js', 'serve', '--data', folder, '--port', '0'], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const url = await addressOf(server);
    const { jobId, key } = await deviceAt(url);
    const startMs = performance.now();
    const { sent, acknowledged } = await pour(url, key, flooding);
    const tookS = (performance.now() - startMs) / 1000;
    server.kill('SIGKILL');
    await once(server, 'exit');
    const kept = await keptIn(folder, jobId);
    const lost = acknowledged.filter((id) => !kept.has(id)).length;
    return { sent, acknowledged: acknowledged.length, lost, tookS };
  });
}

async function addressOf(server: ChildProcess): Promise<string> {
  let said = '';
  for await (const piece of server.stdout ?? []) {
    said += String(piece);
    const found = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
    if (found !== undefined) return found;
  }
  throw new Error(`the server ended without an address: ${said}`);
}

const named = z.array(z.looseObject({ id: z.string() }));

/** A device with a key, and its wrench in the lead's hands. */
async function deviceAt(url: string): Promise<{ readonly jobId: string; readonly key: string }> {
  let cookie = '';
  const ask = async (path: string, body?: unknown): Promise<unknown> => {
    const response = await fetch(`${url}/api/v1${path}`, {
      headers: { 'content-type': 'application/json', cookie },
      ...(body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }),
    });
    cookie = response.headers.get('set-cookie')?.split(';')[0] ?? cookie;
    if (!response.ok) throw new Error(`${path}: ${await response.text()}`);
    return response.json();
  };
  const oneOf = (list: unknown, isMeant: (one: Record<string, unknown>) => boolean): string => {
    const found = named.parse(list).find(isMeant);
    if (!found) throw new Error('the demonstration has what is looked for');
    return found.id;
  };
  const personId = oneOf(await ask('/people'), ({ role }) => role === 'lead');
  await ask('/session', { personId, pin: PIN });
  await ask('/devices', { device: { id: DEVICE, name: 'Flood', way: { kind: 'http' } } });
  const { key } = z.object({ key: z.string() }).parse(await ask(`/devices/${DEVICE}/key`, {}));
  const jobId = oneOf(await ask('/jobs?status=open'), ({ title }) => String(title).startsWith('Sheave hub'));
  const { wrenches } = z.object({ wrenches: named }).parse(await ask('/toolbox'));
  const wrenchId = oneOf(wrenches, ({ serial }) => serial === SERIAL);
  await ask(`/jobs/${jobId}/commands`, { command: { kind: 'take-tool', wrenchId, jointRefs: ['J1'] } });
  return { jobId, key };
}

const answerSchema = z.object({ id: z.string().nullable(), state: z.string() });

/** Sends JSON lines at the pace, however slowly they are answered. */
async function pour(url: string, key: string, { perSecond, seconds }: Flooding) {
  const asked = request(`${url}/api/v1/pulls`, {
    method: 'POST',
    headers: { authorization: `Bearer ${key}`, 'content-type': 'application/jsonl' },
  });
  const answered = answersOf(asked);
  const all = perSecond * seconds;
  const startMs = performance.now();
  let sent = 0;
  while (sent < all) {
    const due = Math.min(all, Math.ceil(((performance.now() - startMs) / 1000) * perSecond));
    const lines = Array.from({ length: due - sent }, (_, i) => lineOf(sent + i)).join('');
    sent = due;
    if (!asked.write(lines)) await once(asked, 'drain');
    await pause(TICK_MS);
  }
  asked.end();
  return { sent, acknowledged: await answered };
}

/** The pulls that were acknowledged as stored. */
async function answersOf(asked: ReturnType<typeof request>): Promise<readonly string[]> {
  const [response] = await once(asked, 'response');
  const acknowledged: string[] = [];
  for await (const line of createInterface({ input: response })) {
    const { id, state } = answerSchema.parse(JSON.parse(line));
    if (id !== null && state !== 'refused') acknowledged.push(id);
  }
  return acknowledged;
}

const lineOf = (number: number): string =>
  `${JSON.stringify({ id: uuidV8(sha256Hex(`flood ${number}`)), wrench: SERIAL, position: (number % 4) + 1, torque: 30 + (number % 9) / 10 })}\n`;

async function keptIn(folder: string, jobId: string): Promise<ReadonlySet<string>> {
  const store = await openStore(folder);
  if (!store.ok) throw new Error(JSON.stringify(store.failure));
  const entries = await store.value.jobs.entries(jobId);
  await store.value.close();
  if (!entries.ok) throw new Error(JSON.stringify(entries.failure));
  return new Set(entries.value.map(({ id }) => id));
}

const ASKED: Flooding = { perSecond: 10_000, seconds: 30 };

/** Ten thousand pulls a second for half a minute beside the pace at which they are offered; then kill -9. */
export async function run(): Promise<BenchResult[]> {
  const { sent, acknowledged, lost, tookS } = await flood(ASKED);
  const ours = acknowledged / tookS;
  return [
    {
      name: 'flood over HTTP',
      ours,
      peer: ASKED.perSecond,
      unit: 'pulls/s',
      ratio: ours / ASKED.perSecond,
      note: `Peer: the pace at which they were offered, ${ASKED.seconds} s. ${sent} sent, ${acknowledged} acknowledged in ${tookS.toFixed(1)} s, ${lost} of them lost when the server was killed.`,
    },
  ];
}
