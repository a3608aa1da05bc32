"""Straight lines through windows of a made curve, by scipy. Prints `line-fit-table.ts`.

Run: python3 line-fit.py > line-fit-table.ts   (Debian: apt-get install python3-scipy)
Plain lines: scipy.stats.linregress. Robust lines: scipy.optimize.least_squares with the Huber loss, its scale 1.345
times 1.4826 times the median absolute deviation from the plain line, started from that line.
"""
import json
import random

import numpy as np
import scipy
from scipy import optimize, stats

random.seed(5393)


def torque(deg):
    if deg <= 90:
        return 4.0
    if deg <= 120:
        return 4 + 1.6 * (deg - 90) ** 2 / 60
    if deg <= 190:
        return 28 + 1.6 * (deg - 120)
    beyond = deg - 190
    return 140 + 1.6 * (0.15 * beyond + 0.85 * 12 * (1 - np.exp(-beyond / 12)))


def window(from_deg, to_deg, step, noise, holes):
    x = np.round(np.arange(from_deg, to_deg + step / 2, step), 6)
    y = np.array([round(float(torque(d)) + random.gauss(0, noise), 3) for d in x])
    for _ in range(holes):
        y[random.randrange(len(y))] = 0.0
    return x, y


def fit(x, y):
    plain = stats.linregress(x, y)
    off = np.abs(y - plain.intercept - plain.slope * x)
    scale = 1.345 * 1.4826 * float(np.median(off))
    middle = float(np.mean(x))
    if scale < 1e-9:
        return {"slope": plain.slope, "slopeStandardError": plain.stderr, "robustSlope": plain.slope}
    start = [plain.intercept + plain.slope * middle, plain.slope]
    robust = optimize.least_squares(
        lambda p: y - p[0] - p[1] * (x - middle), start,
        jac=lambda p: -np.column_stack([np.ones_like(x), x - middle]),
        loss="huber", f_scale=scale, xtol=1e-15, ftol=1e-15, gtol=1e-15, max_nfev=10000)
    # Newton's method to the end: on the points inside the bound the loss is quadratic, outside it is linear
    p = robust.x
    for _ in range(50):
        r = y - p[0] - p[1] * (x - middle)
        psi = np.clip(r, -scale, scale)
        inside = (np.abs(r) <= scale).astype(float)
        a = np.column_stack([np.ones_like(x), x - middle])
        p = p + np.linalg.solve(a.T @ (a * inside[:, None]), a.T @ psi)
    assert abs(p[1] - robust.x[1]) < 1e-6 * abs(p[1])
    return {"slope": plain.slope, "slopeStandardError": plain.stderr, "robustSlope": float(p[1])}


cases = []
for from_deg, to_deg, step, noise, holes in [
    (125, 185, 0.5, 0.0, 0), (125, 185, 0.5, 0.4, 0), (125, 185, 0.5, 0.4, 3), (125, 185, 0.1, 0.8, 10),
    (130, 140, 0.25, 0.2, 1), (20, 80, 1.0, 0.3, 0), (195, 230, 0.5, 0.5, 2), (150, 153, 0.1, 0.05, 0),
]:
    x, y = window(from_deg, to_deg, step, noise, holes)
    cases.append({"fromDeg": from_deg, "stepDeg": step, "torqueNm": y.tolist(), **fit(x, y)})
print("// Made by line-fit.py with scipy " + scipy.__version__ + "; not to be edited by hand.")
print("export interface FittedWindow {")
print("  readonly fromDeg: number;")
print("  readonly stepDeg: number;")
print("  readonly torqueNm: readonly number[];")
print("  readonly slope: number;")
print("  readonly slopeStandardError: number;")
print("  readonly robustSlope: number;")
print("}")
print()
print("export const FITTED_WINDOWS: readonly FittedWindow[] = [")
for case in cases:
    print("  {")
    for key, value in case.items():
        text = json.dumps(value) if isinstance(value, list) else repr(float(value))
        print(f"    {key}: {text},")
    print("  },")
print("];")
