import type uPlot from 'uplot';
import type { Look } from './look.ts';
import type { MarkShape, TraceMark } from './trace-drawing.ts';

const SIZE_PX = 24;

/** Corners of each shape around its middle, in halves of its size. */
export const CORNERS: Readonly<Record<MarkShape, readonly (readonly [number, number])[]>> = {
  square: [
    [-0.85, -0.85],
    [0.85, -0.85],
    [0.85, 0.85],
    [-0.85, 0.85],
  ],
  triangle: [
    [0, -1.15],
    [1.15, 0.85],
    [-1.15, 0.85],
  ],
  diamond: [
    [0, -1.15],
    [1.15, 0],
    [0, 1.15],
    [-1.15, 0],
  ],
  ring: Array.from({ length: 16 }, (_, i) => [Math.cos((i * Math.PI) / 8), Math.sin((i * Math.PI) / 8)] as const),
};

/** Draws the numbered marks; what speaks against the pull is filled. */
export function drawMarks(plot: uPlot, marks: readonly TraceMark[], look: Look): void {
  const { ctx, bbox } = plot;
  const sizePx = SIZE_PX * devicePixelRatio;
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left - sizePx, bbox.top - sizePx, bbox.width + 2 * sizePx, bbox.height + 2 * sizePx);
  ctx.clip();
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.font = `700 ${13 * devicePixelRatio}px ${look.font}`;
  const taken: Place[] = [];
  for (const mark of marks) {
    const at = { x: plot.valToPos(mark.deg, 'x', true), y: plot.valToPos(mark.torque, 'y', true) };
    const place = freePlace(at, taken, sizePx, bbox.left);
    taken.push(place);
    if (place !== at) drawLeader(ctx, at, place, look);
    drawMark(ctx, place, mark, look);
  }
  ctx.restore();
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * Its own place, or where another mark stands there already the next one to the upper left; to the upper right where the
 * plot ends on the left and the axis has its figures.
 */
export function freePlace(wanted: Place, taken: readonly Place[], sizePx: number, leftPx: number): Place {
  const isTaken = ({ x, y }: Place): boolean =>
    taken.some((other) => Math.hypot(other.x - x, other.y - y) < 1.15 * sizePx);
  if (!isTaken(wanted)) return wanted;
  const isAtEdge = wanted.x - 1.4 * sizePx < leftPx;
  const moved = { x: wanted.x + (isAtEdge ? 0.9 : -0.9) * sizePx, y: wanted.y - 0.9 * sizePx };
  return freePlace(moved, taken, sizePx, isAtEdge ? Number.POSITIVE_INFINITY : leftPx);
}

function drawLeader(ctx: CanvasRenderingContext2D, from: Place, to: Place, look: Look): void {
  ctx.strokeStyle = look.ink;
  ctx.lineWidth = 2 * devicePixelRatio;
  ctx.beginPath();
  ctx.moveTo(from.x, from.y);
  ctx.lineTo(to.x, to.y);
  ctx.stroke();
}

function drawMark(
  ctx: CanvasRenderingContext2D,
  { x, y }: Place,
  { shape, number, what }: TraceMark,
  look: Look,
): void {
  const half = (SIZE_PX / 2) * devicePixelRatio;
  const speaksAgainst = what.kind === 'finding';
  ctx.beginPath();
  for (const [index, [dx, dy]] of CORNERS[shape].entries()) {
    if (index === 0) ctx.moveTo(x + dx * half, y + dy * half);
    else ctx.lineTo(x + dx * half, y + dy * half);
  }
  ctx.closePath();
  ctx.fillStyle = speaksAgainst ? look.doubtful : look.sheet;
  ctx.strokeStyle = speaksAgainst ? look.sheet : look.ink;
  ctx.lineWidth = 2 * devicePixelRatio;
  ctx.fill();
  ctx.stroke();
  ctx.fillStyle = speaksAgainst ? look.sheet : look.ink;
  ctx.fillText(String(number), x, y + (shape === 'triangle' ? half * 0.3 : 0));
}
