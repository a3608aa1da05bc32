"""Flanges and covers of solid elements: how far each bolt closes them for a force at one of them.

CalculiX (`ccx` 2.20), 20-node bricks; the bed is a layer that pushes along its axis alone (its other moduli a
thousandth), fixed on its lower face. The force, and what it closes, are spread over the face of the head, so that
what bolt i does to bolt j is what j does to i. Bolt holes, hub and fillets are left out, as in the models.
Needs ccx on the path; prints the figures that stand in published/solids.ts.
"""

import math
import pathlib
import subprocess
import sys
import tempfile
from dataclasses import dataclass

import numpy as np

STEEL, POISSON, FORCE = 200_000, 0.3, 1e4


@dataclass
class Grid:
    """Breaks of the two sides of the plan, and where a place of it lies; the second side may close on itself."""

    first: list
    second: list
    place: object
    closed: bool


def spaced(breaks, size):
    """Breaks with further ones between them, about so far apart."""
    out = [breaks[0]]
    for a, b in zip(breaks, breaks[1:]):
        parts = max(1, round((b - a) / size))
        out += [a + (b - a) * k / parts for k in range(1, parts + 1)]
    return out


def cuts(low, high, marks):
    inner = sorted({round(m, 9) for m in marks if low < m < high})
    kept = [low]
    for m in [*inner, high]:
        if m - kept[-1] > 1e-6:
            kept.append(m)
    return kept


def solve(grid, height, layer, modulus, on_bed, heads, loaded, size, pipe=(lambda *_: False, 0.0)):
    """Closing at each head (a set of cells of the plan) for a unit of force on one of them, mm/N; `pipe` stands on cells."""
    first, second = grid.first, grid.second
    n2 = len(second) - 1
    on_pipe, length = pipe
    levels = [-layer, *spaced([0.0, height], size)]
    top = len(levels) - 1
    levels += spaced([height, height + length], size)[1:] if length else []
    ids, nodes = {}, []

    def node(i, j, k):
        key = (i, j % (2 * n2) if grid.closed else j, k)
        if key not in ids:
            def at(v, h):
                return v[h // 2] if h % 2 == 0 else (v[h // 2] + v[h // 2 + 1]) / 2
            ids[key] = len(nodes) + 1
            nodes.append((*grid.place(at(first, key[0]), at(second, key[1])), at(levels, k)))
        return ids[key]

    corners = [(0, 0, 0), (2, 0, 0), (2, 2, 0), (0, 2, 0), (0, 0, 2), (2, 0, 2), (2, 2, 2), (0, 2, 2)]
    mids = [(1, 0, 0), (2, 1, 0), (1, 2, 0), (0, 1, 0), (1, 0, 2), (2, 1, 2), (1, 2, 2), (0, 1, 2),
            (0, 0, 1), (2, 0, 1), (2, 2, 1), (0, 2, 1)]
    parts = {"STEEL": [], "SOFT": []}
    weights = [{} for _ in heads]
    for i in range(len(first) - 1):
        for j in range(n2):
            middle = ((first[i] + first[i + 1]) / 2, (second[j] + second[j + 1]) / 2)
            for k in range(len(levels) - 1):
                if (k == 0 and not on_bed(*middle)) or (k >= top and not on_pipe(*middle)):
                    continue
                el = [node(2 * i + a, 2 * j + b, 2 * k + c) for a, b, c in corners + mids]
                parts["SOFT" if k == 0 else "STEEL"].append(el)
                if k != top - 1:
                    continue
                for head, inside in enumerate(heads):
                    if not inside(*middle):
                        continue
                    p = [nodes[n - 1] for n in el[4:8]]
                    area = abs((p[2][0] - p[0][0]) * (p[3][1] - p[1][1]) - (p[3][0] - p[1][0]) * (p[2][1] - p[0][1])) / 2
                    for n in el[4:8]:
                        weights[head][n] = weights[head].get(n, 0) - area / 12
                    for n in el[12:16]:
                        weights[head][n] = weights[head].get(n, 0) + area / 3
    weights = [{n: w / sum(one.values()) for n, w in one.items()} for one in weights]
    deck = ["*NODE,NSET=ALL"] + [f"{n},{x:.10g},{y:.10g},{z:.10g}" for n, (x, y, z) in enumerate(nodes, 1)]
    number = 0
    for name, elements in parts.items():
        deck.append(f"*ELEMENT,TYPE=C3D20R,ELSET={name}")
        for el in elements:
            number += 1
            deck += [f"{number}," + ",".join(map(str, el[:10])) + ",", ",".join(map(str, el[10:]))]
    small = modulus / 1000
    deck += ["*MATERIAL,NAME=STEEL", "*ELASTIC", f"{STEEL},{POISSON}", "*MATERIAL,NAME=SOFT",
             "*ELASTIC,TYPE=ENGINEERING CONSTANTS", f"{small},{small},{modulus},0,0,0,{small},{small}", f"{small},293",
             "*SOLID SECTION,ELSET=STEEL,MATERIAL=STEEL", "*SOLID SECTION,ELSET=SOFT,MATERIAL=SOFT", "*NSET,NSET=BASE"]
    deck += [f"{n}," for key, n in ids.items() if key[2] == 0]
    deck += ["*BOUNDARY", "BASE,1,3", "*STEP", "*STATIC", "*CLOAD"]
    deck += [f"{n},3,{-FORCE * w:.12e}" for n, w in weights[loaded].items()]
    deck += ["*NSET,NSET=HEADS"] + [f"{n}," for n in sorted(set().union(*weights))]
    deck += ["*NODE PRINT,NSET=HEADS", "U", "*END STEP"]
    with tempfile.TemporaryDirectory() as folder:
        pathlib.Path(folder, "part.inp").write_text("\n".join(deck) + "\n")
        run = subprocess.run(["ccx", "part"], cwd=folder, capture_output=True, text=True, check=False)
        printed = pathlib.Path(folder, "part.dat")
        if not printed.exists() or not printed.read_text().strip():
            sys.exit(run.stdout[-2000:])
        down = {int(p[0]): -float(p[3]) for p in map(str.split, printed.read_text().splitlines()) if len(p) == 4 and p[0].isdigit()}
    return [sum(w * down[n] for n, w in one.items()) / FORCE for one in weights], len(nodes)


def turning(inner, outer, height, bed, layer, modulus, circle, bolts, head, size, wall=0.0, length=0.0):
    """A ring, with a pipe of its bore on its back, or a round cover, less a hole of a twentieth of its radius."""
    half = head / 2
    reach = half / circle
    pitch = 2 * math.pi / bolts
    one = spaced([-pitch / 2, -reach, reach, pitch / 2], size / circle)
    second = [b * pitch + a for b in range(bolts) for a in one[:-1]] + [(bolts - 0.5) * pitch]
    grid = Grid(spaced(cuts(inner, outer, [*bed, inner + wall, circle - half, circle + half]), size), second,
                lambda r, a: (r * math.cos(a), r * math.sin(a)), True)
    heads = [lambda r, a, b=b: abs(r - circle) < half and abs(a - b * pitch) < reach for b in range(bolts)]
    pipe = (lambda r, _: r < inner + wall, length)
    return solve(grid, height, layer, modulus, lambda r, _: bed[0] < r < bed[1], heads, 0, size, pipe)


def straight(half, height, bed_outer, bed_inner, layer, modulus, spots, head, loaded, size):
    """A cover with four free edges; bed a frame between two rectangles."""
    reach = head / 2
    sides = []
    for axis in (0, 1):
        marks = [s[axis] + d for s in spots for d in (-reach, reach)]
        marks += [sign * b[axis] for b in (bed_outer, bed_inner) for sign in (-1, 1)]
        sides.append(spaced(cuts(-half[axis], half[axis], marks), size))
    heads = [lambda x, y, s=s: abs(x - s[0]) < reach and abs(y - s[1]) < reach for s in spots]
    def on_bed(x, y):
        return abs(x) < bed_outer[0] and abs(y) < bed_outer[1] and not (abs(x) < bed_inner[0] and abs(y) < bed_inner[1])
    return solve(Grid(*sides, lambda x, y: (x, y), False), height, layer, modulus, on_bed, heads, loaded, size)


COVER_SPOTS = [(-180, -100), (-60, -100), (60, -100), (180, -100), (180, 0), (180, 100), (60, 100), (-60, 100), (-180, 100), (-180, 0)]
STRIP_SPOTS = [(x, 0) for x in (-180, -90, 0, 90, 180)]
STAR = [1, 5, 3, 7, 2, 6, 4, 8]


def show(name, got):
    values, count = got
    print(f"{name} ({count} nodes):", ", ".join(f"{v:.4e}" for v in values), flush=True)
    return values


def pair(closing, bolt):
    """Compliance of a pair of equal flanges with its bolts, from what one flange closes."""
    n = len(closing)
    return np.array([[2 * closing[(i - j) % n] for j in range(n)] for i in range(n)]) + np.eye(n) / bolt


def coefficients(name, compliance):
    stiff = np.linalg.inv(compliance)
    print(f"{name}, coefficients:", ", ".join(f"{v:.4f}" for v in stiff[:, 0] / stiff[0, 0]), flush=True)


def one_round(compliance, order, target):
    """Forces left by one round to a target, tight bolts only; every pull solved anew."""
    travel, tight = np.zeros(len(compliance)), []
    for bolt in (b - 1 for b in order):
        others = list(tight)
        tight.append(bolt)
        stiff = np.linalg.inv(compliance[np.ix_(tight, tight)])
        # the force on this bolt is linear in its own travel
        base = stiff @ np.array([*travel[others], 0.0])
        travel[bolt] = (target - base[-1]) / stiff[-1, -1]
    force = np.linalg.solve(compliance, travel)
    assert (force > 0).all()
    return force


if __name__ == "__main__":
    size = float(sys.argv[1]) if len(sys.argv) > 1 else 8
    eight = show("ring of eight", turning(95, 145, 35, (100, 120), 1, 150 * 120 / 110, 130, 8, 24, size))
    coefficients("ring of eight", pair(eight, 834545.45))
    print("ring of eight, one star round:", ", ".join(f"{v:.3f}" for v in one_round(pair(eight, 834545.45), STAR, 100)))
    twelve = show("ring DN 200", turning(110, 170, 24, (110, 136.5), 1, 500, 147.5, 12, 30, size))
    coefficients("ring DN 200", pair(twelve, 600_000))
    girth = show("ring of 32", turning(560, 680, 70, (570, 600), 1, 800, 650, 32, 60, 2 * size))
    coefficients("ring of 32", pair(girth, 2_000_000))
    show("ring DN 200 on a pipe", turning(110, 170, 24, (110, 136.5), 1, 500, 147.5, 12, 30, size, 6.3, 150))
    show("ring of 32 on a pipe", turning(560, 680, 70, (570, 600), 1, 800, 650, 32, 60, 2 * size, 16, 500))
    show("ring DN 200, firm gasket", turning(110, 170, 24, (110, 136.5), 1, 5000, 147.5, 12, 30, size))
    show("round cover on a ring", turning(8.5, 170, 24, (110, 136.5), 1, 500, 147.5, 12, 30, size))
    show("round cover on its face", turning(8.5, 170, 24, (8.5, 170), 1, 50, 147.5, 12, 30, size))
    for loaded in (0, 1, 4):
        show(f"cover on its face, bolt {loaded + 1}", straight((200, 120), 25, (200, 120), (0, 0), 1, 50, COVER_SPOTS, 24, loaded, size))
        show(f"cover on a frame, bolt {loaded + 1}", straight((200, 120), 25, (165, 85), (145, 65), 1, 500, COVER_SPOTS, 24, loaded, size))
    for loaded in (0, 2):
        show(f"strip, bolt {loaded + 1}", straight((225, 30), 40, (225, 30), (0, 0), 1, 50, STRIP_SPOTS, 24, loaded, size))
