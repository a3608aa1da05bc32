import { existsSync, lstatSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { ToldPull } from '@clampwright/core/line';
import { openSerial, type SerialEvent } from '@clampwright/intake/serial';
import { FAULTS } from '@clampwright/intake/simulated';
import { describe, expect, it, onTestFinished } from 'vitest';
import { freshPlace } from './testing/place.ts';

/** Listens as the server does, in this process; gives what came, as it comes. */
function listening(port: string): readonly SerialEvent[] {
  const events: SerialEvent[] = [];
  const wrench = openSerial(port, (event) => events.push(event), { firstPauseMs: 20, longestPauseMs: 100 });
  onTestFinished(() => wrench.close());
  return events;
}

/** Waits for so many; the test's own time limit ends it otherwise. */
async function pullsIn(events: readonly SerialEvent[], count: number): Promise<readonly ToldPull[]> {
  for (;;) {
    const pulls = events.flatMap((event) => (event.kind === 'pull' ? [event.pull] : []));
    if (pulls.length >= count) return pulls;
    await pause(5);
  }
}

/** Under a name of its own: the number of a terminal that is gone is soon another's, and a listener would find that one. */
function started(...args: readonly string[]) {
  const place = freshPlace();
  return place.start(['wrench', 'simulate', '--pause', '1', '--link', path.join(place.folder, 'wrench'), ...args]);
}
const PORT = /The wrench speaks at (\S+)/;

describe('the simulated wrench', () => {
  it('is read by another process over the pseudo-terminal, pull by pull', async () => {
    const wrench = started('--torque', '60', '--pulls', '3');
    const pulls = await pullsIn(listening(await wrench.says(PORT)), 3);
    const { stdout } = await wrench.end();
    for (const [index, { torque, angle, trace, from }] of pulls.entries()) {
      expect(stdout).toContain(`pull ${index + 1}: ${torque.value} N·m, ${angle?.value}°`);
      expect(torque.value).toBeGreaterThan(54);
      expect(torque.value).toBeLessThan(66);
      expect(trace?.timeS.length).toBeGreaterThan(20);
      expect(from).toEqual(['SIMULATED-1']);
    }
    expect(new Set(pulls.map(({ id }) => id)).size).toBe(3);
  });

  it('turns on by an angle from its threshold', async () => {
    const wrench = started('--torque', '90', '--angle', '40', '--from', '50', '--pulls', '1');
    const [pull] = await pullsIn(listening(await wrench.says(PORT)), 1);
    expect(pull?.angle?.value).toBeGreaterThan(36);
    expect(pull?.angle?.value).toBeLessThan(44);
  });

  it('ends by itself after its pulls', async () => {
    const args = ['wrench', 'simulate', '--torque', '20', '--pulls', '2', '--pause', '0'];
    const { code, stdout, stderr } = await freshPlace().run(args);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout.match(/^pull \d: [\d.]+ N·m, [\d.]+°$/gm)).toHaveLength(2);
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
    'takes its terminal along on %s, in the middle of a pull',
    async (signal) => {
      const wrench = started('--torque', '60', '--pause', '0');
      const port = await wrench.says(PORT);
      const events = listening(port);
      while (!events.some(({ kind }) => kind === 'sample')) await pause(5);
      expect(await wrench.end(signal)).toMatchObject({ code: 0, stderr: '' });
      while (!events.some(({ kind }) => kind === 'lost')) await pause(5);
      expect(existsSync(port)).toBe(false);
    },
  );

  it('is found under the same name each time', async () => {
    const place = freshPlace();
    const link = path.join(place.folder, 'wrench');
    for (const _ of [1, 2]) {
      const wrench = place.start(['wrench', 'simulate', '--link', link, '--pause', '60']);
      expect(await wrench.says(PORT)).toBe(link);
      expect(lstatSync(link).isSymbolicLink()).toBe(true);
      await wrench.end();
    }
  });

  it.each([
    ['--torque', '0', 'a torque above 0'],
    ['--torque', '85,4', 'a torque above 0'],
    ['--angle', '-5', 'an angle above 0'],
    ['--pulls', '1.5', 'a whole number'],
    ['--pause', 'soon', 'seconds from 0'],
    ['--fault', 'lazy', 'stopped-short'],
    ['--torque', '1e9', 'a torque above 0'],
  ])('refuses %s %s', async (option, value, wanted) => {
    const { code, stdout, stderr } = await freshPlace().run(['wrench', 'simulate', `${option}=${value}`]);
    expect({ code, stdout, stderr }).toEqual({ code: 2, stdout: '', stderr: expect.stringContaining(wanted) });
  });

  it('says what to install where there are no pseudo-terminals', async () => {
    const { code, stderr } = await freshPlace().run(['wrench', 'simulate'], '', { PATH: '' });
    expect({ code, stderr }).toEqual({ code: 1, stderr: expect.stringContaining('apt-get install socat') });
  });

  it('knows every fault that the help names, and the help names all', async () => {
    const { stdout } = await freshPlace().run(['wrench', 'simulate', '--help']);
    const choices = /choices: ([^)]*?),\s+default/.exec(stdout)?.[1] ?? '';
    expect([...choices.matchAll(/"([\w-]+)"/g)].map(([, fault]) => fault)).toEqual([...FAULTS]);
  });
});
