import {
  drawnResults,
  type Model,
  type MonteCarloInput,
  monteCarlo,
  type Uncertain,
} from '@clampwright/core/statistics';
import { median } from './median.ts';
import { pythonSays } from './python.ts';
import type { BenchResult } from './result.ts';

const DRAWS = 1_000_000;
const REPEATS = 15;

/** Preload of an M12 at 80 N·m: torque and thread friction normal, bearing friction rectangular. */
const QUANTITIES: readonly Uncertain[] = [
  { value: 80, standardUncertainty: 1.6, distribution: 'normal' },
  { value: 0.12, standardUncertainty: 0.012, distribution: 'normal' },
  { value: 0.12, standardUncertainty: 0.012, distribution: 'rectangular' },
];
const PITCH_ARM = 1.75 / (2 * Math.PI);
const THREAD_ARM = 10.8633 / Math.sqrt(3);
const BEARING_ARM = 15.065 / 2;

const model: Model = ([torque, thread, bearing], results, from, count) => {
  for (let i = 0; i < count; i++) {
    results[from + i] = (1000 * torque![i]!) / (PITCH_ARM + THREAD_ARM * thread![i]! + BEARING_ARM * bearing![i]!);
  }
};

/** Draws a second of processor time, which other programs on the machine do not lengthen much. */
function perSecond(work: (input: MonteCarloInput) => number): number {
  const seconds = (seed: number): number => {
    const start = process.cpuUsage();
    const figure = work({ quantities: QUANTITIES, model, draws: DRAWS, seed });
    if (!(figure > 20_000 && figure < 80_000)) throw new Error(`a preload of ${figure} N`);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1e6;
  };
  for (let warm = 0; warm < 3; warm++) seconds(warm);
  return DRAWS / median(Array.from({ length: REPEATS }, (_, n) => seconds(n + 1)));
}

const PEER = `
import json, time
import numpy as np
rng = np.random.default_rng(1)
n = ${DRAWS}
def drawn():
    torque = 80 + 1.6 * rng.standard_normal(n)
    thread = 0.12 + 0.012 * rng.standard_normal(n)
    bearing = 0.12 + 0.012 * np.sqrt(3) * (2 * rng.random(n) - 1)
    return 1000 * torque / (${PITCH_ARM} + ${THREAD_ARM} * thread + ${BEARING_ARM} * bearing)
def summed_up():
    f = np.sort(drawn())
    q = round(0.95 * n)
    r = np.argmin(f[q:] - f[: n - q])
    return f.mean(), f.std(ddof=1), f[round(0.025 * n)], f[round(0.975 * n)], f[r], f[r + q]
def median(what):
    what()
    times = []
    for _ in range(${REPEATS}):
        start = time.process_time()
        what()
        times.append(time.process_time() - start)
    return sorted(times)[${(REPEATS - 1) / 2}]
print(json.dumps([np.__version__, median(drawn), median(summed_up)]))
`;

interface Peer {
  readonly version: string;
  readonly drawn: number;
  readonly summedUp: number;
}

/** Draws a second; undefined where numpy is not there. */
function numpy(): Peer | undefined {
  const told = pythonSays(PEER);
  if (!Array.isArray(told)) return undefined;
  const [version = '', drawn, summedUp] = told.map(String);
  return { version, drawn: DRAWS / Number(drawn), summedUp: DRAWS / Number(summedUp) };
}

/** Draws of a preload a second, beside numpy drawing and reckoning the same in vectors. */
export function run(): Promise<BenchResult[]> {
  const drawn = perSecond((input) => drawnResults(input)[0] ?? 0);
  const summedUp = perSecond((input) => monteCarlo(input).mean);
  const peer = numpy();
  const result = (name: string, ours: number, theirs = Number.NaN, what = ''): BenchResult => {
    const note = peer
      ? `The peer is numpy ${peer.version}: a million draws of the same three columns, the same arithmetic${what}. Processor time, medians of ${REPEATS}.`
      : 'numpy is not there (Debian: python3-numpy), so nothing stands beside it.';
    return { name, ours, peer: theirs, unit: 'draws/s', ratio: ours / theirs, note };
  };
  return Promise.resolve([
    result('Monte Carlo of a preload, drawing', drawn, peer?.drawn),
    result(
      'Monte Carlo of a preload, summed up',
      summedUp,
      peer?.summedUp,
      ', mean, standard deviation, symmetric and shortest interval of 95 %',
    ),
  ]);
}
