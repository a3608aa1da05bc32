import { randomUUID } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Wrench } from '@clampwright/core/wrench';
import { type PullStamp, simulatedOnPty, type WrenchOnPty } from '@clampwright/intake/serial';
import { looseFastener, modelFor, type SimulatedPull, simulatePull } from '@clampwright/intake/simulated';
import { pino } from 'pino';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type LiveReading, liveReadingSchema, shownDeviceSchema } from '../api/contract.ts';
import { type RunningServer, startServer } from '../start.ts';
import { aWrench, bracketContent, have, identity, jobOnBracket, type Workshop, workshop } from '../testing/workshop.ts';

const LINES = {
  name: 'Transducer',
  delimiter: ';',
  decimalSign: 'point',
  torqueUnit: 'N·m',
  lines: [{ says: 'result', fields: [{ means: 'number' }, { means: 'torque' }, { means: 'serial' }] }],
  endOfPull: { by: 'result' },
};

let bench: Workshop;
let server: RunningServer;
let keeper: string;
let lead: string;
let jobId: string;
const open: { readonly close: () => unknown }[] = [];
const link = (): string => join(tmpdir(), `bench-${randomUUID()}`);

beforeEach(async () => {
  bench = await workshop();
  lead = await bench.signIn('lead');
  keeper = await bench.signIn('keeper');
  jobId = await jobOnBracket(bench);
  await bench.ask('POST', '/line-descriptions', LINES, lead);
  server = have(
    await startServer({ store: bench.store, port: 0, logger: pino({ level: 'silent' }), now: bench.deps.now }),
  );
});
afterEach(async () => {
  for (const thing of open.splice(0)) await thing.close();
  await server.close();
  await bench.close();
});

const ask = async (path: string, as: string, body?: unknown): Promise<unknown> => {
  const response = await fetch(`${server.url}/api/v1${path}`, {
    headers: { cookie: as, 'content-type': 'application/json' },
    ...(body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }),
  });
  expect(response.ok).toBe(true);
  return response.json();
};

/** Listens as the screen of a calibration does. */
async function listen(path: string): Promise<{ readonly readings: LiveReading[]; readonly leave: () => void }> {
  const leaving = new AbortController();
  const response = await fetch(`${server.url}/api/v1${path}`, { headers: { cookie: keeper }, signal: leaving.signal });
  expect(response.headers.get('content-type')).toBe('text/event-stream');
  const readings: LiveReading[] = [];
  const reading = (async () => {
    const decoder = new TextDecoder();
    for await (const chunk of response.body ?? [])
      for (const [, data = ''] of decoder.decode(chunk).matchAll(/^data: (.*)$/gm))
        readings.push(liveReadingSchema.parse(JSON.parse(data)));
  })();
  reading.catch(() => undefined);
  open.push({ close: () => leaving.abort() });
  return { readings, leave: () => leaving.abort() };
}

/** The test's own time limit ends the waiting. */
async function until(isSo: () => boolean | Promise<boolean>): Promise<void> {
  while (!(await isSo())) await pause(10);
}
async function terminal(at: string): Promise<WrenchOnPty> {
  const pty = have(await simulatedOnPty({ link: at }));
  open.push(pty);
  return pty;
}
async function take(wrench: Wrench): Promise<void> {
  await ask('/toolbox/wrenches', keeper, wrench);
  await ask(`/jobs/${jobId}/commands`, lead, {
    command: { kind: 'take-tool', wrenchId: wrench.id, jointRefs: ['J1'] },
  });
}
const pullsOfJob = async (): Promise<readonly string[]> =>
  have(await bench.store.jobs.entries(jobId)).flatMap(({ body }) =>
    body.kind === 'pull' ? [body.pull.shown.torque.text] : [],
  );
function pull(wrench: Wrench, number: number): readonly [SimulatedPull, PullStamp] {
  const model = have(modelFor(bracketContent, { wrench }));
  const fastener = looseFastener(model.joint, number);
  return [
    simulatePull({ model, aim: { torqueNm: 42 }, fault: 'none', seed: number, fastener }),
    { pull: number, id: identity(`bench pull ${number}`), takenAt: '2026-03-02T06:00:00.000Z', serial: wrench.serial },
  ];
}

describe('a calibration that listens', () => {
  it('hears a wrench on its serial port, also one that a job has taken, and gives it back to the job', async () => {
    const at = link();
    const pty = await terminal(at);
    const wrench = aWrench('0417', { kind: 'serial', path: at });
    await take(wrench);
    const { readings, leave } = await listen(`/toolbox/wrenches/${wrench.id}/readings`);
    have(await pty.send(...pull(wrench, 1), 'at-once'));
    await until(() => readings.length === 1);
    expect(readings[0]).toMatchObject({ unit: 'N·m', from: [wrench.serial] });
    expect(readings[0]?.torqueNm).toBeCloseTo(42, -1);
    expect(await pullsOfJob()).toEqual([]);

    leave();
    await until(async () => {
      have(await pty.send(...pull(wrench, 2), 'at-once'));
      await pause(50);
      return (await pullsOfJob()).length > 0;
    });
    expect(readings).toHaveLength(1);
  });

  it('opens the port of a wrench that no job has taken, for as long as it listens', async () => {
    const at = link();
    const pty = await terminal(at);
    const wrench = aWrench('0417', { kind: 'serial', path: at });
    have(await bench.store.wrenches.add(wrench));
    const { readings, leave } = await listen(`/toolbox/wrenches/${wrench.id}/readings`);
    have(await pty.send(...pull(wrench, 1), 'live'));
    await until(() => readings.length === 1);
    expect(readings[0]?.from).toEqual([wrench.serial]);
    leave();
  });

  it('hears the reference beside it, while another wrench on the same device works on', async () => {
    const at = link();
    const pty = await terminal(at);
    const device = { id: identity('bench'), name: 'Bench', way: { kind: 'serial', path: at, lines: LINES.name } };
    const other = aWrench('0500');
    await ask('/devices', lead, { device });
    await take(other);
    await until(async () => {
      const [shown] = z.array(shownDeviceSchema).parse(await ask('/devices', lead));
      return shown?.standing.state === 'connected';
    });
    const { readings, leave } = await listen(`/devices/${device.id}/readings`);
    await pty.sendBytes(Buffer.from(`1;-20.41;NORMAL-7\r\n2;42.0;${other.serial}\r\n3;20.44;NORMAL-7\r\n`));
    await until(async () => readings.length === 2 && (await pullsOfJob()).length === 1);
    expect(readings.map(({ torqueNm, text, from }) => [torqueNm, text, from])).toEqual([
      [-20.41, '-20.41', ['NORMAL-7']],
      [20.44, '20.44', ['NORMAL-7']],
    ]);
    expect(await pullsOfJob()).toEqual(['42.0']);
    leave();
  });

  it('is the keeper’s alone', async () => {
    const technician = await bench.signIn('technician');
    const wrench = aWrench('0417');
    have(await bench.store.wrenches.add(wrench));
    const refused = await fetch(`${server.url}/api/v1/toolbox/wrenches/${wrench.id}/readings`, {
      headers: { cookie: technician },
    });
    expect(refused.status).toBe(403);
  });
});
