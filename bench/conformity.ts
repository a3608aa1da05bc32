import { calculate } from '@clampwright/core/calculations';
import { conformityOf } from '@clampwright/core/verdict';
import { median } from './median.ts';
import { pythonSays } from './python.ts';
import type { BenchResult } from './result.ts';

const VALUES = 200_000;
const REPEATS = 15;

/** Values about the window and beyond it, so that middle and tails are both asked for. */
const values = Float64Array.from({ length: VALUES }, (_, n) => 76 + (18 * n) / VALUES);
const LIMITS = { lower: 80, upper: 90 };
const U = 0.6;

function perSecond(what: () => number): number {
  const seconds = (): number => {
    const start = process.cpuUsage();
    const sum = what();
    if (!(sum > 0.5 * VALUES && sum < 0.6 * VALUES)) throw new Error(`a sum of ${sum}`);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1e6;
  };
  for (let warm = 0; warm < 3; warm++) seconds();
  return VALUES / median(Array.from({ length: REPEATS }, seconds));
}

const plain = (): number => {
  let sum = 0;
  for (let n = 0; n < VALUES; n++) sum += conformityOf(values[n]!, U, LIMITS).inside;
  return sum;
};

/** Through the registry: the schema reads each input. */
const called = (): number => {
  let sum = 0;
  for (let n = 0; n < VALUES; n++) {
    const result = calculate('conformity', { value: values[n]!, standardUncertainty: U, ...LIMITS });
    if (!result.ok || typeof result.value !== 'object' || result.value === null) throw new Error('refused');
    const [probability] = Object.values(result.value);
    sum += Number(probability);
  }
  return sum;
};

const PEER = `
import json, time
import numpy as np, scipy
from scipy.stats import norm
v = 76 + 18 * np.arange(${VALUES}) / ${VALUES}
def inside():
    return norm.cdf((${LIMITS.upper} - v) / ${U}) - norm.cdf((${LIMITS.lower} - v) / ${U})
def median(what):
    what()
    times = []
    for _ in range(${REPEATS}):
        start = time.process_time()
        what()
        times.append(time.process_time() - start)
    return sorted(times)[${(REPEATS - 1) / 2}]
print(json.dumps([scipy.__version__, median(inside), float(inside().sum())]))
`;

interface Peer {
  readonly version: string;
  readonly perSecond: number;
  readonly sum: number;
}

/** Undefined where scipy is not there. */
function scipy(): Peer | undefined {
  const told = pythonSays(PEER);
  if (!Array.isArray(told)) return undefined;
  const [version, seconds, sum] = told.map(String);
  return { version: version ?? '', perSecond: VALUES / Number(seconds), sum: Number(sum) };
}

/** Chances of lying inside a second, beside scipy on whole arrays. */
export function run(): Promise<BenchResult[]> {
  const peer = scipy();
  if (peer && Math.abs(peer.sum / plain() - 1) > 1e-12) throw new Error('scipy sums up to something else');
  const result = (name: string, ours: number): BenchResult => {
    const note = peer
      ? `The peer is norm.cdf of scipy ${peer.version} at both limits, on an array of ${VALUES}; both sums agree. Processor time, medians of ${REPEATS}.`
      : 'scipy is not there (Debian: python3-scipy), so nothing stands beside it.';
    const theirs = peer?.perSecond ?? Number.NaN;
    return { name, ours, peer: theirs, unit: 'values/s', ratio: ours / theirs, note };
  };
  return Promise.resolve([
    result('Conformity, one value after the other', perSecond(plain)),
    result('Conformity, each input through the registry', perSecond(called)),
  ]);
}
