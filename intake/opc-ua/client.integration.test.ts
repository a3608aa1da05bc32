import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type OpcUaWay, opcUaWaySchema } from '@clampwright/core/device';
import type { ToldPull } from '@clampwright/core/line';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { examplePull } from '../serial/example.ts';
import { openJoiningSystem } from './client.ts';
import type { JoiningSystemEvent } from './event.ts';
import { type JoiningServer, startJoiningServer, USER } from './testing/joining-server.ts';
import { type Wire, wireTo } from './testing/proxy.ts';

let folder: string;
let server: JoiningServer;
let wire: Wire;
const open: { close: () => Promise<void> }[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'clampwright-opc-ua-'));
  server = await startJoiningServer(folder);
  wire = await wireTo(server.port);
});
afterEach(async () => {
  await Promise.all(open.splice(0).map((thing) => thing.close()));
  wire.mend();
});
afterAll(async () => {
  await wire.close();
  await server.close();
  await rm(folder, { recursive: true });
});

const settingsFor = (more: Partial<OpcUaWay>): OpcUaWay =>
  opcUaWaySchema.parse({ kind: 'opc-ua', endpointUrl: `opc.tcp://127.0.0.1:${wire.port}`, ...more });
const PLAIN = { securityMode: 'None', securityPolicy: 'None' } as const;

/** Listens, keeping what comes in the way a store does: the same pull once. */
function listen(more: Partial<OpcUaWay>) {
  const kept = new Map<string, ToldPull>();
  const events: JoiningSystemEvent[] = [];
  const taker = {
    take: async (pull: ToldPull) => {
      kept.set(pull.id ?? '', pull);
      return true;
    },
    tell: (event: JoiningSystemEvent) => void events.push(event),
  };
  const pauses = { firstPauseMs: 20, longestPauseMs: 200 };
  open.push(openJoiningSystem(settingsFor(more), taker, { folder: join(folder, 'client'), ...pauses }));
  const heard = (kind: JoiningSystemEvent['kind']) => events.filter((event) => event.kind === kind);
  return {
    kept,
    heard,
    told: (kind: JoiningSystemEvent['kind'], count = 1) => until(() => heard(kind).length >= count),
  };
}

/** The test's own time limit ends it otherwise. */
async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await pause(10);
}

const UNHEARD = { take: async () => true, tell: () => undefined };

/** Takes connections and never says a word. */
async function silentServer(): Promise<readonly [Server, number]> {
  const silent = createServer();
  silent.listen(0, '127.0.0.1');
  await once(silent, 'listening');
  const address = silent.address();
  if (address === null || typeof address === 'string') throw new Error('a server has a port');
  return [silent, address.port];
}

describe('a joining system behind an OPC UA server', () => {
  it('tells results with their traces, and what was missed while the wire was cut', async () => {
    const { kept, heard, told } = listen(PLAIN);
    await told('connected');
    expect(heard('connected')).toEqual([{ kind: 'connected', systems: ['Station', 'Handheld'] }]);
    server.station.tighten(1);
    server.handheld.tighten(2);
    await until(() => kept.size === 2);

    wire.cut();
    await told('lost');
    server.station.tighten(3);
    server.handheld.tighten(4);
    wire.mend();
    await until(() => kept.size === 4);
    server.station.tighten(5);
    await until(() => kept.size === 5);

    const pulls = [...kept.values()].toSorted((a, b) => (a.takenAt ?? '').localeCompare(b.takenAt ?? ''));
    const made = [1, 2, 3, 4, 5].map(examplePull);
    expect(pulls.map(({ torque, angle }) => [torque.value, angle?.value])).toEqual(
      made.map(({ pull }) => [pull.shownTorqueNm, pull.shownAngleDeg]),
    );
    expect(pulls.map(({ trace }) => trace)).toEqual(made.map(({ pull }) => pull.trace));
    expect(pulls.map(({ takenAt, from }) => [takenAt, from])).toEqual(
      made.map(({ stamp }) => [stamp.takenAt, [stamp.serial]]),
    );
    await until(() => ['Station-1', 'Station-3', 'Station-5'].every((id) => server.station.acknowledged.has(id)));
    expect(heard('unreadable')).toEqual([]);
  });

  it('is reached with signed and encrypted messages and a name, once its certificate is trusted', async () => {
    const stranger = listen({ ...USER });
    await stranger.told('lost');
    expect(stranger.heard('lost')[0]).toMatchObject({ certificate: server.certificate });

    const wrongName = listen({ ...USER, password: 'wrong', trustedCertificate: server.certificate });
    await wrongName.told('lost');
    expect(wrongName.heard('lost')[0]).toMatchObject({ detail: expect.stringMatching(/identity|access|user/i) });

    const { kept, told } = listen({ ...USER, trustedCertificate: server.certificate });
    await told('connected');
    server.station.tighten(6);
    await until(() => [...kept.values()].some(({ takenAt }) => takenAt === examplePull(6).stamp.takenAt));
  });

  it('ends while it is still connecting', async () => {
    const options = { folder: join(folder, 'client') };
    await expect(openJoiningSystem(settingsFor(PLAIN), UNHEARD, options).close()).resolves.toBeUndefined();

    const [silent, port] = await silentServer();
    const endpointUrl = `opc.tcp://127.0.0.1:${port}`;
    for (const way of [PLAIN, {}]) {
      const client = openJoiningSystem(settingsFor({ endpointUrl, ...way }), UNHEARD, options);
      await once(silent, 'connection');
      await expect(client.close()).resolves.toBeUndefined();
    }
    silent.close();
  });
});
