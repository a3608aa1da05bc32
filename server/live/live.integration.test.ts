import { randomUUID } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { simulatedOnPty, type WrenchOnPty } from '@clampwright/intake/serial';
import { looseFastener, modelFor, type SimulatedPull, simulatePull } from '@clampwright/intake/simulated';
import { openStore } from '@clampwright/store';
import { pino } from 'pino';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { LiveEvent } from '../api/contract.ts';
import { liveEventSchema } from '../api/contract.ts';
import { type RunningServer, startServer } from '../start.ts';
import {
  aWrench,
  bracketContent,
  have,
  identity,
  jobOnBracket,
  typedPull,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';

let shop: Workshop;
let server: RunningServer;
let jobId: string;
let cookie: string;
const open: { readonly close: () => Promise<void> }[] = [];
const logger = pino({ level: 'silent' });

beforeEach(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop, 2);
  cookie = await shop.signIn('technician');
  server = have(await startServer({ store: shop.store, port: 0, logger, now: shop.deps.now }));
});
afterEach(async () => {
  for (const thing of open.splice(0)) await thing.close();
  await server.close();
  await shop.close();
});

const work = (command: unknown) =>
  fetch(`${server.url}/api/v1/jobs/${jobId}/commands`, {
    method: 'POST',
    headers: { cookie },
    body: JSON.stringify({ command }),
  });

/** Listens as a browser does; `events` grows while the stream is open, `ended` says when the server hung up. */
async function listen(
  query = '',
): Promise<{ readonly events: LiveEvent[]; readonly ended: Promise<void>; readonly leave: () => void }> {
  const leaving = new AbortController();
  const response = await fetch(`${server.url}/api/v1/jobs/${jobId}/live${query}`, {
    headers: { cookie },
    signal: leaving.signal,
  });
  expect(response.headers.get('content-type')).toBe('text/event-stream');
  const events: LiveEvent[] = [];
  const ended = read(response, events).catch((error: unknown) => {
    if (!leaving.signal.aborted) throw error;
  });
  return { events, ended, leave: () => leaving.abort() };
}

async function read(response: Response, events: LiveEvent[]): Promise<void> {
  const decoder = new TextDecoder();
  let text = '';
  for await (const chunk of response.body ?? []) {
    const parts = (text + decoder.decode(chunk, { stream: true })).split('\n\n');
    text = parts.pop() ?? '';
    for (const part of parts)
      if (part.startsWith('data: ')) events.push(liveEventSchema.parse(JSON.parse(part.slice(6))));
  }
}

/** The test's own time limit ends the waiting. */
async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await pause(5);
}

describe('listening to a job', () => {
  it('tells of an entry that another browser makes', async () => {
    const { events } = await listen();
    expect((await work({ kind: 'note', text: 'Rain since ten.' })).status).toBe(200);
    await until(() => events.length > 0);
    expect(events).toEqual([{ kind: 'entries', afterSeq: 1 }]);
  });

  it('tells of an entry that another process makes', async () => {
    const { events } = await listen();
    const other = have(await openStore(shop.folder));
    open.push(other);
    have(
      await other.jobs.append(jobId, ({ lastAt }) => ({
        ok: true,
        value: [
          {
            id: identity('from elsewhere'),
            at: lastAt,
            by: { id: identity('person lead'), name: 'The lead', role: 'lead' },
            body: { kind: 'noted', text: 'From the command line.' },
          },
        ],
      })),
    );
    await until(() => events.length > 0);
    expect(events).toEqual([{ kind: 'entries', afterSeq: 1 }]);
  });

  it('ends with the server, and does not hold it up', async () => {
    const { ended } = await listen();
    await server.close();
    expect(await ended).toBeUndefined();
    server = have(await startServer({ store: shop.store, port: 0, logger }));
  });

  it('makes room again when a browser goes away', async () => {
    const screens = await Promise.all(Array.from({ length: 100 }, () => listen()));
    const refused = await fetch(`${server.url}/api/v1/jobs/${jobId}/live`);
    expect(await refused.json()).toMatchObject({ status: 503, type: 'urn:problem-type:too-many-listeners' });
    screens[0]?.leave();
    await screens[0]?.ended;
    let status = 503;
    while (status === 503) {
      const again = await fetch(`${server.url}/api/v1/jobs/${jobId}/live`);
      status = again.status;
      await again.body?.cancel();
    }
    expect(status).toBe(200);
    for (const { leave } of screens) leave();
  });
});

const SERIAL = aWrench('serial');

/** A wrench at the far end of a pseudo-terminal, taken for the bracket. */
async function serialWrench(jointRefs: readonly string[] = ['J1']): Promise<WrenchOnPty> {
  // A name of its own: the number of a terminal that is gone is soon another's.
  const wrench = have(await simulatedOnPty({ link: join(tmpdir(), `wrench-${randomUUID()}`) }));
  open.push(wrench);
  have(await shop.store.wrenches.add({ ...SERIAL, connection: { kind: 'serial', path: wrench.path } }));
  expect((await work({ kind: 'take-tool', wrenchId: SERIAL.id, jointRefs })).status).toBe(200);
  return wrench;
}

function aPull(seed: number): SimulatedPull {
  const model = have(modelFor(bracketContent, { wrench: SERIAL }));
  return simulatePull({
    model,
    aim: { torqueNm: 42 },
    fault: 'none',
    seed,
    fastener: looseFastener(model.joint, seed),
  });
}

const stamp = (pull: number, serial = SERIAL.serial) => ({
  pull,
  id: identity(`serial pull ${pull}`),
  takenAt: '2026-03-02T06:00:00.000Z',
  serial,
});
const entriesAfter = async (seq: number) => have(await shop.store.jobs.entries(jobId, { afterSeq: seq }));
const isConnected = (event: LiveEvent) => event.kind === 'wrench' && event.state === 'connected';

describe('a wrench on a serial port', () => {
  it('is connected when it is taken, and its pulls go to the next position, once each', async () => {
    const { events } = await listen();
    const wrench = await serialWrench();
    await until(() => events.some(isConnected));
    for (const pull of [1, 2, 2]) have(await wrench.send(aPull(pull), stamp(pull), 'at-once'));
    have(await wrench.send(aPull(3), stamp(3), 'at-once'));
    await until(() => news(events).length >= 4);
    expect(await entriesAfter(2)).toMatchObject(
      [1, 2, 3].map((position) => ({
        by: { name: 'The technician' },
        id: identity(`serial pull ${position}`),
        body: { pull: { cell: { position }, source: { kind: 'serial', detail: 'KH-serial' }, trace: {} } },
      })),
    );
    expect(events.some(({ kind }) => kind === 'torque')).toBe(true);
  });

  it('is not believed when it is another one than was taken', async () => {
    const { events } = await listen();
    const wrench = await serialWrench();
    await until(() => events.some(isConnected));
    have(await wrench.send(aPull(1), stamp(1, 'KH-other'), 'at-once'));
    await until(() => events.some((event) => event.kind === 'wrench' && event.state === 'pull-refused'));
    expect(await entriesAfter(2)).toEqual([]);
  });

  it('tells what cannot be read, and when it is unplugged', async () => {
    const { events } = await listen();
    const wrench = await serialWrench();
    await until(() => events.some(isConnected));
    have(await wrench.sendBytes(Buffer.from('what is this\n')));
    await until(() => events.some((event) => event.kind === 'wrench' && event.state === 'unreadable-line'));
    await wrench.close();
    await until(() => events.some((event) => event.kind === 'wrench' && event.state === 'lost'));
    expect(await entriesAfter(2)).toEqual([]);
  });

  it('is connected again when the server comes back', async () => {
    const wrench = await serialWrench();
    await server.close();
    server = have(await startServer({ store: shop.store, port: 0, logger, now: shop.deps.now }));
    const { events } = await listen();
    have(await wrench.send(aPull(1), stamp(1), 'live'));
    await until(() => events.some(({ kind }) => kind === 'entries'));
    expect(await entriesAfter(2)).toMatchObject([
      { by: { name: 'The technician' }, body: { pull: { cell: { position: 1 } } } },
    ]);
  });

  it('serves the joint whose screen was opened last', async () => {
    const { events } = await listen();
    const wrench = await serialWrench(['J1', 'J2']);
    await until(() => events.some(isConnected));
    have(await wrench.send(aPull(1), stamp(1), 'at-once'));
    await until(() => news(events).length > 1);
    await listen('?joint=J2');
    have(await wrench.send(aPull(2), stamp(2), 'at-once'));
    await until(() => news(events).length > 2);
    expect(await entriesAfter(2)).toMatchObject(
      ['J1', 'J2'].map((jointRef) => ({ body: { pull: { cell: { jointRef, position: 1 } } } })),
    );
  });

  it('is let go when the job is closed', async () => {
    const { events } = await listen();
    const wrench = await serialWrench(['J1', 'J2']);
    await until(() => events.some(isConnected));
    const cells = ['J1', 'J2'].flatMap((jointRef) => [1, 2, 3, 4].map((position) => ({ jointRef, position })));
    for (const cell of cells) expect((await work(typedPull(JSON.stringify(cell), 42, cell))).status).toBe(200);
    expect((await work({ kind: 'sign-off', statement: 'All of them are tight.' })).status).toBe(200);
    expect((await work({ kind: 'close' })).status).toBe(200);
    await until(() => news(events).length === 11);
    const before = events.length;
    have(await wrench.send(aPull(1), stamp(1), 'at-once'));
    await pause(200);
    expect(events.slice(before)).toEqual([]);
  });
});

const news = (events: readonly LiveEvent[]) => events.filter(({ kind }) => kind === 'entries');
