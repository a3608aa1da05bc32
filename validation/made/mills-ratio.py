"""Coefficients of core/statistics/special/mills-ratio.ts, by mpmath at 50 digits: python3 mills-ratio.py

(1 + z)·M(z), M the ratio of the normal upper tail to the density, over t = (z - 4.5)/(z + 4.5) in Chebyshev polynomials.
"""

from mpmath import cos, erfc, exp, mp, mpf, nstr, pi, sqrt

mp.dps = 50
NODES, KEPT, MIDDLE = 60, 26, mpf("4.5")


def scaled(t):
    z = MIDDLE * (1 + t) / (1 - t)
    return (1 + z) * sqrt(pi / 2) * exp(z * z / 2) * erfc(z / sqrt(2))


angles = [pi * (j + mpf(1) / 2) / NODES for j in range(NODES)]
heights = [scaled(cos(angle)) for angle in angles]
for k in range(KEPT):
    total = sum(height * cos(k * angle) for height, angle in zip(heights, angles))
    print(nstr((1 if k == 0 else 2) * total / NODES, 17) + ",")
