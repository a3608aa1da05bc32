import { randomBytes, randomUUID } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { examplePull } from './example.ts';
import { openSerial, type SerialEvent, type SerialWrench } from './port.ts';
import { type PtyOptions, simulatedOnPty, type WrenchOnPty } from './pty.ts';
import { linesOf } from './write.ts';

const open: { close: () => Promise<void> }[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((thing) => thing.close()));
});

/** A name of one's own: the number of a terminal that is gone is soon another's, and a reader would find that one. */
const ownName = (): string => join(tmpdir(), `wrench-${randomUUID()}`);

async function wrenchOn(options: PtyOptions = { link: ownName() }): Promise<WrenchOnPty> {
  const made = await simulatedOnPty(options);
  if (!made.ok) throw new Error(JSON.stringify(made.failure));
  open.push(made.value);
  return made.value;
}

function listenTo(path: string): { readonly events: SerialEvent[]; readonly wrench: SerialWrench } {
  const events: SerialEvent[] = [];
  const wrench = openSerial(path, (event) => events.push(event), { firstPauseMs: 20, longestPauseMs: 100 });
  open.push(wrench);
  return { events, wrench };
}

/** Waits until enough events of a kind are there; the test's own time limit ends it otherwise. */
async function until(events: readonly SerialEvent[], kind: SerialEvent['kind'], count: number): Promise<void> {
  while (events.filter((event) => event.kind === kind).length < count) await pause(5);
}
const pullIds = (events: readonly SerialEvent[]) =>
  events.flatMap((event) => (event.kind === 'pull' ? [event.pull.id] : []));

describe('a wrench on a real pseudo-terminal', () => {
  it('gives the five pulls that were made', async () => {
    const wrench = await wrenchOn();
    const { events } = listenTo(wrench.path);
    await until(events, 'connected', 1);
    const made = [1, 2, 3, 4, 5].map(examplePull);
    for (const { pull, stamp } of made) expect(await wrench.send(pull, stamp, 'at-once')).toEqual({ ok: true });
    await until(events, 'pull', 5);
    const pulls = events.flatMap((event) => (event.kind === 'pull' ? [event.pull] : []));
    expect(pulls.map((pull) => pull.id)).toEqual(made.map(({ stamp }) => stamp.id));
    expect(pulls.map((pull) => pull.trace)).toEqual(made.map(({ pull }) => pull.trace));
    expect(pulls.map((pull) => pull.torque.value)).toEqual(made.map(({ pull }) => pull.shownTorqueNm));
    expect(events.some((event) => event.kind === 'unreadable')).toBe(false);
  });

  it('sends samples as the hand turns', async () => {
    const wrench = await wrenchOn();
    const { events } = listenTo(wrench.path);
    await until(events, 'connected', 1);
    const { pull, stamp } = examplePull(1);
    const sent = wrench.send(pull, stamp, 'live');
    await until(events, 'sample', 10);
    expect(pullIds(events)).toEqual([]);
    await sent;
    await until(events, 'pull', 1);
  });

  it('reads on after rubbish and binary bytes', async () => {
    const wrench = await wrenchOn();
    const { events } = listenTo(wrench.path);
    await until(events, 'connected', 1);
    const { pull, stamp } = examplePull(1);
    await wrench.sendBytes(Buffer.from('OK\r\nAT+X\r\ns 1 0.3'));
    await wrench.sendBytes(randomBytes(5000));
    await wrench.sendBytes(Buffer.from('\n'));
    await wrench.send(pull, stamp, 'at-once');
    await until(events, 'pull', 1);
    expect(pullIds(events)).toEqual([stamp.id]);
    expect(events.some((event) => event.kind === 'unreadable')).toBe(true);
  });

  it('says that the wrench is gone and takes it up again when it is back', async () => {
    const link = ownName();
    const first = await wrenchOn({ link });
    const { events } = listenTo(link);
    await until(events, 'connected', 1);
    await first.close();
    await until(events, 'lost', 1);
    const second = await wrenchOn({ link });
    await until(events, 'connected', 2);
    const { pull, stamp } = examplePull(2);
    await second.send(pull, stamp, 'at-once');
    await until(events, 'pull', 1);
    expect(pullIds(events)).toEqual([stamp.id]);
  });

  it('says that wrenches are gone that were unplugged while they streamed', async () => {
    const { pull, stamp } = examplePull(1);
    const samples = Buffer.from(linesOf(pull, stamp).slice(0, -1).join('').repeat(100));
    for (let round = 0; round < 10; round++) {
      const wrench = await wrenchOn();
      const { events } = listenTo(wrench.path);
      await until(events, 'connected', 1);
      const streaming = wrench.sendBytes(samples);
      await until(events, 'sample', 1);
      await wrench.close();
      await streaming;
      await until(events, 'lost', 1);
      expect(events.some(({ kind }) => kind === 'lost')).toBe(true);
    }
  });

  it('waits for a wrench that is not there yet', async () => {
    const link = ownName();
    const { events } = listenTo(link);
    await until(events, 'lost', 1);
    await wrenchOn({ link });
    await until(events, 'connected', 1);
    expect(events.filter((event) => event.kind === 'lost')).toHaveLength(1);
  });

  it('is silent after it was closed', async () => {
    const wrench = await wrenchOn();
    const { events, wrench: serial } = listenTo(wrench.path);
    await until(events, 'connected', 1);
    await serial.close();
    const heard = events.length;
    await wrench.close();
    await pause(200);
    expect(events).toHaveLength(heard);
  });

  it('says that the terminal is gone to whoever goes on sending', async () => {
    const wrench = await wrenchOn();
    await wrench.close();
    const { pull, stamp } = examplePull(1);
    expect(await wrench.send(pull, stamp, 'at-once')).toMatchObject({ ok: false, failure: { kind: 'unavailable' } });
  });

  it('names socat when it is missing', async () => {
    expect(await simulatedOnPty({ socat: 'socat-that-is-not-here' })).toMatchObject({
      ok: false,
      failure: {
        kind: 'unavailable',
        message: expect.stringContaining('socat'),
        remedy: expect.stringContaining('apt-get install socat'),
      },
    });
  });
});
