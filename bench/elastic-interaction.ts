import {
  matrixOf,
  modelSchema,
  orderSearchRequestSchema,
  ringClosing,
  searching,
  simulate,
} from '@clampwright/core/layout';
import { median } from './median.ts';
import { pythonSays } from './python.ts';
import type { BenchResult } from './result.ts';

const BOLTS = 200;
const ROUNDS = 5;
const REPEATS = 15;

/** A vessel's flange of six metres with two hundred bolts, held by its hub: first row of the compliance, mm/N. */
const FIRST_ROW = ringClosing(
  {
    radiusMm: 3000,
    bendingNmm2: (200_000 * 200 * 150 ** 3) / 12,
    torsionNmm2: 77_000 * 1e8,
    bedNPerMm2: 60_000,
    gasketInsideMm: 30,
    boltsOutsideMm: 40,
    hubN: 3e8,
  },
  BOLTS,
).map((one, steps) => 2 * one + (steps === 0 ? 1 / 1.2e6 : 0));

/** Every seventy-seventh bolt: far apart from pull to pull, each once. */
const ORDER = Array.from({ length: BOLTS }, (_, pull) => (pull * 77) % BOLTS);
const ROUND = { bolts: ORDER, targetsN: ORDER.map(() => 400_000) };

/** Processor time, which other programs on the machine do not lengthen much. */
function milliseconds(work: () => unknown): number {
  const run = () => {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
  for (let warm = 0; warm < 5; warm++) run();
  return median(Array.from({ length: REPEATS }, run));
}

/** The same system: an inverse by LAPACK, then each pull as one column. No bolt of this flange goes slack. */
const PEER = `
import json, sys, time
import numpy as np
row = np.array(json.loads(sys.stdin.read()))
n = len(row)
m = np.array([[row[(i - j) % n] for j in range(n)] for i in range(n)])
order = [(p * 77) % n for p in range(n)]
def rounds(count):
    force = np.zeros(n)
    low = np.linalg.cholesky(m[np.ix_(order, order)])
    first = np.linalg.inv(low) * np.diag(low)[:, None]
    for p, bolt in enumerate(order):
        force[order[:p + 1]] += first[p, :p + 1] * (400000 - force[bolt])
    stiff = np.linalg.inv(m)
    for _ in range(count - 1):
        for bolt in order:
            if force[bolt] < 400000:
                force += stiff[:, bolt] * ((400000 - force[bolt]) / stiff[bolt, bolt])
    return force
def median(what):
    for _ in range(3): what()
    times = []
    for _ in range(${REPEATS}):
        start = time.process_time()
        what()
        times.append(time.process_time() - start)
    return 1000 * sorted(times)[${(REPEATS - 1) / 2}]
force = rounds(${ROUNDS})
print(json.dumps([np.__version__, median(lambda: rounds(${ROUNDS})), median(lambda: np.linalg.inv(m)), float(force.min()), float(force.max())]))
`;

interface Peer {
  readonly version: string;
  readonly roundsMs: number;
  readonly inverseMs: number;
  readonly leastN: number;
  readonly mostN: number;
}

/** Undefined where numpy is not there. */
function numpy(): Peer | undefined {
  const told = pythonSays(PEER, JSON.stringify(FIRST_ROW));
  if (!Array.isArray(told)) return undefined;
  const [version = '', ...figures] = told.map(String);
  const [roundsMs = NaN, inverseMs = NaN, leastN = NaN, mostN = NaN] = figures.map(Number);
  return { version, roundsMs, inverseMs, leastN, mostN };
}

const matrix = matrixOf(BOLTS, (i, j) => FIRST_ROW[(i - j + BOLTS) % BOLTS] ?? 0);

function simulated(peer: Peer | undefined): BenchResult[] {
  const rounds = Array.from({ length: ROUNDS }, () => ROUND);
  const all = milliseconds(() => simulate({ first: matrix }, rounds));
  const once = milliseconds(() => simulate({ first: matrix }, [ROUND]));
  const { finalN } = simulate({ first: matrix }, rounds);
  const off = peer
    ? Math.max(Math.abs(Math.min(...finalN) / peer.leastN - 1), Math.abs(Math.max(...finalN) / peer.mostN - 1))
    : NaN;
  const note = peer
    ? `The peer is numpy ${peer.version} with its LAPACK`
    : 'numpy is not there (Debian: python3-numpy), so nothing stands beside it';
  return [
    {
      name: `${BOLTS} bolts over ${ROUNDS} rounds, pull by pull`,
      ours: all,
      peer: peer?.roundsMs ?? NaN,
      unit: 'ms',
      ratio: all / (peer?.roundsMs ?? NaN),
      note: `${note}: factor and inverse once, then a column for each pull, without looking for slack bolts. Largest difference of least and greatest force: ${off.toExponential(1)}. Processor time, medians of ${REPEATS}; less is better.`,
    },
    {
      name: `${BOLTS} bolts, inverse bordered bolt by bolt with one round`,
      ours: once,
      peer: peer?.inverseMs ?? NaN,
      unit: 'ms',
      ratio: once / (peer?.inverseMs ?? NaN),
      note: `${note}: one inverse of the same matrix. Processor time, medians of ${REPEATS}; less is better.`,
    },
  ];
}

const MODEL = modelSchema.parse({ kind: 'neighbours', arrangement: 'circle', count: 24, neighbour: 0.3, decay: -0.2 });

/** Time until a search of 24 bolts is within a hundredth of what it has found in the end. */
function search(): BenchResult {
  const request = orderSearchRequestSchema.parse({ model: MODEL, targetN: 100_000, mostPulls: 24, draws: 50_000 });
  const begun = searching(request);
  if (!begun.ok) throw new Error(JSON.stringify(begun.failure));
  const news: { readonly ms: number; readonly spread: number }[] = [];
  const start = performance.now();
  let step = begun.value.next();
  while (!step.done) {
    news.push({ ms: performance.now() - start, spread: step.value.spread });
    step = begun.value.next();
  }
  const wholeMs = performance.now() - start;
  const { spread, byRounds, tried } = step.value;
  const nearMs = news.find((one) => one.spread <= 1.01 * spread)?.ms ?? wholeMs;
  return {
    name: 'Order search of 24 bolts in one round, until within 1 % of its best',
    ours: nearMs,
    peer: wholeMs,
    unit: 'ms',
    ratio: nearMs / wholeMs,
    note: `The peer is the whole search of ${tried} orders. Spread ${spread.toFixed(4)}, of the star ${byRounds[0]?.starSpread.toFixed(4)}, by the numbers ${byRounds[0]?.circularSpread.toFixed(4)}.`,
  };
}

/** Rounds of a large flange beside numpy, and how fast an order is found. */
export function run(): Promise<BenchResult[]> {
  return Promise.resolve([...simulated(numpy()), search()]);
}
