import type { Mark, PlotPoint } from '@clampwright/core/plot';
import { z } from 'zod';
import type { BenchFigure } from './figure.ts';
import { angles, forces, type Measure, type Scribe, torques } from './scribe.ts';

const pointSchema = z.object({ angleDeg: z.number(), preloadN: z.number(), torqueNm: z.number().optional() });
type CurvePoint = z.infer<typeof pointSchema>;

const outputSchema = z.object({
  angleDeg: z.number(),
  snugPreloadN: z.number(),
  preloadN: z.number(),
  snugTorqueNm: z.number().optional(),
  finalTorqueNm: z.number().optional(),
  yieldPreloadN: z.number().optional(),
  yieldAngleDeg: z.number().optional(),
  torqueWindow: z.object({ lowNm: z.number(), highNm: z.number() }).optional(),
  curve: z.array(pointSchema).min(2),
});

/** What the wrench is expected to show over the angle; preload where no friction tells the torque. */
export function torqueOverAngle(output: unknown, scribe: Scribe): readonly BenchFigure[] {
  const read = outputSchema.safeParse(output);
  if (!read.success) return [];
  const { say } = scribe;
  const worked = read.data;
  const hasTorque = worked.curve.every((point) => point.torqueNm !== undefined);
  const angle = angles(scribe);
  const up = hasTorque ? torques(scribe) : forces(scribe);
  const height = (point: CurvePoint) => (hasTorque ? (point.torqueNm ?? 0) : point.preloadN);
  const at = (x: number, y: number): PlotPoint => ({ x: angle.of(x), y: up.of(y) });
  const figures = new Map<string, string>();
  const point = (name: string, x: number, y: number): Mark => {
    figures.set(name, `${angle.show(x)}, ${up.show(y)}`);
    return { kind: 'point', name, at: at(x, y) };
  };
  const endY = hasTorque ? (worked.finalTorqueNm ?? heightAt(worked.curve, worked.angleDeg, height)) : worked.preloadN;
  const marks: Mark[] = [
    ...finalWindow(hasTorque ? worked.torqueWindow : undefined, up, say('final-window'), figures),
    ...elasticLine(worked.curve, worked.yieldAngleDeg, say('elastic'), (x, y) => at(x, y), height),
    { kind: 'line', name: say('expected'), points: worked.curve.map((one) => at(one.angleDeg, height(one))) },
    point(say('snug'), 0, heightAt(worked.curve, 0, height)),
    ...yieldPoint(worked, height, (x, y) => point(say('yield'), x, y)),
    point(say('end'), worked.angleDeg, endY),
  ];
  return [
    {
      kind: 'plot',
      title: say(hasTorque ? 'torque-over-angle' : 'preload-over-angle'),
      text: [...figures].map(([name, figure]) => `${name}: ${figure}`).join('; '),
      plot: {
        x: { label: `${say('angle')}, ${angle.unit}` },
        y: { label: `${say(hasTorque ? 'torque' : 'preload')}, ${up.unit}`, from: 0 },
        marks,
      },
      figures,
    },
  ];
}

type Height = (point: CurvePoint) => number;

/** The curve between its points. */
function heightAt(curve: readonly CurvePoint[], angleDeg: number, height: Height): number {
  const after = curve.findIndex((point) => point.angleDeg >= angleDeg);
  const [left, right] = [curve[Math.max(after - 1, 0)], curve[after === -1 ? curve.length - 1 : after]];
  if (!left || !right) return 0;
  const span = right.angleDeg - left.angleDeg;
  const share = span > 0 ? (angleDeg - left.angleDeg) / span : 0;
  return height(left) + share * (height(right) - height(left));
}

function finalWindow(
  window: { readonly lowNm: number; readonly highNm: number } | undefined,
  up: Measure,
  name: string,
  figures: Map<string, string>,
): readonly Mark[] {
  if (!window) return [];
  figures.set(name, `${up.show(window.lowNm)} – ${up.show(window.highNm)}`);
  return [{ kind: 'window', name, along: 'y', from: up.of(window.lowNm), to: up.of(window.highNm) }];
}

/** The line that the joint would follow if nothing yielded; drawn only where the curve leaves it. */
function elasticLine(
  curve: readonly CurvePoint[],
  yieldAngleDeg: number | undefined,
  name: string,
  at: (x: number, y: number) => PlotPoint,
  height: Height,
): readonly Mark[] {
  const last = curve.at(-1);
  if (yieldAngleDeg === undefined || !last || yieldAngleDeg <= 0 || yieldAngleDeg >= last.angleDeg) return [];
  const snug = heightAt(curve, 0, height);
  const rise = (heightAt(curve, yieldAngleDeg / 2, height) - snug) / (yieldAngleDeg / 2);
  const endDeg = Math.min(last.angleDeg, yieldAngleDeg * 1.15);
  return [{ kind: 'line', name, isDashed: true, points: [at(0, snug), at(endDeg, snug + rise * endDeg)] }];
}

function yieldPoint(
  { yieldAngleDeg, curve }: { readonly yieldAngleDeg?: number | undefined; readonly curve: readonly CurvePoint[] },
  height: Height,
  point: (x: number, y: number) => Mark,
): readonly Mark[] {
  const last = curve.at(-1);
  if (yieldAngleDeg === undefined || !last || yieldAngleDeg > last.angleDeg) return [];
  return [point(yieldAngleDeg, heightAt(curve, yieldAngleDeg, height))];
}
