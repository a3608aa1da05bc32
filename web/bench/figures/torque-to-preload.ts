import type { Mark, PlotPoint } from '@clampwright/core/plot';
import { z } from 'zod';
import type { BenchFigure } from './figure.ts';
import { forces, type Scribe, torques } from './scribe.ts';

const outputSchema = z.object({
  preloadN: z.number().positive(),
  torqueNm: z.number().positive().optional(),
  utilization: z.number().positive().optional(),
  shares: z.object({ pitch: z.number(), thread: z.number(), bearing: z.number() }),
  interval95N: z.tuple([z.number(), z.number()]).optional(),
});

const figureSchema = z.union([z.number(), z.object({ value: z.number() }).transform(({ value }) => value)]);

const inputSchema = z.object({
  torqueNm: figureSchema.optional(),
  prevailingTorqueNm: figureSchema.default(0),
  lowerPreloadN: z.number().optional(),
  upperPreloadN: z.number().optional(),
});

/** How much friction is taken to stray where nothing is told of it. */
const STRAY = 0.2;
/** The torque axis goes on so far past the target. */
const BEYOND = 1.25;

/** Preload over torque: a line through the torque at which nothing clamps yet, and how far friction spreads it. */
export function torqueToPreload(input: unknown, output: unknown, scribe: Scribe): readonly BenchFigure[] {
  const given = inputSchema.safeParse(input);
  const worked = outputSchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const torqueNm = worked.data.torqueNm ?? given.data.torqueNm;
  if (torqueNm === undefined) return [];
  const { say } = scribe;
  const [force, torque] = [forces(scribe), torques(scribe)];
  const { preloadN, utilization, interval95N } = worked.data;
  const { prevailingTorqueNm: idleNm, lowerPreloadN, upperPreloadN } = given.data;
  const endNm = torqueNm * BEYOND;
  const grow = (endNm - idleNm) / (torqueNm - idleNm);
  const at = (x: number, y: number): PlotPoint => ({ x: torque.of(x), y: force.of(y) });
  const [lowN, highN] = interval95N ?? strayed(preloadN, worked.data.shares);
  const yieldN = utilization === undefined ? undefined : preloadN / utilization;
  const band = say(interval95N ? 'band-95' : 'band-friction');
  const figures = new Map([
    [band, `${force.show(lowN)} – ${force.show(highN)}`],
    [say('target'), `${torque.show(torqueNm)}, ${force.show(preloadN)}`],
  ]);
  const marks: Mark[] = [
    ...windowOf(lowerPreloadN, upperPreloadN, scribe, figures),
    {
      kind: 'band',
      name: band,
      points: [
        { x: torque.of(idleNm), low: 0, high: 0 },
        { x: torque.of(endNm), low: force.of(lowN * grow), high: force.of(highN * grow) },
      ],
    },
    { kind: 'line', name: say('expected'), points: [at(idleNm, 0), at(endNm, preloadN * grow)] },
  ];
  if (yieldN !== undefined && yieldN < 1.6 * preloadN) {
    marks.push({ kind: 'limit', name: say('yield'), along: 'y', at: force.of(yieldN) });
    figures.set(say('yield'), force.show(yieldN));
  }
  marks.push({ kind: 'point', name: say('target'), at: at(torqueNm, preloadN) });
  return [
    {
      kind: 'plot',
      title: say('torque-to-preload'),
      text: [...figures].map(([name, figure]) => `${name}: ${figure}`).join('; '),
      plot: {
        x: { label: `${say('torque')}, ${torque.unit}`, from: 0 },
        y: { label: `${say('preload')}, ${force.unit}`, from: 0 },
        marks,
      },
      figures,
    },
  ];
}

type Shares = z.infer<typeof outputSchema>['shares'];

/** Preload at the same torque with all friction a fifth higher and a fifth lower. */
function strayed(preloadN: number, { pitch, thread, bearing }: Shares): readonly [number, number] {
  const whole = pitch + thread + bearing;
  const preload = (stray: number) => (preloadN * whole) / (pitch + (1 + stray) * (thread + bearing));
  return [preload(STRAY), preload(-STRAY)];
}

function windowOf(
  lowerN: number | undefined,
  upperN: number | undefined,
  scribe: Scribe,
  figures: Map<string, string>,
): readonly Mark[] {
  if (lowerN === undefined || upperN === undefined) return [];
  const force = forces(scribe);
  const name = scribe.say('window');
  figures.set(name, `${force.show(lowerN)} – ${force.show(upperN)}`);
  return [{ kind: 'window', name, along: 'y', from: force.of(lowerN), to: force.of(upperN) }];
}
