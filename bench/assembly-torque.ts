import { calculate } from '@clampwright/core/calculations';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';

const CALLS = 5000;
const REPEATS = 7;

const frictionOf = (n: number): number => 0.08 + 0.0001 * (n % 1000);

/** By name, as a slider asks: schema, tables, working shown. */
function ours(): number {
  let sum = 0;
  const startMs = performance.now();
  for (let n = 0; n < CALLS; n++) {
    const friction = frictionOf(n);
    const input = { thread: 'M12', propertyClass: '8.8', threadFriction: friction, bearingFriction: friction };
    if (calculate('assembly-torque', input).ok) sum++;
  }
  if (sum !== CALLS) throw new Error(`${CALLS - sum} refused`);
  return (1000 * CALLS) / (performance.now() - startMs);
}

/** The bare formula with its constants written in. */
function bare(): number {
  let sum = 0;
  const startMs = performance.now();
  for (let n = 0; n < CALLS; n++) {
    const friction = frictionOf(n);
    const twist = ((1.5 * 10.8633) / 10.3582) * (1.75 / (Math.PI * 10.8633) + 1.155 * friction);
    const preloadN = (576 * 84.267) / Math.sqrt(1 + 3 * twist ** 2);
    sum += preloadN * (1.75 / (2 * Math.PI) + 0.577 * friction * 10.8633 + (friction * 15.065) / 2);
  }
  if (!(sum > 0)) throw new Error('no torque');
  return (1000 * CALLS) / (performance.now() - startMs);
}

/** Assembly torques a second: how far a slider may be dragged within a frame. */
export function run(): Promise<BenchResult[]> {
  ours();
  bare();
  const pairs = Array.from({ length: REPEATS }, () => ({ ours: ours(), peer: bare() }));
  return Promise.resolve([
    {
      name: 'Assembly torque',
      ours: median(pairs.map((pair) => pair.ours)),
      peer: median(pairs.map((pair) => pair.peer)),
      unit: 'calls/s',
      ratio: median(pairs.map((pair) => pair.ours / pair.peer)),
      note: `By name through the registry, with schema, look-up in the tables, warnings and the working shown; the peer is the bare formula with constants written in. Medians of ${REPEATS} runs by turns.`,
    },
  ]);
}
