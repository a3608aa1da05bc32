import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';

const run = promisify(execFile);
const here = fileURLToPath(new URL('.', import.meta.url));
const reportSchema = z.object({
  pulls: z.number(),
  refused: z.number(),
  lastLine: z.number(),
  distinct: z.number(),
  grownMb: z.number(),
  seconds: z.number(),
});

/** Runs in a process of its own, on what `npm run build` made, so that nothing else is in its memory. */
const CHILD = `
import { mappingSchema, readPulls } from '@clampwright/intake/file';
const [kind] = process.argv.slice(1);
const LINES = 1_000_000;
const at = (n) => new Date(Date.UTC(2026, 0, 1) + 1000 * n).toISOString();
const line = {
  pulls: (n) => (n % 10_000 === 0 ? 'bad line' : \`\${(n % 24) + 1};\${60 + (n % 70) / 10};\${30 + (n % 9)};\${at(n)}\`.replaceAll('.', ',')),
  quote: (n) => (n === 5 ? '3;"60;30;' + at(n) : \`3;60;30;\${at(n)}\`),
  samples: (n) => \`run\${Math.floor(n / 500_000)};\${n % 90};\${n % 400};\${n / 1000}\`.replaceAll('.', ','),
}[kind];
async function* file() {
  const header = kind === 'samples' ? 'run;torque;angle;t' : 'pos;torque;angle;t';
  let text = header + '\\r\\n';
  for (let n = 1; n <= LINES; n++) {
    text += line(n) + '\\r\\n';
    if (text.length > 60_000) { yield Buffer.from(text); text = ''; }
  }
  yield Buffer.from(text);
}
const samples = { rows: { each: 'sample', curveBy: 'run' }, time: { column: 't', format: 'elapsed-seconds', start: at(0) } };
const rows = { position: 'pos', time: { column: 't', format: 'iso-8601', zone: 'UTC' } };
const mapping = mappingSchema.parse({
  name: 'large', decimalSign: 'comma', headerRow: true, torque: 'torque', torqueUnit: { unit: 'N·m' }, angle: 'angle',
  ...(kind === 'samples' ? samples : rows),
});
const context = { jobId: '01973c3e-6a10-7000-8000-00000000000a', jointRef: 'J1', readAt: at(0) };
gc();
const before = process.memoryUsage().rss;
let [pulls, refused, lastLine, peak, seen] = [0, 0, 0, before, 0];
const start = performance.now();
let lastId = '', distinct = 0;
for await (const outcome of readPulls(file(), mapping, context)) {
  if (outcome.kind === 'pull') { pulls++; if (outcome.pull.id !== lastId) distinct++; lastId = outcome.pull.id; } else refused++;
  lastLine = outcome.line;
  if (++seen % 10_000 === 0) peak = Math.max(peak, process.memoryUsage().rss);
}
peak = Math.max(peak, process.memoryUsage().rss);
console.log(JSON.stringify({ pulls, refused, lastLine, distinct, grownMb: (peak - before) / 1e6, seconds: (performance.now() - start) / 1000 }));
`;

async function read(kind: 'pulls' | 'quote' | 'samples') {
  const child = await run(process.execPath, ['--expose-gc', '--input-type=module', '-e', CHILD, kind], { cwd: here });
  const report = reportSchema.parse(JSON.parse(child.stdout));
  console.log(`${kind}: ${report.seconds.toFixed(1)} s, memory grew by ${report.grownMb.toFixed(0)} MB`);
  return report;
}

describe('a file of a million lines', () => {
  it('is read line by line in bounded memory', async () => {
    const { grownMb, ...report } = await read('pulls');
    expect(report).toMatchObject({ pulls: 999_900, refused: 100, distinct: 999_900, lastLine: 1_000_001 - 0 });
    expect(grownMb).toBeLessThan(300);
  });

  it('is not held back by a quote that never closes', async () => {
    const { grownMb, ...report } = await read('quote');
    expect(report).toMatchObject({ pulls: 999_999, refused: 1 });
    expect(grownMb).toBeLessThan(300);
  });

  it('does not gather a curve without end', async () => {
    const { grownMb, ...report } = await read('samples');
    expect(report).toMatchObject({ pulls: 0, refused: 3 });
    expect(grownMb).toBeLessThan(300);
  });
});
