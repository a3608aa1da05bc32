import { CALCULATIONS, type CalculationName, calculate } from '@clampwright/core/calculations';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';

const NAMES = ['compliance', 'tightening-angle', 'joint-check'] as const satisfies readonly CalculationName[];
const SECONDS = 0.5;
const REPEATS = 5;
const FRAMES_A_SECOND = 60;

/** How often something can be done in a second. */
function perSecond(work: () => unknown): number {
  const endMs = performance.now() + 1000 * SECONDS;
  let done = 0;
  while (performance.now() < endMs) {
    for (let n = 0; n < 20; n++) work();
    done += 20;
  }
  return done / SECONDS;
}

function measure(name: (typeof NAMES)[number]): BenchResult {
  const example: unknown = CALCULATIONS.find((calculation) => calculation.name === name)?.example;
  const answer = calculate(name, example);
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  const work = () => calculate(name, example);
  const copy = () => structuredClone(answer.value);
  perSecond(work);
  perSecond(copy);
  const pairs = Array.from({ length: REPEATS }, () => ({ ours: perSecond(work), peer: perSecond(copy) }));
  const ours = median(pairs.map((pair) => pair.ours));
  const frame = Math.floor(ours / FRAMES_A_SECOND);
  return {
    name,
    ours,
    peer: median(pairs.map((pair) => pair.peer)),
    unit: 'calls/s',
    ratio: median(pairs.map((pair) => pair.ours / pair.peer)),
    note: `Input read by its schema, worked out, working shown: ${frame} times within a frame of a sixtieth of a second. The peer is the platform's own copying of the answer. Medians of ${REPEATS} runs by turns.`,
  };
}

/** Calls a second of what is redrawn while a finger drags a slider. */
export async function run(): Promise<BenchResult[]> {
  return NAMES.map(measure);
}
