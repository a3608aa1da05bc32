import { execFile } from 'node:child_process';
import { readFileSync, symlinkSync } from 'node:fs';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { builtCommand } from './testing/built.ts';
import { freshPlace } from './testing/place.ts';

/* The examples of docs/ are run as they stand: every `sh` block, and the `text` block after it is what it must say. */

const REPOSITORY = path.join(import.meta.dirname, '..');
const ADDRESS = 'http://127.0.0.1:4700';
const run = promisify(execFile);

interface Example {
  readonly script: string;
  readonly expected: string;
}

function examplesIn(page: string): readonly Example[] {
  const text = readFileSync(path.join(REPOSITORY, 'docs', page), 'utf8');
  return [...text.matchAll(/^```sh\n(.*?)^```\n\n```text\n(.*?)^```$/gms)].map(([, script = '', expected = '']) => ({
    script,
    expected,
  }));
}

const DIFFERENT: readonly (readonly [kind: string, pattern: RegExp])[] = [
  ['identity', /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g],
  ['hash', /[0-9a-f]{64}/g],
  ['fingerprint', /(?:[0-9a-f]{4} ){7}[0-9a-f]{4}/g],
  ['time', /\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z/g],
];

/** What differs from one run to the next becomes its kind and a number: the same again is the same number. */
function alike(outputs: readonly string[]): readonly string[] {
  const plain = (all: string, [kind, pattern]: (typeof DIFFERENT)[number]): string => {
    const seen = [...new Set(all.match(pattern))];
    return all.replaceAll(pattern, (value) => `${kind} ${seen.indexOf(value) + 1}`);
  };
  const trimmed = outputs.map((output) => output.replaceAll(/ +$/gm, ''));
  return DIFFERENT.reduce(plain, trimmed.join(BETWEEN)).split(BETWEEN);
}

const BETWEEN = '\f';

it.each(['files-in.md', 'record.md', 'api.md', 'devices.md', 'mechanics.md', 'order.md'])(
  'every example of %s says what it says there',
  async (page) => {
    const examples = examplesIn(page);
    expect(examples.length).toBeGreaterThan(2);
    const place = freshPlace();
    for (const folder of ['docs', 'intake'])
      symlinkSync(path.join(REPOSITORY, folder), path.join(place.folder, folder));
    const server = place.start(['serve', '--data', './try', '--port', '0']);
    const url = await server.says(/http:\/\/127\.0\.0\.1:\d+/);
    const blocks = examples.map(({ script }, i) => `{\n${script.replaceAll(ADDRESS, url)}} > said-${i} 2>&1`);
    const script = [`npx() { shift; '${process.execPath}' '${builtCommand()}' "$@"; }`, ...blocks].join('\n');
    await run('bash', ['-u', place.file('examples.sh', script)], { cwd: place.folder });
    const said = examples.map((_, i) => readFileSync(path.join(place.folder, `said-${i}`), 'utf8'));
    expect(alike(said)).toEqual(alike(examples.map(({ expected }) => expected)));
  },
);
