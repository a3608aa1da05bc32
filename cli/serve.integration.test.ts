import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import path from 'node:path';
import { DEMO_PIN } from '@clampwright/demo';
import { describe, expect, it, onTestFinished, type TestContext } from 'vitest';
import { z } from 'zod';
import { freshPlace, type Place } from './testing/place.ts';

const ADDRESS = /http:\/\/127\.0\.0\.1:\d+/;
const USUAL_PORT = 4700;

/** Serves a data folder on a free port; gives where. */
async function serving(place: Place, ...args: readonly string[]) {
  const server = place.start(['serve', '--data', place.data, '--port', '0', ...args]);
  return { server, url: await server.says(ADDRESS) };
}

async function taken(port: number): Promise<number> {
  const server: Server = createServer();
  onTestFinished(() => void server.close());
  await new Promise<void>((resolve) => {
    // Taken by another program already is as good.
    server.once('error', () => resolve());
    server.listen(port, '127.0.0.1', resolve);
  });
  const address = server.address();
  return typeof address === 'object' && address ? address.port : port;
}

const jobsAt = async (url: string): Promise<readonly unknown[]> => {
  const answer: unknown = await (await fetch(`${url}/api/v1/jobs`)).json();
  return z.array(z.unknown()).parse(answer);
};

describe('serving', () => {
  it('says where, with the demonstration on the first start, and closes cleanly when it is ended', async () => {
    const place = freshPlace();
    const { server, url } = await serving(place);
    expect(await jobsAt(url)).toHaveLength(4);
    const { code, stdout, stderr } = await server.end('SIGTERM');
    expect({ code, stdout }).toEqual({ code: 0, stdout: `Data in ${place.data}\n${url}\n` });
    expect(stderr).toContain('loading the invented demonstration');
    // Closed, not cut off: the write-ahead log is gone, all of it is in the database.
    expect(readdirSync(place.data).toSorted()).toEqual(['clampwright.sqlite', 'signing-key']);
    await expect(fetch(url)).rejects.toThrow('fetch failed');
  });

  it.each(['SIGINT', 'SIGHUP'] as const)('closes cleanly on %s too, though a screen listens', async (signal) => {
    const place = freshPlace();
    const { server, url } = await serving(place);
    const [job] = z.array(z.object({ id: z.string() })).parse(await jobsAt(url));
    const screen = await fetch(`${url}/api/v1/jobs/${job?.id}/live`);
    const listened = screen.text();
    expect((await server.end(signal)).code).toBe(0);
    await listened;
    expect(readdirSync(place.data)).not.toContain('clampwright.sqlite-wal');
  });

  it('takes the user’s data directory where no folder is named', async () => {
    const place = freshPlace();
    const server = place.start(['serve', '--port', '0']);
    await server.says(ADDRESS);
    await server.end();
    expect(readdirSync(path.join(place.home, 'data'))).toEqual(['clampwright']);
  });
});

describe('the demonstration', () => {
  it('is loaded once: who removed it does not get it again', async () => {
    const place = freshPlace();
    const first = await serving(place);
    expect(await jobsAt(first.url)).toHaveLength(4);
    await first.server.end();
    expect(await place.run(['demo', 'remove', '--data', place.data])).toMatchObject({ code: 0 });
    const second = await serving(place);
    expect(await jobsAt(second.url)).toEqual([]);
    expect((await second.server.end()).stderr).not.toContain('demonstration');
    expect(await place.run(['jobs', '--data', place.data])).toMatchObject({ code: 0, stdout: '' });
  });

  it('may be removed while it is served, and loaded again', async () => {
    const place = freshPlace();
    const { url } = await serving(place);
    await place.run(['demo', 'remove', '--data', place.data]);
    expect(await jobsAt(url)).toEqual([]);
    await place.run(['demo', 'load', '--data', place.data]);
    expect(await jobsAt(url)).toHaveLength(4);
  });

  it('does not come where it is not wanted, nor later into a workshop that has people', async () => {
    const place = freshPlace();
    const first = await serving(place, '--no-demo');
    expect(await jobsAt(first.url)).toEqual([]);
    const lead = { name: 'Tomas Venn', role: 'lead', pin: '739151' };
    const added = await fetch(`${first.url}/api/v1/people`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(lead),
    });
    expect(added.status).toBe(201);
    await first.server.end();
    const second = await serving(place);
    expect(await jobsAt(second.url)).toEqual([]);
  });
});

describe('a port', () => {
  it('that is taken is refused when it was asked for', async () => {
    const place = freshPlace();
    const port = await taken(0);
    const { code, stdout, stderr } = await place.run([
      'serve',
      '--data',
      place.data,
      '--port',
      String(port),
      '--no-demo',
    ]);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain(`Port ${port} of 127.0.0.1 is taken by another program.\n  End that program, or choose`);
  });

  it('that is usual and taken gives way to a free one when none was asked for', async () => {
    await taken(USUAL_PORT);
    const place = freshPlace();
    const server = place.start(['serve', '--data', place.data, '--no-demo']);
    const url = await server.says(ADDRESS);
    expect(url).not.toContain(`:${USUAL_PORT}`);
    expect(await jobsAt(url)).toEqual([]);
  });

  it.each(['70000', '-1', 'http', '47.5', ''])('is a whole number, not “%s”', async (port) => {
    const place = freshPlace();
    expect(await place.run(['serve', '--data', place.data, `--port=${port}`])).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('0 to 65535'),
    });
    expect(readdirSync(place.folder)).toEqual([]);
  });
});

/** Makes a folder read-only, also for root, whom permissions do not bind. */
function makeReadOnly(folder: string, { skip }: TestContext): void {
  if (process.getuid?.() !== 0) return chmodSync(folder, 0o555);
  if (spawnSync('mount', ['-t', 'tmpfs', '-o', 'ro', 'tmpfs', folder]).status !== 0)
    skip('mounting takes the rights of root');
  onTestFinished(() => void spawnSync('umount', [folder]));
}

describe('a data folder', () => {
  it('that cannot be written is refused', async (context) => {
    const place = freshPlace();
    mkdirSync(place.data);
    makeReadOnly(place.data, context);
    const { code, stdout, stderr } = await place.run(['serve', '--data', place.data, '--port', '0']);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toMatch(/cannot be written.*\n {2}\S/);
    expect(stderr).not.toContain('    at ');
    expect(readdirSync(place.data)).toEqual([]);
  });

  it('that is a file is refused, and the file left as it is', async () => {
    const place = freshPlace();
    const file = place.file('notes.txt', 'mine');
    const { code, stderr } = await place.run(['serve', '--data', file, '--port', '0']);
    expect(code).toBe(1);
    expect(stderr).toMatch(/not a folder|is a file/);
    expect(stderr).not.toContain('    at ');
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });

  it('of a newer version is refused and left untouched', async () => {
    const place = freshPlace();
    await place.run(['demo', 'load', '--data', place.data]);
    const file = path.join(place.data, 'clampwright.sqlite');
    // SQLite database file format, 1.3: the user version stands at byte 60, big-endian.
    const newer = readFileSync(file);
    newer.writeUInt32BE(9999, 60);
    writeFileSync(file, newer);
    const before = readdirSync(place.data);
    for (const args of [['serve', '--port', '0'], ['jobs'], ['demo', 'remove']]) {
      const { code, stderr } = await place.run([...args, '--data', place.data]);
      expect({ code, stderr }).toEqual({ code: 1, stderr: expect.stringContaining('newer Clampwright') });
    }
    expect(readdirSync(place.data)).toEqual(before);
    expect(readFileSync(file).equals(newer)).toBe(true);
  });
});

const ROWS = 4000;

describe('beside an import', () => {
  it('records what comes over HTTP, and nothing of either is lost', async () => {
    const place = freshPlace();
    const { url } = await serving(place);
    const jobs = z.array(z.object({ id: z.string(), title: z.string() })).parse(await jobsAt(url));
    const job = jobs.find(({ title }) => title.includes('tower 7'))?.id ?? '';
    const cookie = await signedIn(url, 'Tamsin Orrell');
    const rows = Array.from({ length: ROWS }, (_, i) => `${(i % 24) + 1};700,5;${10 + (i % 40)};${i}`);
    const file = place.file('pulls.csv', ['pos;M;W;t', ...rows].join('\n'));
    const mapping = place.file(
      'mapping.json',
      JSON.stringify({
        name: 'night shift',
        decimalSign: 'comma',
        headerRow: true,
        position: 'pos',
        torque: 'M',
        torqueUnit: { unit: 'N·m' },
        angle: 'W',
        time: { column: 't', format: 'elapsed-seconds', start: '2026-03-02T06:00:00.000Z' },
      }),
    );
    const options = ['--job', job, '--mapping', mapping, '--as', 'Bram Oduya', '--mode', 'good-lines', '--json'];
    const importing = place.run(['pulls', 'import', file, ...options, '--data', place.data]);
    const ended = importing.then(() => 'ended');
    const statuses: number[] = [];
    do statuses.push(await postPull(url, job, cookie, statuses.length));
    while ((await Promise.race([ended, Promise.resolve('on')])) === 'on');
    const { added } = z.object({ added: z.number() }).parse(JSON.parse((await importing).stdout));
    expect(statuses.length).toBeGreaterThan(3);
    expect(new Set(statuses)).toEqual(new Set([200]));
    expect(added).toBe(ROWS);

    const exported = path.join(place.folder, 'record.json');
    await place.run(['record', 'export', job, '--data', place.data, '--out', exported]);
    expect(await place.run(['record', 'verify', exported])).toMatchObject({
      code: 3,
      stdout: expect.stringContaining('NOT SEALED'),
    });
    const text = readFileSync(exported, 'utf8');
    expect(text.match(/"source":\{"kind":"typed"\}/g)).toHaveLength(statuses.length);
    expect(text.match(/"detail":"pulls\.csv, line \d+"/g)).toHaveLength(ROWS);
  });
});

async function signedIn(url: string, name: string): Promise<string> {
  const people = z
    .array(z.object({ id: z.string(), name: z.string() }))
    .parse(await (await fetch(`${url}/api/v1/people`)).json());
  const personId = people.find((person) => person.name === name)?.id;
  const answer = await fetch(`${url}/api/v1/session`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ personId, pin: DEMO_PIN }),
  });
  return answer.headers.get('set-cookie')?.split(';')[0] ?? '';
}

async function postPull(url: string, job: string, cookie: string, number: number): Promise<number> {
  const command = {
    kind: 'record-pull',
    id: `0197f3c1-0000-7000-8000-${String(number).padStart(12, '0')}`,
    jointRef: 'J1',
    position: (number % 24) + 1,
    source: { kind: 'typed' },
    takenAt: new Date().toISOString(),
    shown: { torque: { text: '701', unit: 'N·m' }, angle: { text: '30', unit: 'deg' } },
    shownTorqueNm: 701,
    shownAngleDeg: 30,
  };
  const answer = await fetch(`${url}/api/v1/jobs/${job}/commands`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie },
    body: JSON.stringify({ command }),
  });
  return answer.status;
}
