type Point = readonly [x: number, y: number];

const NUMBER = /-?\d+(?:\.\d+)?/g;

/** The outlines of path data as polygons; knows the commands that our drawings use (M L H V A Z, absolute). */
export function polygonsOf(path: string): readonly (readonly Point[])[] {
  return path
    .split(/(?=M)/)
    .filter(Boolean)
    .map((outline) => {
      const points: Point[] = [];
      for (const [command] of outline.matchAll(/[MLHVAZ][^MLHVAZ]*/g)) {
        const [x, y] = points.at(-1) ?? [0, 0];
        const figures = (command.match(NUMBER) ?? []).map(Number);
        if (/[ML]/.test(command)) points.push([figures[0]!, figures[1]!]);
        if (command.startsWith('H')) points.push([figures[0]!, y]);
        if (command.startsWith('V')) points.push([x, figures[0]!]);
        if (command.startsWith('A')) points.push(...arc([x, y], figures));
      }
      return points;
    });
}

/** Circular arcs of at most half a turn, in 2 degree steps. */
function arc([x0, y0]: Point, [r = 0, , , , sweep, x1 = 0, y1 = 0]: readonly number[]): readonly Point[] {
  const chord = Math.hypot(x1 - x0, y1 - y0);
  const side = sweep === 1 ? 1 : -1;
  const rise = Math.sqrt(Math.max(0, r * r - (chord / 2) ** 2));
  const cx = (x0 + x1) / 2 - (side * rise * (y1 - y0)) / chord;
  const cy = (y0 + y1) / 2 + (side * rise * (x1 - x0)) / chord;
  const from = Math.atan2(y0 - cy, x0 - cx);
  let turn = Math.atan2(y1 - cy, x1 - cx) - from;
  if (side * turn <= 0) turn += side * 2 * Math.PI;
  return Array.from({ length: 90 }, (_, i) => {
    const angle = from + (turn * (i + 1)) / 90;
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
  });
}

interface Filled {
  readonly nonZero: boolean;
  readonly evenOdd: boolean;
}

/** Tells of points whether they are filled, by SVG's two rules. */
export function fillingOf(path: string): (point: Point) => Filled {
  const outlines = polygonsOf(path);
  return (point) => {
    const crossings = outlines.flatMap((outline) => crossingsOf(outline, point));
    return { nonZero: crossings.reduce((sum, way) => sum + way, 0) !== 0, evenOdd: crossings.length % 2 === 1 };
  };
}

/** Sides that a ray to the right crosses: 1 for each going down, -1 for each going up. */
const crossingsOf = (outline: readonly Point[], [x, y]: Point): readonly number[] =>
  outline.flatMap(([x1, y1], index) => {
    const [x2, y2] = outline[(index + 1) % outline.length]!;
    if (y1 > y === y2 > y || x > x1 + ((y - y1) * (x2 - x1)) / (y2 - y1)) return [];
    return [y2 > y1 ? 1 : -1];
  });
