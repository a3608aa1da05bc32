import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { CALCULATIONS } from '@clampwright/core/calculations';
import { openStore } from '@clampwright/store';
import { describe, expect, it, onTestFinished } from 'vitest';
import { z } from 'zod';
import { builtCommand } from './testing/built.ts';
import { freshPlace } from './testing/place.ts';

const calc = (args: readonly string[], input?: string | Uint8Array) => freshPlace().run(['calc', ...args], input);
const refusalSchema = z.strictObject({
  error: z.strictObject({ kind: z.literal('invalid'), field: z.string(), message: z.string(), expected: z.string() }),
});
const refusalIn = (stderr: string) => refusalSchema.parse(JSON.parse(stderr)).error;

describe('one input', () => {
  it('gives one answer', async () => {
    const { code, stdout, stderr } = await calc(['convert'], '{"value": 75, "from": "lbf.ft", "to": "N.m"}');
    // NIST SP 811:2008, appendix B: 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m, both exact.
    expect(JSON.parse(stdout)).toEqual({ value: expect.closeTo(75 * 4.4482216152605 * 0.3048, 10) });
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  });

  it('may stand on the command line', async () => {
    const { stdout } = await calc(['convert', '--input', '{"value": 1, "from": "in", "to": "mm"}']);
    expect(JSON.parse(stdout)).toEqual({ value: 25.4 });
  });

  it('may begin with a byte order mark', async () => {
    const { stdout } = await calc(['convert'], '\ufeff{"value": 1, "from": "in", "to": "mm"}');
    expect(JSON.parse(stdout)).toEqual({ value: 25.4 });
  });

  it.each(CALCULATIONS.map(({ name, example }) => [name, example] as const))(
    'of %s is answered for its example',
    async (name, example) => {
      const { code, stdout } = await calc([name], JSON.stringify(example));
      expect(code).toBe(0);
      const entry = CALCULATIONS.find((candidate) => candidate.name === name);
      expect(entry?.output.safeParse(JSON.parse(stdout)).success).toBe(true);
    },
  );
});

it('gives an array for an array, an error in the place of each input that is refused', async () => {
  const inputs = [
    { value: 1, from: 'lbf.in', to: 'N.m' },
    { value: 1, from: 'N.m', to: 'mm' },
    'nothing',
    { value: 2, from: 'in', to: 'mm' },
  ];
  const { code, stdout } = await calc(['convert'], JSON.stringify(inputs));
  expect(code).toBe(0);
  expect(JSON.parse(stdout)).toEqual([
    { value: expect.closeTo(4.4482216152605 * 0.0254, 12) },
    { error: expect.objectContaining({ kind: 'invalid', field: 'to' }) },
    { error: expect.objectContaining({ kind: 'invalid', field: '(whole input)' }) },
    { value: 50.8 },
  ]);
  expect((await calc(['convert'], '[]')).stdout).toBe('[]\n');
});

describe('a bad input', () => {
  it.each([
    ['convert', '{"value": 1, "from": "furlong", "to": "mm"}', 'from', 'N·m'],
    ['convert', '{"from": "in", "to": "mm"}', 'value', 'number'],
    ['convert', '{"value": "1,5", "from": "in", "to": "mm"}', 'value', 'number'],
    ['convert', '{"value": 1, "from": "in", "to": "mm", "digits": 2}', 'digits', 'no such field'],
    ['fastener', '{"thread": "M13"}', 'thread', 'M12'],
    ['verdict', '{"quantities": [{"name": "torque", "value": 1, "lower": 3, "upper": 2}]}', 'quantities[0]', ''],
    ['tightening-order', '{"layout": "circle", "count": 1, "method": "star"}', 'count', '2'],
    ['convert', '{"value": 1, "from"', '(standard input)', 'JSON'],
    ['convert', '', '(standard input)', 'JSON'],
    ['convert', '   \n', '(standard input)', 'JSON'],
    ['convert', 'null', '(whole input)', 'object'],
    ['konvert', '{}', 'name', 'tightening-order'],
  ])('for %s, %s, exits 2, naming field and wish', async (name, input, field, wish) => {
    const { code, stdout, stderr } = await calc([name], input);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    const refusal = refusalIn(stderr);
    expect(refusal.field).toContain(field);
    expect(refusal.expected).toContain(wish);
  });

  it('may be no standard input at all', () => {
    const script = `"${process.execPath}" "${builtCommand()}" calc convert <&-`;
    const { status, stderr } = spawnSync('sh', ['-c', script], { encoding: 'utf8' });
    expect(status).toBe(2);
    expect(refusalIn(stderr)).toMatchObject({ field: '(standard input)', message: 'nothing came in' });
  });

  it('may be bytes of any kind', async () => {
    const { code, stderr } = await calc(
      ['convert'],
      Uint8Array.from({ length: 5000 }, (_, i) => (i * 131) % 256),
    );
    expect(code).toBe(2);
    expect(refusalIn(stderr).field).toBe('(standard input)');
  });
});

describe('a bolt of the workshop’s own', () => {
  const named = JSON.stringify({ thread: 'Tie rod 23' });
  const rod = {
    id: '01991f3c-0000-7000-8000-000000000023',
    kind: 'bolt',
    name: 'Tie rod 23',
    source: 'Drawing KH-114',
    system: 'ISO metric',
    majorDiameterMm: 23,
    pitchMm: 2,
    by: { id: '01991f3c-0000-7000-8000-000000000009', name: 'Lead' },
    addedAt: '2026-03-02T06:00:00.000Z',
  } as const;

  it('is known by its name where the workshop’s data are at hand', async () => {
    const place = freshPlace();
    expect((await place.run(['calc', 'fastener'], named)).code).toBe(2);
    const store = await openStore(place.data);
    if (!store.ok) throw new Error(JSON.stringify(store.failure));
    expect((await store.value.ownRows.add(rod)).ok).toBe(true);
    await store.value.close();
    const { code, stdout } = await place.run(['calc', 'fastener', '--data', place.data], named);
    expect(code).toBe(0);
    // ISO 68-1, basic profile: d2 = d − 0.649519·P.
    expect(JSON.parse(stdout)).toMatchObject({ pitchDiameterMm: expect.closeTo(23 - 0.649519 * 2, 5) });
  });

  it('is looked for in no folder that is not there', async () => {
    const { code, stderr } = await calc(['fastener', '--data', 'nowhere'], named);
    expect(code).not.toBe(0);
    expect(stderr).toContain('There is no data folder');
  });
});

it('lists every calculation when none is named', async () => {
  const { code, stdout } = await calc([]);
  expect(code).toBe(0);
  for (const { name, title } of CALCULATIONS) expect(stdout).toMatch(new RegExp(`^${name} +${title}$`, 'm'));
});

it('shows what a calculation takes and gives as JSON Schema', async () => {
  const { code, stdout } = await calc(['wrench-setting', '--schema']);
  expect(code).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({
    input: {
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      required: ['torqueNm', 'leverMm'],
      properties: { torqueNm: { type: 'number' } },
    },
    output: { properties: { settingNm: { type: 'number' }, factor: { type: 'number' } } },
  });
});

it('loads the core and nothing of the other rooms', async () => {
  const coverage = mkdtempSync(path.join(tmpdir(), 'clampwright-loaded-'));
  onTestFinished(() => rmSync(coverage, { recursive: true }));
  const input = '{"value": 1, "from": "in", "to": "mm"}';
  await freshPlace().run(['calc', 'convert'], input, { NODE_V8_COVERAGE: coverage });
  const [report = ''] = readdirSync(coverage);
  const { result } = z
    .object({ result: z.array(z.object({ url: z.string() })) })
    .parse(JSON.parse(readFileSync(path.join(coverage, report), 'utf8')));
  const own = result.filter(({ url }) => !url.includes('/node_modules/'));
  const rooms = own.flatMap(({ url }) => /\/(\w+)\/dist\//.exec(url)?.[1] ?? []);
  expect([...new Set(rooms)].toSorted()).toEqual(['cli', 'core']);
});
