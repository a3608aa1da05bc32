import { randomUUID } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { simulatedOnPty, type WrenchOnPty } from '@clampwright/intake/serial';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type DeviceStanding, shownDeviceSchema } from '../api/contract.ts';
import { aWrench, have, identity, jobOnBracket, takeWrench, type Workshop, workshop } from '../testing/workshop.ts';

const LINES = {
  name: 'Bench wrench',
  delimiter: ';',
  decimalSign: 'comma',
  torqueUnit: 'N·m',
  lines: [
    {
      says: 'result',
      fields: [{ means: 'mark', text: 'KW' }, { means: 'number' }, { means: 'torque' }, { means: 'serial' }],
    },
  ],
  endOfPull: { by: 'result' },
};

let bench: Workshop;
let lead: string;
let jobId: string;
const wrench = aWrench('0417');
const link = join(tmpdir(), `wrench-${randomUUID()}`);

beforeEach(async () => {
  bench = await workshop();
  lead = await bench.signIn('lead');
  jobId = await jobOnBracket(bench);
  await takeWrench(bench, jobId, wrench, lead);
  await bench.ask('POST', '/line-descriptions', LINES, lead);
});
afterEach(() => bench.close());

const terminal = async (): Promise<WrenchOnPty> => have(await simulatedOnPty({ link }));
const says = (pty: WrenchOnPty, text: string) => pty.sendBytes(Buffer.from(text));

async function standing(): Promise<DeviceStanding> {
  const [shown] = shownDeviceSchema.array().parse((await bench.ask('GET', '/devices')).body);
  if (!shown) throw new Error('the device is listed');
  return shown.standing;
}
/** The test's own time limit ends it otherwise. */
async function until(isSo: (now: DeviceStanding) => boolean): Promise<DeviceStanding> {
  for (;;) {
    const now = await standing();
    if (isSo(now)) return now;
    await pause(20);
  }
}

describe('a device on a real pseudo-terminal', () => {
  it('records its pulls by its description, counts the rest, and comes back when it was unplugged', async () => {
    const pty = await terminal();
    const device = {
      id: identity('bench'),
      name: 'At the press',
      way: { kind: 'serial', path: link, lines: LINES.name },
    };
    expect((await bench.ask('POST', '/devices', { device }, lead)).status).toBe(200);
    await until(({ state }) => state === 'connected');

    await says(pty, `KW;1;42,0;${wrench.serial}\r\nKW;1;42,0;${wrench.serial}\r\nhello\r\nKW;2;41,5;KH-9\r\n`);
    expect(await until(({ refused }) => refused === 1)).toMatchObject({ taken: 1, unreadable: 1 });

    await says(pty, 'oops\nKW;3;42');
    await until(({ unreadable }) => unreadable === 2);
    await pty.close();
    expect(await until(({ state }) => state === 'lost')).toMatchObject({
      unreadable: 3,
      lastFault: { kind: 'line', code: 'cut-off' },
    });
    const again = await terminal();
    await until(({ state }) => state === 'connected');
    await says(again, `KW;4;41,8;${wrench.serial}\r\n`);
    await until(({ taken }) => taken === 2);
    await again.close();

    const entries = have(await bench.store.jobs.entries(jobId));
    const pulls = entries.flatMap(({ body }) => (body.kind === 'pull' ? [body.pull] : []));
    expect(pulls.map(({ shown, cell, source }) => [shown.torque.text, cell.position, source])).toEqual([
      ['42,0', 1, { kind: 'serial', detail: wrench.serial }],
      ['41,8', 2, { kind: 'serial', detail: wrench.serial }],
    ]);
  });

  it('is waited for when it stalls in the middle of a line, and a pull that never ended is told and not taken', async () => {
    const streaming = {
      ...LINES,
      name: 'Streaming wrench',
      lines: [
        { says: 'sample', fields: [{ means: 'mark', text: 'S' }, { means: 'number' }, { means: 'torque' }] },
        ...LINES.lines,
      ],
      samplesPerSecond: 100,
    };
    expect((await bench.ask('POST', '/line-descriptions', streaming, lead)).status).toBe(200);
    const pty = await terminal();
    const device = {
      id: identity('bench'),
      name: 'At the press',
      way: { kind: 'serial', path: link, lines: streaming.name },
    };
    await bench.ask('POST', '/devices', { device }, lead);
    await until(({ state }) => state === 'connected');

    await says(pty, 'S;1;12,0\nKW;1;42');
    await until(({ lastSeenAt }) => lastSeenAt !== null);
    await pause(300);
    expect(await standing()).toMatchObject({ taken: 0, refused: 0, unreadable: 0 });
    await says(pty, `,0;${wrench.serial}\n`);
    await until(({ taken }) => taken === 1);

    await says(pty, 'S;2;9,0\nS;2;15,0\n');
    await pause(300);
    await says(pty, `S;3;11,0\nKW;3;41,5;${wrench.serial}\n`);
    expect(await until(({ taken }) => taken === 2)).toMatchObject({
      unreadable: 1,
      lastFault: { kind: 'line', code: 'no-result' },
    });
    await pty.close();
  });

  it('is not harmed by a flood of rubbish', async () => {
    const pty = await terminal();
    const device = {
      id: identity('bench'),
      name: 'At the press',
      way: { kind: 'serial', path: link, lines: LINES.name },
    };
    await bench.ask('POST', '/devices', { device }, lead);
    await until(({ state }) => state === 'connected');
    const burst = Array.from({ length: 4 }, (_, i) => `KW;${i};42,0;${wrench.serial}\n`).join('');
    await says(pty, burst + 'x\n'.repeat(20_000));
    expect(await until(({ unreadable }) => unreadable === 20_000)).toMatchObject({ taken: 4 });
    await pty.close();
  });
});
