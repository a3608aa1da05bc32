import { execFileSync } from 'node:child_process';
import { analyseTrace, traceOptionsSchema } from '@clampwright/core/trace';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';

const SAMPLES = 20_000;
const REPEATS = 7;
const SECONDS = 0.5;
const OPTIONS = traceOptionsSchema.parse({});

/** A run-down, a parabola, a line and yield; the same in both languages. */
function torqueAt(deg: number): number {
  if (deg <= 90) return 4;
  if (deg <= 120) return 4 + (1.6 * (deg - 90) ** 2) / 60;
  if (deg <= 190) return 28 + 1.6 * (deg - 120);
  return 140 + 1.6 * (0.15 * (deg - 190) + 10.2 * (1 - Math.exp(-(deg - 190) / 12)));
}

const angleDeg = Float64Array.from({ length: SAMPLES }, (_, i) => (230 * i) / (SAMPLES - 1));
// a sine of a high frequency stands for the noise, so that both sides read the same figures
const torqueNm = Float64Array.from(angleDeg, (deg, i) => torqueAt(deg) + 0.4 * Math.sin(12.9898 * i));
const timeS = Float64Array.from(angleDeg, (_, i) => i / 1000);

/** Smoothed, its gradient, and the line through the straight part: what a notebook would do with such a trace. */
const PEER = `
import json, sys, time
import numpy as np
from scipy.signal import savgol_filter
n = ${SAMPLES}
x = np.linspace(0.0, 230.0, n)
u = x - 190
y = np.where(x <= 90, 4.0, np.where(x <= 120, 4 + 1.6 * (x - 90) ** 2 / 60,
    np.where(x <= 190, 28 + 1.6 * (x - 120), 140 + 1.6 * (0.15 * u + 10.2 * (1 - np.exp(-u / 12))))))
y = y + 0.4 * np.sin(12.9898 * np.arange(n))
def work():
    smooth = savgol_filter(y, 435, 2)
    slope = np.gradient(smooth, x)
    straight = np.abs(slope - np.quantile(slope, 0.95)) < 0.1 * np.quantile(slope, 0.95)
    return np.polyfit(x[straight], y[straight], 1)
work()
end = time.perf_counter() + ${SECONDS}
done = 0
while time.perf_counter() < end:
    line = work()
    done += 1
print(json.dumps({"perSecond": done / ${SECONDS}, "slope": float(line[0])}))
`;

const ours = (): number => {
  const endMs = performance.now() + 1000 * SECONDS;
  let done = 0;
  for (; performance.now() < endMs; done++) analyseTrace({ angleDeg, torqueNm, timeS }, OPTIONS);
  return done / SECONDS;
};

const SAID = /"perSecond": ([\d.]+)/;

function peer(): number | undefined {
  try {
    const said = execFileSync('python3', ['-c', PEER], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    return Number(SAID.exec(said)?.[1]);
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
  ours();
  const pairs = Array.from({ length: REPEATS }, () => ({ ours: SAMPLES * ours(), peer: SAMPLES * (peer() ?? 0) }));
  const perSecond = median(pairs.map((pair) => pair.ours));
  return [
    {
      name: 'trace',
      ours: perSecond,
      peer: median(pairs.map((pair) => pair.peer)),
      unit: 'samples/s',
      ratio: median(pairs.map((pair) => pair.ours / pair.peer)),
      note: `A trace of ${SAMPLES} samples with times: ours strokes, snug, slope, yield, speeds and findings (${((1000 * SAMPLES) / perSecond).toFixed(2)} ms); the peer scipy's savgol_filter, gradient and polyfit. Medians of ${REPEATS} runs by turns.`,
    },
  ];
}
