"""Reference figures for how bolts take part in each other, by ways that share no formula with ours.

Beam with free ends and ring: dense finite elements (cubic beam; grillage of straight bars with bending and torsion).
Plate: sparse finite differences on a field so large that its edges no longer matter.
Rounds: the compliance of the tight bolts inverted anew at each pull; for slack bolts a bounded quadratic program.
Run with numpy and scipy; prints the figures that stand in interaction.ts.
"""

import math

import numpy as np
import scipy.sparse as sp
from scipy.optimize import nnls
from scipy.sparse.linalg import spsolve


def beam(ei, k, length, load_at, elements=400):
    """Deflection of a beam with free ends on a bed, cubic elements, dense; at the nodes."""
    h = length / elements
    n = 2 * (elements + 1)
    full = np.zeros((n, n))
    bend = ei / h**3 * np.array(
        [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]]
    )
    bed = k * h / 420 * np.array(
        [[156, 22 * h, 54, -13 * h], [22 * h, 4 * h * h, 13 * h, -3 * h * h], [54, 13 * h, 156, -22 * h], [-13 * h, -3 * h * h, -22 * h, 4 * h * h]]
    )
    for e in range(elements):
        s = slice(2 * e, 2 * e + 4)
        full[s, s] += bend + bed
    right = np.zeros(n)
    right[2 * round(load_at / h)] = 1
    solved = np.linalg.solve(full, right)
    return lambda at: solved[2 * round(at / h)]


def ring(radius, ei, gj, bed, inside, outside, bolts, per=24):
    """One flange as a grillage of straight bars; node freedoms: down, turn about the radius, turn about the tangent."""
    nodes = bolts * per
    angle = 2 * math.pi / nodes
    length = 2 * radius * math.sin(angle / 2)
    full = np.zeros((3 * nodes, 3 * nodes))
    h = length
    bend = ei / h**3 * np.array(
        [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]]
    )
    twist = gj / h * np.array([[1, -1], [-1, 1]])
    for e in range(nodes):
        middle = (e + 0.5) * angle
        along = np.array([-math.sin(middle), math.cos(middle)])
        index = []
        rows = []
        for node in (e, (e + 1) % nodes):
            at = node * angle
            radial = np.array([math.cos(at), math.sin(at)])
            tangent = np.array([-math.sin(at), math.cos(at)])
            across = np.array([math.cos(middle), math.sin(middle)])
            # freedoms 3n: w, 3n+1: slope along the tangent, 3n+2: slope along the radius (twist)
            index.append((3 * node, 3 * node + 1, 3 * node + 2))
            rows.append((along @ tangent, along @ radial, across @ tangent, across @ radial))
        # slope along the bar and slope across it at both ends, from the slopes at the nodes
        turn = np.zeros((6, 6))
        for i, (st, sr, at_, ar) in enumerate(rows):
            turn[3 * i, 3 * i] = 1
            turn[3 * i + 1, 3 * i + 1], turn[3 * i + 1, 3 * i + 2] = st, sr
            turn[3 * i + 2, 3 * i + 1], turn[3 * i + 2, 3 * i + 2] = at_, ar
        local = np.zeros((6, 6))
        local[np.ix_([0, 1, 3, 4], [0, 1, 3, 4])] += bend
        local[np.ix_([2, 5], [2, 5])] += twist
        every = [*index[0], *index[1]]
        full[np.ix_(every, every)] += turn.T @ local @ turn
    share = bed * radius * angle
    for node in range(nodes):
        v = np.array([1, -inside])
        s = [3 * node, 3 * node + 2]
        full[np.ix_(s, s)] += share * np.outer(v, v)
    right = np.zeros(3 * nodes)
    right[0], right[2] = 1, outside
    solved = np.linalg.solve(full, right)
    return [solved[3 * per * b] + outside * solved[3 * per * b + 2] for b in range(bolts)]


def plate(height, modulus, poisson, bed, reach=9, cells=36):
    """Deflection under and beside a force on a plate on a bed; steps of 1/cells of the characteristic length."""
    stiffness = modulus * height**3 / (12 * (1 - poisson**2))
    length = (stiffness / bed) ** 0.25
    n = 2 * reach * cells // 2 + 1
    h = 2 * reach * length / (n - 1)
    one = sp.diags([np.ones(n - 1), -2 * np.ones(n), np.ones(n - 1)], [-1, 0, 1])
    lap = (sp.kron(one, sp.eye(n)) + sp.kron(sp.eye(n), one)) / h**2
    full = stiffness * (lap @ lap) + bed * sp.eye(n * n)
    right = np.zeros(n * n)
    middle = (n // 2) * n + n // 2
    right[middle] = 1 / h**2
    solved = spsolve(full.tocsc(), right)
    return lambda lengths: solved[middle + round(lengths * length / h)]


def rounds(matrix, order, targets):
    """Pull by pull with everything solved anew; slack bolts by non-negative least squares on the Cholesky factor."""
    n = len(matrix)
    travel = np.zeros(n)
    force = np.zeros(n)
    tight = []
    for target in targets:
        for bolt in order:
            if force[bolt] >= target:
                continue
            others = [b for b in tight if b != bolt]
            new = np.zeros(n)
            new[bolt] = target
            if others:
                inner = matrix[np.ix_(others, others)]
                wanted = travel[others] - matrix[others, bolt] * target
                # min ½FᵀMF − Fᵀq over F ≥ 0 is min |LᵀF − L⁻¹q| over F ≥ 0
                lower = np.linalg.cholesky(inner)
                new[others] = nnls(lower.T, np.linalg.solve(lower, wanted))[0]
            if bolt not in tight:
                tight.append(bolt)
            force = new
            travel[bolt] = matrix[bolt] @ force
    return force


def planned(matrix, order, wanted, together):
    """What each pull must bring so that one round ends as wanted: backward from the end, the last group set free first."""
    force = np.full(len(matrix), float(wanted))
    loose = []
    groups = [order[k : k + together] for k in range(0, len(order), together)]
    targets = []
    for group in reversed(groups):
        targets = [*force[group], *targets]
        # the group is let go: the others keep their travel, so that its force goes over to them through K = M⁻¹
        loose += group
        tight = [b for b in range(len(matrix)) if b not in loose]
        force = np.zeros(len(matrix))
        if tight:
            force[tight] = np.linalg.solve(matrix[np.ix_(tight, tight)], (matrix @ np.full(len(matrix), float(wanted)))[tight])
    return targets


def first_pass(matrix, order):
    """Share of what is put on each bolt that the bolts already tight lose, in the order of the pulls; loose ones nothing."""
    table = np.eye(len(matrix))
    for k in range(1, len(matrix)):
        tight, bolt = order[:k], order[k]
        table[:k, k] = -np.linalg.solve(matrix[np.ix_(tight, tight)], matrix[np.ix_(tight, [bolt])])[:, 0]
    return table


def show(name, values):
    print(name, " ".join(f"{v:.9g}" for v in values))


if __name__ == "__main__":
    bar = beam(2.0e5 * 60 * 40**3 / 12, 500.0, 600.0, 90.0)
    show("beam 600 mm, force at 90: 0 90 300 600", [bar(x) for x in (0, 90, 300, 600)])
    bar = beam(2.0e5 * 60 * 40**3 / 12, 500.0, 600.0, 0.0)
    show("beam 600 mm, force at its end: 0 150", [bar(x) for x in (0, 150)])

    width, height, radius = 50.0, 35.0, 120.0
    ratio = height / width
    j = width * height**3 * (1 / 3 - 0.21 * ratio * (1 - ratio**4 / 12))
    ei, gj = 200e3 * width * height**3 / 12, 77e3 * j
    for per in (16, 32, 64):
        show(f"ring of eight, {per} bars a bolt", [2 * c for c in ring(radius, ei, gj, 3000, 10, 10, 8, per)[:5]])

    for cells in (12, 24):
        field = plate(60, 70e3, 0.33, 15, 8, cells)
        show(f"plate, {cells} cells: 0 1 2 4", [field(x) for x in (0, 1, 2, 4)])

    c = [7.55016, 2.75971, -0.683504, -0.522425, -0.0198673]
    matrix = np.array([[c[min((i - k) % 8, (k - i) % 8)] for k in range(8)] for i in range(8)]) * 1e-6
    matrix += np.eye(8) / (200e3 * 459 / 110)
    star = [0, 4, 2, 6, 1, 5, 3, 7]
    for count in (1, 2, 3):
        show(f"ring of eight, star, {count} rounds to 100", rounds(matrix, star, [100] * count))
    stiff = np.linalg.inv(matrix)
    show("ring of eight, coefficients, all tight", stiff[:, 0] / stiff[0, 0])
    for row in first_pass(matrix, star):
        show("ring of eight, coefficients, first round", row)
    show("ring of eight, 30 70 100", rounds(matrix, star, [30, 70, 100]))
    for together in (1, 2, 3, 4):
        show(f"ring of eight, one round that ends at 100, {together} at once", planned(matrix, star, 100, together))
    slack = np.array([[1, 0.9, 0.5], [0.9, 1, 0.55], [0.5, 0.55, 1]])
    show("slack: 10 then 100 in order 1 2 3", rounds(slack, [0, 1, 2], [10, 100]))
    show("slack: one round with targets alike", rounds(np.array([[1, 0.95], [0.95, 1]]), [0, 1], [10]))
