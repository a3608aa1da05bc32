import type uPlot from 'uplot';
import type { Look } from './look.ts';
import type { Spot, TraceDrawing } from './trace-drawing.ts';

type At = (spot: Spot) => readonly [number, number];

const atOn =
  (plot: uPlot): At =>
  ({ deg, torque }) => [plot.valToPos(deg, 'x', true), plot.valToPos(torque, 'y', true)];

/** Draws what lies under the curve: the window, the expected band, earlier curves, the elastic line. */
export function drawGround(plot: uPlot, drawing: TraceDrawing, look: Look): void {
  const { ctx, bbox } = plot;
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  drawWindow(plot, drawing, look);
  drawBand(plot, drawing.band, look);
  drawEarlier(plot, drawing.ground, look);
  drawSlope(plot, drawing, look);
  ctx.restore();
}

function drawWindow(plot: uPlot, { torqueLimits, angleLimits }: TraceDrawing, look: Look): void {
  const { ctx, bbox } = plot;
  ctx.fillStyle = look.within;
  ctx.strokeStyle = look.within;
  if (torqueLimits) {
    const [upper, lower] = [torqueLimits.upper, torqueLimits.lower].map((nm) => plot.valToPos(nm, 'y', true));
    const target = plot.valToPos(torqueLimits.target, 'y', true);
    wash(ctx, bbox.left, upper ?? 0, bbox.width, (lower ?? 0) - (upper ?? 0));
    stroke(ctx, [bbox.left, target], [bbox.left + bbox.width, target], [10, 6]);
  }
  if (angleLimits) {
    const [lower, upper] = [angleLimits.lower, angleLimits.upper].map((deg) => plot.valToPos(deg, 'x', true));
    const target = plot.valToPos(angleLimits.target, 'x', true);
    wash(ctx, lower ?? 0, bbox.top, (upper ?? 0) - (lower ?? 0), bbox.height);
    stroke(ctx, [target, bbox.top], [target, bbox.top + bbox.height], [10, 6]);
  }
}

function wash(ctx: CanvasRenderingContext2D, x: number, y: number, width: number, height: number): void {
  ctx.globalAlpha = 0.14;
  ctx.fillRect(x, y, width, height);
  ctx.globalAlpha = 1;
}

function drawBand(plot: uPlot, band: readonly Spot[], look: Look): void {
  if (band.length === 0) return;
  const { ctx } = plot;
  pathOf(ctx, band.map(atOn(plot)));
  ctx.closePath();
  ctx.fillStyle = look.accent;
  ctx.globalAlpha = 0.16;
  ctx.fill();
  ctx.globalAlpha = 1;
}

function drawEarlier(plot: uPlot, ground: TraceDrawing['ground'], look: Look): void {
  const { ctx } = plot;
  ctx.strokeStyle = look.soft;
  ctx.lineWidth = devicePixelRatio;
  // Many curves over each other add up to the way that most of them take.
  ctx.globalAlpha = Math.max(0.06, 0.5 / Math.sqrt(Math.max(ground.length, 1)));
  for (const { deg, torque } of ground) {
    ctx.beginPath();
    for (let i = 0; i < deg.length; i++) {
      const x = plot.valToPos(deg[i]!, 'x', true);
      const y = plot.valToPos(torque[i]!, 'y', true);
      if (i === 0) ctx.moveTo(x, y);
      else ctx.lineTo(x, y);
    }
    ctx.stroke();
  }
  ctx.globalAlpha = 1;
}

function drawSlope(plot: uPlot, { slopeLine }: TraceDrawing, look: Look): void {
  if (!slopeLine) return;
  const [from, to] = slopeLine.map(atOn(plot));
  plot.ctx.strokeStyle = look.ink;
  if (from && to) stroke(plot.ctx, from, to, [3, 5]);
}

function stroke(
  ctx: CanvasRenderingContext2D,
  from: readonly [number, number],
  to: readonly [number, number],
  dash: readonly number[],
): void {
  ctx.lineWidth = 2 * devicePixelRatio;
  ctx.setLineDash(dash.map((length) => length * devicePixelRatio));
  pathOf(ctx, [from, to]);
  ctx.stroke();
  ctx.setLineDash([]);
}

function pathOf(ctx: CanvasRenderingContext2D, corners: readonly (readonly [number, number])[]): void {
  ctx.beginPath();
  for (const [index, [x, y]] of corners.entries()) {
    if (index === 0) ctx.moveTo(x, y);
    else ctx.lineTo(x, y);
  }
}
