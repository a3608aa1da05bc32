import type { BenchResult } from './result.ts';

/** Every benchmark by name; each runs ours and its peer's and says how they compare. */
const BENCHMARKS = {
  'durable-append': async () => (await import('./durable-append.ts')).run(),
  'open-job': async () => (await import('./open-job.ts')).run(),
  'csv-import': async () => (await import('./csv-import.ts')).run(),
  'csv-import-read': async () => (await import('./csv-import-read.ts')).run(),
  'assembly-torque': async () => (await import('./assembly-torque.ts')).run(),
  'monte-carlo': async () => (await import('./monte-carlo.ts')).run(),
  quantiles: async () => (await import('./quantiles.ts')).run(),
  'page-load': async () => (await import('./page-load.ts')).run(),
  'joint-mechanics': async () => (await import('./joint-mechanics.ts')).run(),
  cover: async () => (await import('./cover.ts')).run(),
  'elastic-interaction': async () => (await import('./elastic-interaction.ts')).run(),
  flood: async () => (await import('./flood.ts')).run(),
  trace: async () => (await import('./trace.ts')).run(),
  'trace-drawing': async () => (await import('./trace-drawing.ts')).run(),
  'slider-frame': async () => (await import('./slider-frame.ts')).run(),
  conformity: async () => (await import('./conformity.ts')).run(),
  recall: async () => (await import('./recall.ts')).run(),
  'live-verdict': async () => (await import('./live-verdict.ts')).run(),
  'stream-memory': async () => (await import('./stream-memory.ts')).run(),
  'memory-at-rest': async () => (await import('./memory-at-rest.ts')).run(),
} as const satisfies Record<string, () => Promise<readonly BenchResult[]>>;

const figure = (value: number): string =>
  value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(3);

function show({ name, ours, peer, unit, ratio, note }: BenchResult): string {
  return `${name}\n  ours ${figure(ours)} ${unit}   peer ${figure(peer)} ${unit}   ratio ${ratio.toFixed(2)}\n  ${note}\n`;
}

const asked = process.argv.slice(2);
const unknown = asked.find((name) => !(name in BENCHMARKS));
if (unknown !== undefined) {
  process.stderr.write(`There is no benchmark ${unknown}; there are ${Object.keys(BENCHMARKS).join(', ')}.\n`);
  process.exit(2);
}
for (const [name, run] of Object.entries(BENCHMARKS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  process.stderr.write(`${name} …\n`);
  for (const result of await run()) process.stdout.write(show(result));
}
