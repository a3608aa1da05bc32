import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark, PlotPoint } from '../plot/plot.ts';
import { forces, type Scribe, torques } from './scribe.ts';

const outputSchema = z.object({
  preloadN: z.number().positive(),
  torqueNm: z.number().positive().optional(),
  utilization: z.number().positive().optional(),
  shares: z.object({ pitch: z.number(), thread: z.number(), bearing: z.number() }),
  interval95N: z.tuple([z.number(), z.number()]).optional(),
});
type Worked = z.infer<typeof outputSchema>;

const figureSchema = z.union([z.number(), z.object({ value: z.number() }).transform(({ value }) => value)]);

const inputSchema = z.object({
  torqueNm: figureSchema.optional(),
  prevailingTorqueNm: figureSchema.default(0),
  lowerPreloadN: z.number().optional(),
  upperPreloadN: z.number().optional(),
});
type Given = z.infer<typeof inputSchema>;

/** How much friction is taken to stray where nothing is told of it. */
const STRAY = 0.2;
/** The torque axis goes on so far past the target. */
const BEYOND = 1.25;
/** Yield that lies further above the preload would press the rest flat. */
const YIELD_SHOWN = 1.6;

/** Preload over torque: a line through the torque at which nothing clamps yet, and how far friction spreads it. */
export function torqueToPreload(input: unknown, output: unknown, scribe: Scribe): readonly Picture[] {
  const given = inputSchema.safeParse(input);
  const worked = outputSchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const torqueNm = worked.data.torqueNm ?? given.data.torqueNm;
  if (torqueNm === undefined) return [];
  const { language } = scribe;
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.torque-to-preload'),
      plot: {
        x: { label: `${sayMechanics(language, 'plot.torque')}, ${torques(scribe).unit}`, from: 0 },
        y: { label: `${sayMechanics(language, 'plot.preload')}, ${forces(scribe).unit}`, from: 0 },
        marks: marksOf(torqueNm, given.data, worked.data, scribe),
      },
    },
  ];
}

function marksOf(torqueNm: number, given: Given, worked: Worked, scribe: Scribe): readonly Mark[] {
  const { language } = scribe;
  const [force, torque] = [forces(scribe), torques(scribe)];
  const { preloadN, interval95N } = worked;
  const { prevailingTorqueNm: idleNm } = given;
  const endNm = torqueNm * BEYOND;
  const grow = (endNm - idleNm) / (torqueNm - idleNm);
  const at = (x: number, y: number): PlotPoint => ({ x: torque.of(x), y: force.of(y) });
  const [lowN, highN] = interval95N ?? strayed(preloadN, worked.shares);
  return [
    ...windowOf(given, scribe),
    {
      kind: 'band',
      name: sayMechanics(language, interval95N ? 'plot.band-95' : 'plot.band-friction'),
      reads: `${force.show(lowN)} – ${force.show(highN)}`,
      points: [
        { x: torque.of(idleNm), low: 0, high: 0 },
        { x: torque.of(endNm), low: force.of(lowN * grow), high: force.of(highN * grow) },
      ],
    },
    {
      kind: 'line',
      name: sayMechanics(language, 'plot.expected'),
      points: [at(idleNm, 0), at(endNm, preloadN * grow)],
    },
    ...yieldOf(worked, scribe),
    {
      kind: 'point',
      name: sayMechanics(language, 'plot.target'),
      at: at(torqueNm, preloadN),
      reads: `${torque.show(torqueNm)}, ${force.show(preloadN)}`,
    },
  ];
}

/** Preload at the same torque with all friction a fifth higher and a fifth lower. */
function strayed(preloadN: number, { pitch, thread, bearing }: Worked['shares']): readonly [number, number] {
  const whole = pitch + thread + bearing;
  const preload = (stray: number) => (preloadN * whole) / (pitch + (1 + stray) * (thread + bearing));
  return [preload(STRAY), preload(-STRAY)];
}

function yieldOf({ preloadN, utilization }: Worked, scribe: Scribe): readonly Mark[] {
  if (utilization === undefined || utilization < 1 / YIELD_SHOWN) return [];
  const force = forces(scribe);
  const yieldN = preloadN / utilization;
  const name = sayMechanics(scribe.language, 'plot.yield');
  return [{ kind: 'limit', name, along: 'y', at: force.of(yieldN), reads: force.show(yieldN) }];
}

function windowOf({ lowerPreloadN: lowerN, upperPreloadN: upperN }: Given, scribe: Scribe): readonly Mark[] {
  if (lowerN === undefined || upperN === undefined) return [];
  const force = forces(scribe);
  return [
    {
      kind: 'window',
      name: sayMechanics(scribe.language, 'plot.window'),
      along: 'y',
      from: force.of(lowerN),
      to: force.of(upperN),
      reads: `${force.show(lowerN)} – ${force.show(upperN)}`,
    },
  ];
}
