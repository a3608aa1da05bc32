"""Makes distribution-table.ts by mpmath at 40 digits: python3 distribution-table.py > distribution-table.ts

Arguments are binary numbers as Python prints them; every figure is worked out for exactly that number. Quantiles are the
roots of the distribution function, by secant from scipy's guess, at 40 digits.
"""

import mpmath
import scipy.stats as guess
from mpmath import betainc, beta, erfc, exp, expm1, gammainc, inf, log, mp, mpf, nstr, pi, sqrt
from mpmath import gamma as gamma_function

mp.dps = 40
half = mpf(1) / 2


def normal():
    tail = lambda z: erfc(z / sqrt(mpf(2))) / 2
    return lambda z: exp(-z * z / 2) / sqrt(2 * pi), lambda z: tail(-z), tail


def student(v):
    def above(t):
        if t < 0:
            return 1 - above(-t)
        return betainc(v / 2, half, 0, v / (v + t * t), regularized=True) / 2

    def density(t):
        return (1 + t * t / v) ** (-(v + 1) / 2) / (sqrt(v) * beta(v / 2, half))

    return density, lambda t: above(-t), above


def fisher(d, e):
    x = lambda f: d * f / (d * f + e)
    y = lambda f: e / (d * f + e)
    density = lambda f: x(f) ** (d / 2) * y(f) ** (e / 2) / (f * beta(d / 2, e / 2))
    below = lambda f: betainc(d / 2, e / 2, 0, x(f), regularized=True)
    above = lambda f: betainc(e / 2, d / 2, 0, y(f), regularized=True)
    return density, below, above


def gamma(a, s):
    density = lambda x: (x / s) ** a * exp(-x / s) / (x * gamma_function(a))
    below = lambda x: gammainc(a, 0, x / s, regularized=True)
    above = lambda x: gammainc(a, x / s, inf, regularized=True)
    return density, below, above


def weibull(k, s):
    h = lambda x: (x / s) ** k
    return lambda x: k * h(x) / x * exp(-h(x)), lambda x: -expm1(-h(x)), lambda x: exp(-h(x))


FAMILIES = {
    "normal": (normal, [()], lambda: guess.norm(), True),
    "t": (student, [(1.0,), (2.0,), (3.5,), (5.0,), (10.0,), (29.0,), (100.0,), (1000.0,), (1e6,)], guess.t, True),
    "F": (fisher, [(1.0, 1.0), (1.0, 10.0), (2.0, 5.0), (3.0, 17.5), (5.0, 2.0), (10.0, 10.0), (24.0, 60.0),
                   (100.0, 7.0), (1000.0, 1000.0)], guess.f, False),
    "chi-square": (lambda v: gamma(v / 2, mpf(2)), [(0.5,), (1.0,), (2.0,), (5.0,), (19.0,), (100.0,), (5000.0,)],
                   guess.chi2, False),
    "gamma": (gamma, [(0.1, 1.0), (0.5, 2.0), (1.0, 0.1), (2.5, 3.0), (30.0, 0.25), (1000.0, 1.0)],
              lambda a, s: guess.gamma(a, scale=s), False),
    "weibull": (weibull, [(0.5, 100.0), (1.0, 365.0), (2.2, 500.0), (8.0, 1.0)],
                lambda k, s: guess.weibull_min(k, scale=s), False),
}
TAILS = [1e-12, 1e-8, 1e-5, 0.001, 0.01, 0.025, 0.1, 0.25, 0.4, 0.49]
PLACES = [1e-100, 1e-30, 1e-10, 1e-6, 1e-3, 0.05, 0.3, 0.5, 0.7, 0.95, 0.999]


def figure(value):
    return nstr(value, 17, min_fixed=-5, max_fixed=17).replace("e+", "e")


def root(tail, wanted, start, positive):
    """Where the tail has the wanted share; over the logarithm of the place where that is positive."""
    at = (lambda u: exp(u)) if positive else (lambda u: u)
    u = log(mpf(start)) if positive else mpf(start)
    f = lambda u: log(tail(at(u))) - log(wanted)
    return at(mpmath.findroot(f, (u, u + (abs(u) + 1) * mpf(10) ** -9), tol=mpf(10) ** -66))


def rows(name):
    family, parameters, guesses, symmetric = FAMILIES[name]
    for given in parameters:
        density, below, above = family(*map(mpf, given))
        frozen = guesses(*given)
        where = " ".join([name, *map(repr, given)])
        places = {float(f"{frozen.ppf(p):.5g}") for p in PLACES} | {float(f"{frozen.isf(p):.5g}") for p in PLACES}
        for x in sorted(p for p in places if abs(p) < 1e200 and p != 0):
            small = [density(mpf(x)), below(mpf(x)), above(mpf(x))]
            if all(1e-290 < value for value in small):
                yield f"{where} at {x!r} {' '.join(map(figure, small))}"
        for p in TAILS:
            yield f"{where} above {p!r} {figure(root(above, mpf(p), frozen.isf(p), not symmetric))}"
            if not symmetric:
                yield f"{where} below {p!r} {figure(root(below, mpf(p), frozen.ppf(p), True))}"


LOG_GAMMA = [1e-8, 0.001, 0.1, 0.5, 0.9, 0.999999, 1.000001, 1.2, 1.5, 1.9, 1.999999, 2.000001, 2.3, 2.7, 4.5, 7.0, 9.99,
             10.0, 11.5, 50.0, 171.3, 1e4, 1e9]

lines = [line for name in FAMILIES for line in rows(name)]
lines += [f"log-gamma at {x!r} {figure(mpmath.loggamma(mpf(x)))}" for x in LOG_GAMMA]
print("/**")
print(" * Made by distribution-table.py: name and parameters; `at` an argument its density, share below and share above, or")
print(" * `above` or `below` a share the value that has it there.")
print(" */")
print("export const DISTRIBUTION_TABLE = `")
print("\n".join(lines))
print("`;")
