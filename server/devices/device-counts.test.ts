import { pino } from 'pino';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { z } from 'zod';
import { depsFor } from '../start.ts';
import { aWrench, have, identity, jobOnBracket, takeWrench, type Workshop, workshop } from '../testing/workshop.ts';
import { startDevices } from './device-runs.ts';
import { noCounts, standingOf } from './standing.ts';

let bench: Workshop;
beforeEach(async () => {
  bench = await workshop();
});
afterEach(() => bench.close());

const SINCE = '2026-03-02T06:00:00.000Z';
const device = { id: identity('gateway'), name: 'Gateway', way: { kind: 'http' } };

async function deviceWithKey(): Promise<string> {
  const lead = await bench.signIn('lead');
  const jobId = await jobOnBracket(bench);
  await takeWrench(bench, jobId, aWrench('0417'), lead);
  await bench.ask('POST', '/devices', { device }, lead);
  const made = await bench.ask('POST', `/devices/${device.id}/key`, undefined, lead);
  return z.object({ key: z.string() }).parse(made.body).key;
}

const send = (key: string, body: string) =>
  bench.app.request('/api/v1/pulls', {
    method: 'POST',
    headers: { authorization: `Bearer ${key}`, 'content-type': 'application/jsonl' },
    body,
  });

it('tells after a restart what a device has told since it was set up, and goes on counting', async () => {
  const key = await deviceWithKey();
  const pull = JSON.stringify({ id: identity('a pull'), wrench: 'KH-0417', torque: 42 });
  await (await send(key, `${pull}\n${pull}\nOK\n`)).text();
  await bench.deps.devices.close();
  bench.wait(3_600_000);

  const closing = new AbortController();
  const options = { store: bench.store, logger: pino({ level: 'silent' }), now: bench.deps.now };
  const { devices } = depsFor(options, closing.signal);
  have(await startDevices({ store: bench.store, devices }));
  const before = { since: SINCE, taken: 1, already: 1, refused: 0, unreadable: 1, raw: ['OK'], lastSeenAt: SINCE };
  expect(devices.told(device.id)).toMatchObject({ ...before, state: 'waiting' });
  devices.standing(device.id)?.count('taken');
  await devices.close();
  expect(have(await bench.store.devices.counts()).get(device.id)).toMatchObject({ ...before, taken: 2 });
});

it('forgets what a device has told when it is removed', async () => {
  await deviceWithKey();
  await bench.ask('DELETE', `/devices/${device.id}`, undefined, await bench.signIn('keeper'));
  await bench.deps.devices.close();
  expect(have(await bench.store.devices.counts()).size).toBe(0);
});

it('counts a connection that comes back, and not the first one', () => {
  const standing = standingOf(noCounts(SINCE));
  standing.state('lost', 'not there');
  standing.state('connected');
  expect(standing.told().reconnections).toBe(0);
  for (let times = 0; times < 2; times++) {
    standing.state('lost', 'unplugged');
    standing.state('lost', 'not there');
    standing.state('connected');
    standing.state('connected');
  }
  expect(standing.told()).toMatchObject({ reconnections: 2, state: 'connected' });
});
