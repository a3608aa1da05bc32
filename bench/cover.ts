import { modelled, modelSchema } from '@clampwright/core/layout';
import { z } from 'zod';
import { median } from './median.ts';
import { pythonSays } from './python.ts';
import type { BenchResult } from './result.ts';

const REPEATS = 9;
const BOLT_N_PER_MM = 600_000;

/** A cover of 640 by 400 mm with 24 bolts along its edge; a thickness of its own for each turn, as none is worked out twice. */
const coverOf = (heightMm: number) =>
  modelSchema.parse({
    kind: 'plate',
    layout: { kind: 'rectangle', rows: 5, columns: 9, pitchXMm: 75, pitchYMm: 90, edgeOnly: true },
    heightMm,
    edgeMm: 20,
    bedNPerMm3: 60,
    boltNPerMm: BOLT_N_PER_MM,
  });
const heightAt = (turn: number) => 20 + turn / 1000;

/** The same energy with the same terms: products of Legendre polynomials by numpy's own rule, LAPACK for the rest. */
const PEER = `
import json, time
import numpy as np
from numpy.polynomial import legendre
E, NU, BED, HALF = 200000.0, 0.3, 60.0, (320.0, 200.0)
xs = [(i - 4) * 75.0 for i in range(9)]
ys = [(i - 2) * 90.0 for i in range(5)]
spots = [(x, ys[0]) for x in xs[:-1]] + [(xs[-1], y) for y in ys[:-1]] + [(x, ys[-1]) for x in xs[:0:-1]] + [(xs[0], y) for y in ys[:0:-1]]
def axis(half, length):
    n = min(40, int(np.ceil(14 + 3 * half / length)))
    at, weight = legendre.leggauss(n)
    one = [legendre.Legendre.basis(k) * np.sqrt(k + 0.5) for k in range(n)]
    v, s, b = (np.array([p.deriv(d)(at) if d else p(at) for p in one]) for d in (0, 1, 2))
    return n, one, (v * weight) @ v.T, (s * weight) @ s.T, (b * weight) @ b.T, (b * weight) @ v.T
def closing(height):
    d = E * height**3 / (12 * (1 - NU**2))
    length = (d / BED) ** 0.25
    a, b = HALF
    nx, px, mx, sx, bx, hx = axis(a, length)
    ny, py, my, sy, by, hy = axis(b, length)
    total = 0
    for ox in (0, 1):
        for oy in (0, 1):
            X = lambda m: m[ox::2, ox::2]
            Y = lambda m: m[oy::2, oy::2]
            k = d * (np.kron(X(bx), Y(my)) * b / a**3 + np.kron(X(mx), Y(by)) * a / b**3
                + (NU * (np.kron(X(hx), Y(hy).T) + np.kron(X(hx).T, Y(hy))) + 2 * (1 - NU) * np.kron(X(sx), Y(sy))) / (a * b)) + BED * a * b * np.kron(X(mx), Y(my))
            load = np.array([np.kron([p(x / a) for p in px[ox::2]], [p(y / b) for p in py[oy::2]]) for x, y in spots]).T
            total = total + load.T @ np.linalg.solve(k, load)
    return total
for turn in range(2): closing(20 + turn / 1000)
times = []
for turn in range(${REPEATS}):
    start = time.process_time()
    closing(20 + turn / 1000)
    times.append(time.process_time() - start)
print(json.dumps({"version": np.__version__, "ms": 1000 * sorted(times)[${(REPEATS - 1) / 2}], "ownMmPerN": closing(20.0).diagonal().tolist()}))
`;

const peerSchema = z.object({ version: z.string(), ms: z.number(), ownMmPerN: z.array(z.number()) });

/** A cover worked out anew, beside numpy. */
export function run(): Promise<BenchResult[]> {
  const peer = peerSchema.optional().parse(pythonSays(PEER));
  const timed = (turn: number) => {
    const model = coverOf(heightAt(turn));
    const start = process.cpuUsage();
    modelled(model);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
  for (let warm = 1; warm <= 4; warm++) timed(-warm);
  const ours = median(Array.from({ length: REPEATS }, (_, turn) => timed(turn)));
  const joint = modelled(coverOf(heightAt(0)));
  const { size, values } = joint.ok ? joint.value.first : { size: 0, values: [] };
  const off = Math.max(
    ...(peer?.ownMmPerN ?? []).map((theirs, i) =>
      Math.abs(((values[i * (size + 1)] ?? Number.NaN) - 1 / BOLT_N_PER_MM) / theirs - 1),
    ),
  );
  const beside = peer
    ? `The peer is numpy ${peer.version} with its LAPACK: the same energy, the same terms. Largest difference of a bolt's own closing: ${off.toExponential(1)}.`
    : 'numpy is not there (Debian: python3-numpy), so nothing stands beside it.';
  return Promise.resolve([
    {
      name: 'Cover with free edges and 24 bolts, worked out',
      ours,
      peer: peer?.ms ?? Number.NaN,
      unit: 'ms',
      ratio: ours / (peer?.ms ?? Number.NaN),
      note: `${beside} Processor time, medians of ${REPEATS}; less is better.`,
    },
  ]);
}
