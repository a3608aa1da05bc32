import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Device, WayIn } from '@clampwright/core/device';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { aWrench, identity, jobOnBracket, takeWrench, type Workshop, workshop } from '../testing/workshop.ts';
import { deviceKeySchema, shownDeviceSchema } from './contract.ts';

let bench: Workshop;
let lead: string;
let jobId: string;
let key: string;
const wrench = aWrench('0417');
const deviceId = identity('sender');

const device = (word: string, way: WayIn, more: Partial<Device> = {}): { device: Device } => ({
  device: { id: identity(word), name: `The ${word}`, way, ...more },
});
const pull = (word: string, torque: number, more: object = {}) => ({
  id: identity(word),
  wrench: wrench.serial,
  takenAt: '2026-03-02T06:00:20.000Z',
  torque,
  ...more,
});

beforeEach(async () => {
  bench = await workshop();
  lead = await bench.signIn('lead');
  jobId = await jobOnBracket(bench);
  await takeWrench(bench, jobId, wrench, lead);
  await bench.ask('POST', '/devices', device('sender', { kind: 'http' }), lead);
  key = deviceKeySchema.parse((await bench.ask('POST', `/devices/${deviceId}/key`, undefined, lead)).body).key;
});
afterEach(() => bench.close());

async function send(body: string, { as = key, type = 'application/json' } = {}) {
  const headers = { authorization: `Bearer ${as}`, 'content-type': type };
  const response = await bench.app.request('/api/v1/pulls', { method: 'POST', headers, body });
  return { status: response.status, text: await response.text() };
}
const sendJson = async (value: unknown) => {
  const { status, text } = await send(JSON.stringify(value));
  const body: unknown = JSON.parse(text);
  return { status, body };
};
const standingOf = async (id: string) => {
  const listed = shownDeviceSchema.array().parse((await bench.ask('GET', '/devices')).body);
  return listed.find((one) => one.device.id === id)?.standing;
};

describe('a device that sends pulls with its key', () => {
  it('is told the verdict once the pull is stored, and the same again when it sends it twice', async () => {
    expect(await sendJson(pull('one', 42))).toEqual({
      status: 201,
      body: { id: identity('one'), state: 'added', verdict: 'within' },
    });
    expect(await sendJson(pull('one', 42))).toEqual({
      status: 200,
      body: { id: identity('one'), state: 'already', verdict: 'within' },
    });
    const entries = await bench.store.jobs.entries(jobId);
    const pulls = entries.ok ? entries.value.filter(({ body }) => body.kind === 'pull') : [];
    expect(pulls).toMatchObject([
      {
        by: { role: 'lead' },
        body: {
          pull: { source: { kind: 'http', detail: wrench.serial }, shown: { torque: { text: '42', unit: 'N·m' } } },
        },
      },
    ]);
  });

  it('is told that a pull is stored already also where it tells no time', async () => {
    const timeless = { ...pull('timeless', 42), takenAt: undefined };
    expect(await sendJson(timeless)).toMatchObject({ body: { state: 'added' } });
    bench.wait(60_000);
    expect(await sendJson(timeless)).toMatchObject({ body: { state: 'already' } });
    expect(await sendJson({ ...timeless, torque: 43 })).toMatchObject({ status: 409 });
  });

  it('is told that a pull was made before its wrench was taken, unless it is stored already', async () => {
    const early = { takenAt: '2026-03-02T05:50:00.000Z' };
    expect(await sendJson(pull('early', 42, early))).toMatchObject({
      status: 409,
      body: { detail: expect.stringContaining('made at 2026-03-02T05:50:00.000Z, before its wrench was taken') },
    });
    expect(await standingOf(deviceId)).toMatchObject({ taken: 0, refused: 1 });
    // A clock that differs by a few minutes speaks against nothing.
    expect(await sendJson(pull('just before', 42, { takenAt: '2026-03-02T05:56:00.000Z' }))).toMatchObject({
      status: 201,
    });
    bench.wait(600_000);
    const again = { kind: 'take-tool', wrenchId: wrench.id, jointRefs: ['J1'] };
    await bench.ask('POST', `/jobs/${jobId}/commands`, { command: again }, lead);
    expect(await sendJson(pull('just before', 42, { takenAt: '2026-03-02T05:56:00.000Z' }))).toMatchObject({
      body: { state: 'already' },
    });
    expect(await sendJson(pull('late', 42))).toMatchObject({ status: 409 });
  });

  it('is answered item by item for a list, each on the next position', async () => {
    // 30 lbf·ft = 40.67 N·m (NIST SP 811:2008, appendix B.8: 1 lbf·ft = 1.355818 N·m)
    const list = [
      pull('a', 42),
      { torque: 1 },
      pull('b', 30, { torqueUnit: 'lbf·ft' }),
      pull('c', 42, { wrench: 'KH-9' }),
    ];
    const { body } = await sendJson(list);
    expect(body).toMatchObject([
      { state: 'added', verdict: 'within' },
      { id: null, state: 'refused', problem: { status: 400, field: 'id' } },
      { state: 'added', verdict: 'within' },
      { id: identity('c'), state: 'refused', problem: { status: 409, detail: expect.stringContaining('KH-9') } },
    ]);
    expect(await standingOf(deviceId)).toMatchObject({
      state: 'connected',
      taken: 2,
      refused: 1,
      unreadable: 1,
      raw: [expect.stringContaining('KH-9')],
    });
  });

  it('is answered line by line for JSON lines, whatever rubbish is between them', async () => {
    const lines = [JSON.stringify(pull('a', 42)), '{"torque": 4', '', 'OK', JSON.stringify(pull('b', 42))];
    const { text } = await send(lines.join('\r\n'), { type: 'application/jsonl' });
    const states = text
      .trimEnd()
      .split('\n')
      .map((line): unknown => JSON.parse(line));
    expect(states).toMatchObject([{ state: 'added' }, { state: 'refused' }, { state: 'refused' }, { state: 'added' }]);
  });

  it.each([
    ['no key', ''],
    ['another key', 'cwk_AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA'],
  ])('is refused with %s', async (_, as) => {
    expect((await send(JSON.stringify(pull('one', 42)), { as })).status).toBe(401);
  });

  it('is refused once its key is revoked, or a new one made', async () => {
    await bench.ask('DELETE', `/devices/${deviceId}/key`, undefined, lead);
    expect((await send(JSON.stringify(pull('one', 42)))).status).toBe(401);
    const next = deviceKeySchema.parse((await bench.ask('POST', `/devices/${deviceId}/key`, undefined, lead)).body).key;
    expect((await send(JSON.stringify(pull('one', 42)))).status).toBe(401);
    expect((await send(JSON.stringify(pull('one', 42)), { as: next })).status).toBe(201);
  });

  it('is told so when nobody has taken its wrench, and nothing is kept', async () => {
    const other = await sendJson(pull('one', 42, { wrench: 'KH-0000' }));
    expect(other).toMatchObject({ status: 409, body: { detail: expect.stringContaining('KH-0000') } });
  });
});

describe('devices', () => {
  const serial = { kind: 'serial', path: '/dev/nowhere', baudRate: 9600, lines: 'Clampwright' } as const;

  it('are for the keeper and the lead to change, and for everybody to see', async () => {
    const technician = await bench.signIn('technician');
    expect((await bench.ask('POST', '/devices', device('bench', serial), technician)).status).toBe(403);
    expect((await bench.ask('DELETE', `/devices/${deviceId}`, undefined, technician)).status).toBe(403);
    expect((await bench.ask('POST', `/devices/${deviceId}/key`, undefined, technician)).status).toBe(403);
    expect((await bench.ask('GET', '/devices')).status).toBe(200);
  });

  it('keep their password to themselves', async () => {
    const way = {
      kind: 'opc-ua',
      endpointUrl: 'opc.tcp://127.0.0.1:9',
      securityMode: 'None',
      securityPolicy: 'None',
    } as const;
    await bench.store.devices.save(device('station', { ...way, userName: 'a', password: 'secret-word' }).device);
    const { text, body } = await bench.ask('GET', '/devices');
    expect(text).not.toContain('secret-word');
    expect(body).toContainEqual(expect.objectContaining({ hasPassword: true }));
  });

  it('say what is wrong with a port that is not there, and are gone once removed', async () => {
    const id = identity('bench');
    await bench.ask('POST', '/devices', device('bench', serial), lead);
    expect((await bench.ask('POST', `/devices/${id}/test`, undefined, lead)).body).toMatchObject({
      works: false,
      detail: expect.stringContaining('/dev/nowhere'),
    });
    expect((await bench.ask('DELETE', `/devices/${id}`, undefined, lead)).status).toBe(204);
    expect(await standingOf(id)).toBeUndefined();
  });

  it('say that their line description is missing', async () => {
    await bench.ask('POST', '/devices', device('bench', { ...serial, lines: 'Nobody’s' }), lead);
    await bench.ask('POST', `/devices/${identity('bench')}/test`, undefined, lead);
    expect(await standingOf(identity('bench'))).toMatchObject({
      state: 'set-up-wrong',
      detail: expect.stringContaining('Nobody’s'),
    });
  });
});

describe('a watched folder', () => {
  const MAPPING = {
    name: 'Bench files',
    decimalSign: 'point',
    headerRow: true,
    torque: 'torque',
    torqueUnit: { unit: 'N·m' },
    time: { column: 'time', format: 'iso-8601', zone: 'UTC' },
  };
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'clampwright-watched-'));
    await bench.ask('POST', '/mappings', MAPPING, lead);
    await bench.ask(
      'POST',
      '/devices',
      device('folder', { kind: 'folder', path: folder, mapping: 'Bench files' }, { wrenchId: wrench.id }),
      lead,
    );
  });
  afterEach(() => rm(folder, { recursive: true }));

  const until = async (what: () => Promise<boolean>): Promise<void> => {
    while (!(await what())) await pause(50);
  };
  const filesIn = async (sub: string) => new Set(await readdir(join(folder, sub)).catch(() => []));

  it('takes each file once, and sets a refused one aside with the reason beside it', { timeout: 30_000 }, async () => {
    await writeFile(join(folder, 'good.csv'), 'time,torque\n2026-03-02T06:00:20Z,42\n2026-03-02T06:00:30Z,41\n');
    await writeFile(join(folder, 'bad.csv'), 'time,torque\n2026-03-02T06:00:40Z,42\n2026-03-02T06:00:50Z,x\n');
    await until(async () => (await filesIn('taken')).size === 1 && (await filesIn('refused')).size === 2);
    expect(await filesIn('refused')).toEqual(new Set(['bad.csv', 'bad.csv.reason.txt']));
    expect(await readFile(join(folder, 'refused', 'bad.csv.reason.txt'), 'utf8')).toContain(
      'line 3, torque: “x” is no figure.',
    );
    expect(await standingOf(identity('folder'))).toMatchObject({ taken: 2, unreadable: 1 });

    await writeFile(join(folder, 'good.csv'), 'time,torque\n2026-03-02T06:00:20Z,42\n2026-03-02T06:00:30Z,41\n');
    await until(async () => (await filesIn('taken')).size === 2);
    expect(await filesIn('taken')).toEqual(new Set(['2-good.csv', 'good.csv']));
    expect(await standingOf(identity('folder'))).toMatchObject({ taken: 2, already: 2 });
  });
});
