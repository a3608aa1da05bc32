import { spawnSync } from 'node:child_process';
import { censoredFit, chiSquare, fisherF, normal, type Observation, studentT } from '@clampwright/core/statistics';
import { median } from './median.ts';
import { pythonSays } from './python.ts';
import type { BenchResult } from './result.ts';

const CALLS = 20_000;
const REPEATS = 9;

/** Shares from one tail to the other. */
const SHARES = Float64Array.from({ length: CALLS }, (_, i) => (i + 0.5) / CALLS);

const QUANTILES = {
  normal: (share: number) => normal.quantile(share),
  t: studentT(9).quantile,
  F: fisherF(4, 20).quantile,
  'chi-square': chiSquare(19).quantile,
} as const;
type Name = keyof typeof QUANTILES;

/** Calibrations: left, right and interval censored. */
const HISTORY: readonly Observation[] = Array.from({ length: 60 }, (_, i) => {
  const days = 120 + 37 * (i % 12);
  return i % 4 === 0 ? { from: i % 8 === 0 ? days / 3 : 0, to: days } : { from: days, to: Infinity };
});

const seconds = (work: () => void): number => {
  work();
  const times = Array.from({ length: REPEATS }, () => {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1e6;
  });
  return median(times);
};

function perSecond(name: Name): number {
  const quantile = QUANTILES[name];
  let sum = 0;
  const took = seconds(() => {
    for (let i = 0; i < CALLS; i++) sum += quantile(SHARES[i]!);
  });
  if (!Number.isFinite(sum)) throw new Error(`a quantile of ${name} is no number`);
  return CALLS / took;
}

const FITS = 200;

function fitsPerSecond(): number {
  let sum = 0;
  const took = seconds(() => {
    for (let i = 0; i < FITS; i++) sum += censoredFit(HISTORY, 'weibull')?.shape ?? Number.NaN;
  });
  if (!Number.isFinite(sum)) throw new Error('no fit');
  return FITS / took;
}

const SCIPY = `
import json, time
import numpy as np, scipy
from scipy import stats
p = (np.arange(${CALLS}) + 0.5) / ${CALLS}
def per_second(what):
    what()
    times = []
    for _ in range(${REPEATS}):
        start = time.process_time()
        what()
        times.append(time.process_time() - start)
    return ${CALLS} / sorted(times)[${(REPEATS - 1) / 2}]
print(json.dumps([scipy.__version__] + [per_second(f) for f in (
    lambda: stats.norm.ppf(p), lambda: stats.t.ppf(p, 9), lambda: stats.f.ppf(p, 4, 20), lambda: stats.chi2.ppf(p, 19))]))
`;

const R = `
suppressMessages(library(survival))
i <- 0:59; days <- 120 + 37 * (i %% 12)
from <- ifelse(i %% 4 == 0, ifelse(i %% 8 == 0, days / 3, NA), days)
to <- ifelse(i %% 4 == 0, days, NA)
fit <- function() survreg(Surv(from, to, type = "interval2") ~ 1, dist = "weibull")
invisible(fit())
took <- median(sapply(1:${REPEATS}, function(n) system.time(for (k in 1:20) fit())[["user.self"]]))
cat(as.character(packageVersion("survival")), 20 / took)
`;

/** What a program prints; undefined where it is not there or fails. */
function printed(program: string, args: readonly string[]): string | undefined {
  const { status, stdout } = spawnSync(program, args, { encoding: 'utf8' });
  return status === 0 ? stdout : undefined;
}

function scipy(): readonly string[] {
  const told = pythonSays(SCIPY);
  return Array.isArray(told) ? told.map(String) : [];
}

/** Quantiles a second beside scipy's on arrays, and censored fits beside R's survival package. */
export function run(): Promise<BenchResult[]> {
  const [version, ...rates] = scipy();
  const names: readonly Name[] = ['normal', 't', 'F', 'chi-square'];
  const quantiles = names.map((name, index): BenchResult => {
    const ours = perSecond(name);
    const peer = Number(rates[index] ?? Number.NaN);
    const note = version
      ? `The peer is scipy ${version} on an array of ${CALLS} shares. Processor time, medians of ${REPEATS}.`
      : 'scipy is not there (Debian: python3-scipy), so nothing stands beside it.';
    return { name: `quantiles of ${name}`, ours, peer, unit: 'calls/s', ratio: ours / peer, note };
  });
  const [survival, rate] = (printed('Rscript', ['-e', R]) ?? '').split(' ');
  const ours = fitsPerSecond();
  const peer = rate ? Number(rate) : Number.NaN;
  const note = survival
    ? `60 calibrations, left, right and interval censored. The peer is survreg of R’s survival ${survival}. Processor time, medians of ${REPEATS}.`
    : 'R with its survival package is not there (Debian: r-cran-survival), so nothing stands beside it.';
  return Promise.resolve([
    ...quantiles,
    { name: 'Weibull fit of censored calibrations', ours, peer, unit: 'fits/s', ratio: ours / peer, note },
  ]);
}
