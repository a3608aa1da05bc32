import { execFileSync } from 'node:child_process';
import { analyseTrace, traceOptionsSchema } from '@clampwright/core/trace';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';

const SAMPLES = 20_000;
const TURNS = 7;
/** Readings in one measurement, and measurements in a turn of which the middle one is told. */
const RUNS = 20;
const MEASUREMENTS = 15;
const OPTIONS = traceOptionsSchema.parse({});

/** A run-down, a parabola, a line and yield. */
function torqueAt(deg: number): number {
  if (deg <= 90) return 4;
  if (deg <= 120) return 4 + (1.6 * (deg - 90) ** 2) / 60;
  if (deg <= 190) return 28 + 1.6 * (deg - 120);
  return 140 + 1.6 * (0.15 * (deg - 190) + 10.2 * (1 - Math.exp(-(deg - 190) / 12)));
}

const angleDeg = Float64Array.from({ length: SAMPLES }, (_, i) => (230 * i) / (SAMPLES - 1));
// a sine of a high frequency stands for the noise
const torqueNm = Float64Array.from(angleDeg, (deg, i) => torqueAt(deg) + 0.4 * Math.sin(12.9898 * i));
const timeS = Float64Array.from(angleDeg, (_, i) => i / 1000);

/**
 * Smoothed, its gradient, and the line through the straight part: what a notebook would do with such a trace. It reads
 * the samples from its standard input, and counts the processor time of its process as we do of ours.
 */
const PEER = `
import json, sys, time
import numpy as np
from scipy.signal import savgol_filter
x, y = np.array(json.load(sys.stdin))
def work():
    smooth = savgol_filter(y, 435, 2)
    slope = np.gradient(smooth, x)
    straight = np.abs(slope - np.quantile(slope, 0.95)) < 0.1 * np.quantile(slope, 0.95)
    return np.polyfit(x[straight], y[straight], 1)
def measured():
    start = time.process_time()
    for _ in range(${RUNS}):
        line = work()
    return (time.process_time() - start) / ${RUNS}
measured()
print(json.dumps(sorted(measured() for _ in range(${MEASUREMENTS}))[${MEASUREMENTS} // 2]))
`;

const INPUT = JSON.stringify([[...angleDeg], [...torqueNm]]);

/** Seconds of processor time of one reading, the compiler's and the collector's threads counted in. */
function ours(): number {
  const measured = (): number => {
    const start = process.cpuUsage();
    for (let run = 0; run < RUNS; run++) analyseTrace({ angleDeg, torqueNm, timeS }, OPTIONS);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1e6 / RUNS;
  };
  return median(Array.from({ length: MEASUREMENTS }, measured));
}

function peer(): number | undefined {
  try {
    const said = execFileSync('python3', ['-c', PEER], {
      input: INPUT,
      encoding: 'utf8',
      stdio: ['pipe', 'pipe', 'ignore'],
    });
    return Number(said);
  } catch {
    return undefined;
  }
}

/** Samples a second through the whole reading of a trace, beside scipy's filter, gradient and line alone. */
export async function run(): Promise<BenchResult[]> {
  if (peer() === undefined) {
    process.stdout.write('trace: left out, as there is no python3 with scipy here (Debian: python3-scipy)\n');
    return [];
  }
  for (let warm = 0; warm < 3; warm++) ours();
  const pairs = Array.from({ length: TURNS }, () => ({ ours: ours(), peer: peer() ?? Number.NaN }));
  const oursS = median(pairs.map((pair) => pair.ours));
  const peerS = median(pairs.map((pair) => pair.peer));
  return [
    {
      name: 'trace',
      ours: SAMPLES / oursS,
      peer: SAMPLES / peerS,
      unit: 'samples/s',
      ratio: median(pairs.map((pair) => pair.peer / pair.ours)),
      note: `The same trace of ${SAMPLES} samples: ours strokes, snug, slope, yield, speeds and findings (${(1000 * oursS).toFixed(2)} ms); the peer scipy's savgol_filter, gradient and polyfit (${(1000 * peerS).toFixed(2)} ms). Processor time of either process, warm, the middle of ${MEASUREMENTS} measurements of ${RUNS} runs; medians of ${TURNS} turns.`,
    },
  ];
}
