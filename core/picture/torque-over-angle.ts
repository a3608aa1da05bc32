import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark, PlotPoint } from '../plot/plot.ts';
import { angles, forces, type Scribe, torques } from './scribe.ts';

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
type Worked = z.infer<typeof outputSchema>;

/** What the wrench is expected to show over the angle; preload where no friction tells the torque. */
export function torqueOverAngle(output: unknown, scribe: Scribe): readonly Picture[] {
  const read = outputSchema.safeParse(output);
  if (!read.success) return [];
  const { language } = scribe;
  const hasTorque = read.data.curve.every((point) => point.torqueNm !== undefined);
  const up = hasTorque ? torques(scribe) : forces(scribe);
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, hasTorque ? 'plot.torque-over-angle' : 'plot.preload-over-angle'),
      plot: {
        x: { label: `${sayMechanics(language, 'plot.angle')}, ${angles(scribe).unit}` },
        y: { label: `${sayMechanics(language, hasTorque ? 'plot.torque' : 'plot.preload')}, ${up.unit}`, from: 0 },
        marks: marksOf(read.data, hasTorque, scribe),
      },
    },
  ];
}

function marksOf(worked: Worked, hasTorque: boolean, scribe: Scribe): readonly Mark[] {
  const { language } = scribe;
  const angle = angles(scribe);
  const up = hasTorque ? torques(scribe) : forces(scribe);
  const height = (point: CurvePoint) => (hasTorque ? (point.torqueNm ?? 0) : point.preloadN);
  const at = (x: number, y: number): PlotPoint => ({ x: angle.of(x), y: up.of(y) });
  const point = (name: string, x: number, y: number): Mark => ({
    kind: 'point',
    name,
    at: at(x, y),
    reads: `${angle.show(x)}, ${up.show(y)}`,
  });
  const endY = hasTorque ? (worked.finalTorqueNm ?? heightAt(worked.curve, worked.angleDeg, height)) : worked.preloadN;
  return [
    ...finalWindow(hasTorque ? worked.torqueWindow : undefined, scribe),
    ...elasticLine(worked, sayMechanics(language, 'plot.elastic'), at, height),
    {
      kind: 'line',
      name: sayMechanics(language, 'plot.expected'),
      points: worked.curve.map((one) => at(one.angleDeg, height(one))),
    },
    ...yieldAhead(worked, hasTorque, scribe),
    point(sayMechanics(language, 'plot.snug'), 0, heightAt(worked.curve, 0, height)),
    ...yieldPoint(worked, height, (x, y) => point(sayMechanics(language, 'plot.yield'), x, y)),
    point(sayMechanics(language, 'plot.end'), worked.angleDeg, endY),
  ];
}

/** The elastic line goes on so far past yield, that it is seen how the curve leaves it. */
const ELASTIC_BEYOND = 1.4;
/** Yield that lies further above the end would press the rest flat. */
const YIELD_SHOWN = 1.8;

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

function finalWindow(window: Worked['torqueWindow'], scribe: Scribe): readonly Mark[] {
  if (!window) return [];
  const torque = torques(scribe);
  const { lowNm, highNm } = window;
  return [
    {
      kind: 'window',
      name: sayMechanics(scribe.language, 'plot.final-window'),
      along: 'y',
      from: torque.of(lowNm),
      to: torque.of(highNm),
      reads: `${torque.show(lowNm)} – ${torque.show(highNm)}`,
    },
  ];
}

/** The line that the joint would follow if nothing yielded; drawn only where the curve leaves it. */
function elasticLine(
  { curve, yieldAngleDeg }: Worked,
  name: string,
  at: (x: number, y: number) => PlotPoint,
  height: Height,
): readonly Mark[] {
  const last = curve.at(-1);
  if (yieldAngleDeg === undefined || !last || yieldAngleDeg <= 0 || yieldAngleDeg >= last.angleDeg) return [];
  const snug = heightAt(curve, 0, height);
  const rise = (heightAt(curve, yieldAngleDeg / 2, height) - snug) / (yieldAngleDeg / 2);
  const endDeg = Math.min(last.angleDeg, yieldAngleDeg * ELASTIC_BEYOND);
  return [{ kind: 'line', name, isDashed: true, points: [at(0, snug), at(endDeg, snug + rise * endDeg)] }];
}

function yieldPoint(
  { yieldAngleDeg, curve }: Worked,
  height: Height,
  point: (x: number, y: number) => Mark,
): readonly Mark[] {
  const last = curve.at(-1);
  if (yieldAngleDeg === undefined || !last || yieldAngleDeg > last.angleDeg) return [];
  return [point(yieldAngleDeg, heightAt(curve, yieldAngleDeg, height))];
}

/** Where yield would begin, as a limit, while the turn ends before it. Torque grows with preload in a straight line. */
function yieldAhead({ yieldPreloadN, preloadN, curve }: Worked, hasTorque: boolean, scribe: Scribe): readonly Mark[] {
  const [first, last] = [curve[0], curve.at(-1)];
  if (yieldPreloadN === undefined || !first || !last) return [];
  if (yieldPreloadN <= last.preloadN || yieldPreloadN > YIELD_SHOWN * preloadN) return [];
  const up = hasTorque ? torques(scribe) : forces(scribe);
  const rise = ((last.torqueNm ?? 0) - (first.torqueNm ?? 0)) / (last.preloadN - first.preloadN);
  const height = hasTorque ? (first.torqueNm ?? 0) + rise * (yieldPreloadN - first.preloadN) : yieldPreloadN;
  const name = sayMechanics(scribe.language, 'plot.yield');
  return [{ kind: 'limit', name, along: 'y', at: up.of(height), reads: up.show(height) }];
}
