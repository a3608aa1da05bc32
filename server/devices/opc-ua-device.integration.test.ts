import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { entrySchema, traceSchema, verifyRecord } from '@clampwright/core/record';
import {
  examplePull,
  type JoiningServer,
  startJoiningServer,
  type Wire,
  wireTo,
} from '@clampwright/intake/opc-ua/testing';
import { pino } from 'pino';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { z } from 'zod';
import { shownDeviceSchema } from '../api/contract.ts';
import { type RunningServer, startServer } from '../start.ts';
import {
  aWrench,
  bracketContent,
  cookieIn,
  have,
  identity,
  PIN,
  personId,
  tower,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';

/** A joining system behind a wire that can be cut, and the whole server on a port of its own. */
let joining: JoiningServer;
let wire: Wire;
let bench: Workshop;
let server: RunningServer;
let cookie = '';

/** The results of the joining system are of the minutes after it. */
const NOW = new Date('2026-05-04T09:00:00.000Z');
const wrench = aWrench('0417');
const jobId = identity('bolts over OPC UA');

beforeAll(async () => {
  bench = await workshop();
  joining = await startJoiningServer(join(bench.folder, 'joining'));
  wire = await wireTo(joining.port);
  const options = { store: bench.store, port: 0, logger: pino({ level: 'silent' }), now: () => NOW };
  server = have(await startServer(options));
});
afterAll(async () => {
  await server.close();
  await wire.close();
  await joining.close();
  await bench.close();
});

async function ask(path: string, body?: unknown): Promise<unknown> {
  const response = await fetch(`${server.url}/api/v1${path}`, {
    headers: { cookie, 'content-type': 'application/json' },
    ...(body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }),
  });
  if (!response.ok) throw new Error(await response.text());
  cookie = cookieIn(response.headers) || cookie;
  return response.json();
}

/** A job on a bracket at 60 N·m, for which the lead has taken the wrench that the joining system names. */
async function takeWrench(): Promise<void> {
  await ask('/session', { personId: personId('lead'), pin: PIN });
  const jointId = identity('bracket at 60');
  const torque = {
    lowerNm: 57,
    targetNm: 60,
    upperNm: 63,
    typed: { form: 'plus-minus', target: '60', plusMinus: '3', unit: 'N·m' },
  };
  const stages = bracketContent.stages.map((stage) => ({ ...stage, torque }));
  await ask('/joints', { id: jointId, content: { ...bracketContent, stages } });
  await ask(`/joints/${jointId}/release`, {});
  await ask('/jobs', {
    id: jobId,
    title: 'Sensor',
    asset: tower,
    joints: [{ jointId, revision: 1, label: 'Bracket' }],
  });
  await ask('/toolbox/wrenches', wrench);
  await ask(`/jobs/${jobId}/commands`, { command: { kind: 'take-tool', wrenchId: wrench.id, jointRefs: ['J1'] } });
}

/** The test's own time limit ends it otherwise. */
async function until(isSo: (device: z.infer<typeof shownDeviceSchema>['standing']) => boolean): Promise<void> {
  for (;;) {
    const [device] = z.array(shownDeviceSchema).parse(await ask('/devices'));
    if (device && isSo(device.standing)) return;
    await pause(20);
  }
}

it('judges results of a joining system with their traces, also those that were missed while the wire was cut', async () => {
  await takeWrench();
  const endpointUrl = `opc.tcp://127.0.0.1:${wire.port}`;
  const way = { kind: 'opc-ua', endpointUrl, securityMode: 'None', securityPolicy: 'None' };
  await ask('/devices', { device: { id: identity('station'), name: 'Station', way } });
  await until(({ state }) => state === 'connected');
  joining.station.tighten(1);
  joining.handheld.tighten(2);
  await until(({ taken }) => taken === 2);

  wire.cut();
  await until(({ state }) => state === 'lost');
  joining.station.tighten(3);
  joining.handheld.tighten(4);
  wire.mend();
  await until(({ taken }) => taken === 4);

  const entries = z.array(entrySchema).parse(await ask(`/jobs/${jobId}/entries`));
  const pulls = entries.flatMap(({ seq, body }) => (body.kind === 'pull' ? [{ seq, ...body }] : []));
  const made = pulls.map(({ pull }) => examplePull(new Date(pull.takenAt).getUTCMinutes()));
  expect(new Set(made.map(({ stamp }) => stamp.pull))).toEqual(new Set([1, 2, 3, 4]));
  expect(pulls.map(({ pull }) => pull.cell.position)).toEqual([1, 2, 3, 4]);
  expect(pulls.map(({ pull }) => pull.shown.torque.text)).toEqual(made.map(({ pull }) => String(pull.shownTorqueNm)));
  for (const [i, { seq, pull, judgement }] of pulls.entries()) {
    expect(judgement.verdict).toBe('within');
    expect(pull.trace?.figures?.slopeNmPerDeg).toBeGreaterThan(0);
    expect(traceSchema.parse(await ask(`/jobs/${jobId}/entries/${seq}/trace`))).toEqual(made[i]?.pull.trace);
  }
  const record = await fetch(`${server.url}/api/v1/jobs/${jobId}/record.json`, { headers: { cookie } });
  expect(verifyRecord(await record.text())).toMatchObject({ faults: [] });
});
