/** SVG path data, absolute, y downwards; thousandths are enough for a drawing. */
const n = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

type Point = readonly [x: number, y: number];

/** Closed outline through points. */
export const polygon = (points: readonly Point[]): string => `M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}Z`;

/** Full circle; counter-clockwise ones are holes in clockwise ones, by either fill rule. */
export function circle(
  x: number,
  y: number,
  radius: number,
  turn: 'clockwise' | 'counter-clockwise' = 'clockwise',
): string {
  const sweep = turn === 'clockwise' ? 1 : 0;
  const half = (toX: number) => `A${n(radius)} ${n(radius)} 0 0 ${sweep} ${n(toX)} ${n(y)}`;
  return `M${n(x - radius)} ${n(y)}${half(x + radius)}${half(x - radius)}Z`;
}

/** Rectangle about the origin with rounded corners. */
export function roundedPlate(width: number, height: number, corner: number): string {
  const [x, y] = [width / 2, height / 2];
  const r = Math.min(corner, x, y);
  const arc = (toX: number, toY: number) => `A${n(r)} ${n(r)} 0 0 1 ${n(toX)} ${n(toY)}`;
  return [
    `M${n(r - x)} ${n(-y)}H${n(x - r)}${arc(x, r - y)}`,
    `V${n(y - r)}${arc(x - r, y)}`,
    `H${n(r - x)}${arc(-x, y - r)}`,
    `V${n(r - y)}${arc(r - x, -y)}Z`,
  ].join('');
}

/** Half a disc below a level line from which it hangs. */
export const halfDiscBelow = (y: number, radius: number): string =>
  `M${n(-radius)} ${n(y)}H${n(radius)}A${n(radius)} ${n(radius)} 0 0 1 ${n(-radius)} ${n(y)}Z`;
