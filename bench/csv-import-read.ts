import { Readable } from 'node:stream';
import { parse } from '@clampwright/core/failure';
import { mappingSchema, readPulls } from '@clampwright/intake/file';
import Papa from 'papaparse';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';

const ROWS = 200_000;
const REPEATS = 5;
const PIECE_BYTES = 65_536;

/** A semicolon file with decimal commas, as an office in Europe saves it. */
function file(): readonly Uint8Array[] {
  const lines = ['position;torque;angle;time;verdict'];
  for (let n = 0; n < ROWS; n++) {
    const torque = (60 + (n % 70) / 10).toFixed(1).replace('.', ',');
    const time = new Date(Date.UTC(2026, 0, 1) + 1000 * n).toISOString();
    lines.push(`${(n % 24) + 1};${torque};${30 + (n % 9)};${time};ok`);
  }
  const bytes = new TextEncoder().encode(`${lines.join('\r\n')}\r\n`);
  return Array.from({ length: Math.ceil(bytes.length / PIECE_BYTES) }, (_, i) =>
    bytes.subarray(i * PIECE_BYTES, (i + 1) * PIECE_BYTES),
  );
}

const MAPPING = {
  name: 'bench',
  decimalSign: 'comma',
  headerRow: true,
  position: 'position',
  torque: 'torque',
  torqueUnit: { unit: 'N·m' },
  angle: 'angle',
  time: { column: 'time', format: 'iso-8601', zone: 'UTC' },
  ignored: ['verdict'],
};
const CONTEXT = { jobId: '01973c3e-6a10-7000-8000-00000000000a', jointRef: 'J1', readAt: '2026-05-04T09:00:00.000Z' };

/** Cells cut, figures and times read, identity hashed: pulls ready for the job; rows a second. */
async function ours(pieces: readonly Uint8Array[]): Promise<number> {
  const mapping = parse(mappingSchema, MAPPING);
  if (!mapping.ok) throw new Error(JSON.stringify(mapping.failure));
  let pulls = 0;
  const startMs = performance.now();
  for await (const outcome of readPulls(Readable.from(pieces), mapping.value, CONTEXT)) {
    if (outcome.kind === 'pull') pulls++;
  }
  const perSecond = (1000 * pulls) / (performance.now() - startMs);
  if (pulls !== ROWS) throw new Error(`${pulls} pulls of ${ROWS} rows`);
  return perSecond;
}

/** Cells cut and nothing more; rows a second. */
async function papaparse(pieces: readonly Uint8Array[]): Promise<number> {
  let rows = 0;
  const startMs = performance.now();
  const parser = Papa.parse(Papa.NODE_STREAM_INPUT, { delimiter: ';' });
  const done = new Promise<void>((resolve, reject) => {
    parser.on('data', () => rows++);
    parser.on('end', resolve);
    parser.on('error', reject);
  });
  Readable.from(pieces).pipe(parser);
  await done;
  const perSecond = (1000 * rows) / (performance.now() - startMs);
  if (rows < ROWS) throw new Error(`${rows} rows of ${ROWS}`);
  return perSecond;
}

/** Reading of a file alone, without placing, judging and storing, beside a general CSV parser. */
export async function run(): Promise<BenchResult[]> {
  const pieces = file();
  await ours(pieces);
  await papaparse(pieces);
  const pairs = [];
  for (let n = 0; n < REPEATS; n++) pairs.push({ ours: await ours(pieces), peer: await papaparse(pieces) });
  return [
    {
      name: 'CSV reading',
      ours: median(pairs.map((pair) => pair.ours)),
      peer: median(pairs.map((pair) => pair.peer)),
      unit: 'rows/s',
      ratio: median(pairs.map((pair) => pair.ours / pair.peer)),
      note: `${ROWS} rows cut, converted, timed and given their identity; the peer is papaparse on the same stream, which only cuts cells. Medians of ${REPEATS} runs by turns.`,
    },
  ];
}
