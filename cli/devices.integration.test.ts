import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { openStore } from '@clampwright/store';
import { beforeEach, describe, expect, it } from 'vitest';
import { curveJob, have, JOB } from './testing/curve-job.ts';
import { freshPlace, type Place } from './testing/place.ts';

let place: Place;
let inbox: string;
beforeEach(async () => {
  place = freshPlace();
  await curveJob(place.data);
  const store = have(await openStore(place.data));
  const mapping = {
    decimalSign: 'point',
    headerRow: true,
    position: 'pos',
    torque: 'torque',
    torqueUnit: { unit: 'N·m' },
    time: { column: 'time', format: 'iso-8601', zone: 'UTC' },
  };
  have(await store.mappings.save('inbox', { name: 'inbox', ...mapping }));
  await store.close();
  inbox = path.join(place.folder, 'inbox');
  mkdirSync(inbox);
});

const serving = ['serve', '--port', '0', '--no-demo'];
const list = (...flags: readonly string[]) => place.run(['devices', '--data', place.data, ...flags]);

describe('a folder named on the command line', () => {
  it('is watched, again on the next start, and listed with what it told', async () => {
    const watching = ['--watch', 'inbox', '--mapping', 'inbox', '--wrench', 'KH-004'];
    const first = place.start([...serving, '--data', place.data, ...watching]);
    await first.says(/http:\/\/127\.0\.0\.1:\d+/);
    place.file('inbox/good.csv', 'pos,torque,time\n1,1.4,2026-03-02T07:00:00Z\n2,1.35,2026-03-02T07:00:10Z\n');
    place.file('inbox/bad.csv', 'pos,torque,time\n1,much,2026-03-02T07:00:00Z\n');
    while (!existsSync(path.join(inbox, 'taken', 'good.csv'))) await pause(50);
    expect(readFileSync(path.join(inbox, 'refused', 'bad.csv.reason.txt'), 'utf8')).toContain('line 2, torque');
    await first.end();
    const second = place.start([...serving, '--data', place.data]);
    await second.says(/http:\/\/127\.0\.0\.1:\d+/);
    place.file('inbox/more.csv', 'pos,torque,time\n3,1.4,2026-03-02T07:00:20Z\n');
    while (!existsSync(path.join(inbox, 'taken', 'more.csv'))) await pause(50);
    await second.end();

    expect(readdirSync(inbox).toSorted()).toEqual(['refused', 'taken']);
    const { stdout } = await list();
    const [head, row] = stdout.split('\n').map((line) => line.split(/ {2,}/));
    expect(head?.slice(0, 2)).toEqual(['device', 'way']);
    expect(row).toMatchObject({ 0: 'Folder inbox', 1: 'folder', 3: '3', 5: '0', 6: '1', 9: 'more.csv' });
    expect(JSON.parse((await list('--json')).stdout)).toMatchObject([{ counts: { taken: 3, unreadable: 1 } }]);
    const pulls = await place.run(['record', 'export', JOB, '--data', place.data, '--format', 'csv', '--out', '-']);
    expect(pulls.stdout).toContain('1.35');
  });

  it.each([
    ['--watch: there is no folder', ['--watch', 'nowhere', '--mapping', 'inbox', '--wrench', 'KH-004']],
    ['--wrench: there is no wrench KH-9', ['--watch', 'inbox', '--mapping', 'inbox', '--wrench', 'KH-9']],
  ])('is refused where it cannot be: %s', async (words, options) => {
    const { code, stderr } = await place.run([...serving, '--data', place.data, ...options]);
    expect(stderr).toContain(words);
    expect(code).toBe(2);
  });

  it('is hinted at where there is no device yet', async () => {
    expect(await list()).toMatchObject({ code: 0, stdout: '', stderr: expect.stringContaining('no devices yet') });
  });
});
