import { mkdtemp, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore, type Store } from '@clampwright/store';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from './start.ts';
import { have } from './testing/workshop.ts';

let folder: string;
let store: Store;
const running: RunningServer[] = [];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'clampwright-start-'));
  store = have(await openStore(folder));
});
afterEach(async () => {
  for (const server of running.splice(0)) await server.close();
  await store.close();
  await rm(folder, { recursive: true });
});

async function start(port?: number): Promise<RunningServer> {
  const server = have(await startServer({ store, port }));
  running.push(server);
  return server;
}

describe('starting', () => {
  it('serves on this machine and gives its port back when it closes', async () => {
    const server = await start(0);
    expect((await fetch(`${server.url}/api/v1/health`)).status).toBe(200);
    await server.close();
    running.pop();
    const again = await start(server.port);
    expect(again.port).toBe(server.port);
  });

  it('says which port is taken, and what to do', async () => {
    const first = await start(0);
    const second = await startServer({ store, port: first.port });
    expect(second).toMatchObject({
      ok: false,
      failure: { kind: 'unavailable', message: `Port ${first.port} of 127.0.0.1 is taken by another program.` },
    });
  });

  it('takes a free port when its usual one is taken and none was asked for', async () => {
    const first = await start();
    const second = await start();
    expect(second.port).not.toBe(first.port);
    expect((await fetch(`${second.url}/api/v1/health`)).status).toBe(200);
  });

  it('does not serve to other machines', async () => {
    expect(await startServer({ store, port: 0, host: '0.0.0.0' })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field: 'host' },
    });
  });
});

/** Asks under a name of one's own choice, as `fetch` never would. */
const statusUnder = (port: number, headers: Readonly<Record<string, string>>): Promise<number | undefined> =>
  new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path: '/api/v1/people', method: 'POST', headers }, (response) => {
      response.resume();
      resolve(response.statusCode);
    });
    asked.once('error', reject);
    asked.end('{}');
  });

describe('who is served', () => {
  it('is not whoever comes under another name, or from another page', async () => {
    const { port } = await start(0);
    expect(await statusUnder(port, { host: `wrenches.example:${port}` })).toBe(403);
    expect(await statusUnder(port, { host: `127.0.0.1:${port}`, origin: 'http://elsewhere.example' })).toBe(403);
    expect(await statusUnder(port, { host: `127.0.0.1:${port}`, origin: `http://127.0.0.1:${port}` })).toBe(400);
  });
});
