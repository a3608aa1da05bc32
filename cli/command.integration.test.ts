import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { LANGUAGES } from '@clampwright/core/quantity';
import { PAPERS } from '@clampwright/core/record';
import { scenarioAt } from '@clampwright/demo';
import { openStore } from '@clampwright/store';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { builtCommand } from './testing/built.ts';
import { have } from './testing/curve-job.ts';
import { freshPlace } from './testing/place.ts';

const run = (...args: readonly string[]) => freshPlace().run(args);

describe('the command', () => {
  it('lists all that it does', async () => {
    const { code, stdout } = await run('--help');
    expect(code).toBe(0);
    for (const name of ['calc', 'serve', 'record', 'pulls', 'jobs', 'demo', 'wrench'])
      expect(stdout).toMatch(new RegExp(`^  ${name}\\b`, 'm'));
  });

  it.each([
    ['record', ['export', 'verify', 'key']],
    ['pulls', ['import']],
    ['demo', ['load', 'remove']],
    ['wrench', ['simulate']],
  ] as const)('lists what it does with %s', async (group, names) => {
    const { stdout } = await run(group, '--help');
    for (const name of names) expect(stdout).toMatch(new RegExp(`^  ${name}\\b`, 'm'));
  });

  it('has the version of its package', async () => {
    const { version } = z
      .object({ version: z.string() })
      .parse(JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8')));
    expect((await run('--version')).stdout).toBe(`${version}\n`);
  });

  it.each([
    [['tighten'], 'unknown command'],
    [['jobs', '--all'], 'unknown option'],
    [['record', 'verify'], 'missing required argument'],
    [['pulls', 'import', 'x.csv'], '--job'],
    [['record'], 'Usage: clampwright record'],
    [[], 'Usage: clampwright'],
  ])('%j exits 2 and says how it is used', async (args, said) => {
    const { code, stdout, stderr } = await run(...args);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(said);
  });

  it('offers every language and paper that there is', async () => {
    const { stdout } = await run('record', 'export', '--help');
    for (const choice of [...LANGUAGES, ...PAPERS]) expect(stdout).toContain(`"${choice}"`);
  });

  it('does not mind a reader that has seen enough', async () => {
    const child = spawn('sh', ['-c', `"${process.execPath}" "${builtCommand()}" calc fastener --schema | true`]);
    const [stderr] = await Promise.all([text(child.stderr), once(child, 'close')]);
    expect(stderr).toBe('');
  });
});

describe('the jobs', () => {
  it('are listed in columns and as JSON', async () => {
    const place = freshPlace();
    await place.run(['demo', 'load', '--data', place.data]);
    const { stdout } = await place.run(['jobs', '--data', place.data]);
    expect(stdout).toMatch(/^id +job +asset +status +done\n/);
    expect(stdout).toMatch(/^[0-9a-f-]{36} {2}Winter tyres on the service vehicle +Service vehicle +closed +40\/40$/m);
    const listed: unknown = JSON.parse((await place.run(['jobs', '--json', '--data', place.data])).stdout);
    expect(listed).toHaveLength(4);
  });

  it('of a folder that is not there are not made up', async () => {
    const { code, stderr } = await run('jobs');
    expect({ code, stderr }).toEqual({ code: 1, stderr: expect.stringContaining('There is no data folder') });
  });
});

describe('the demonstration', () => {
  it('loaded twice is there once', async () => {
    const place = freshPlace();
    const { data } = place;
    for (const _ of [1, 2]) expect(await place.run(['demo', 'load', '--data', data])).toMatchObject({ code: 0 });
    expect((await place.run(['jobs', '--data', data])).stdout.trim().split('\n')).toHaveLength(1 + 4);
  });

  it('is made whole after a loading that broke off another day', async () => {
    const place = freshPlace();
    const { people, jobs } = scenarioAt(new Date(Date.now() - 86_400_000));
    const [finished] = jobs.filter(({ state }) => state.status === 'closed');
    const store = have(await openStore(place.data));
    for (const person of people) have(await store.people.add({ ...person, pinHash: undefined }, { demo: true }));
    have(await store.jobs.open(finished?.entries.slice(0, 1) ?? []));
    await store.close();
    await place.run(['demo', 'load', '--data', place.data]);
    const { stdout } = await place.run(['jobs', '--data', place.data]);
    expect(stdout).toMatch(/Winter tyres .* closed +40\/40$/m);
    expect(stdout.trim().split('\n')).toHaveLength(1 + 4);
  });
});
