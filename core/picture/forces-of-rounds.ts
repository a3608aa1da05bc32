import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark } from '../plot/plot.ts';
import { showShare } from '../quantity/show-quantity.ts';
import { forces, type Scribe } from './scribe.ts';

const finalSchema = z.object({ finalN: z.array(z.number()).min(1) });

const roundsSchema = z.object({
  afterEachRound: z
    .array(
      z.object({ round: z.number(), meanN: z.number(), leastN: z.number(), mostN: z.number(), spread: z.number() }),
    )
    .min(2),
});

const scatterSchema = z.object({
  scatter: z.array(z.object({ plan: z.string(), spreadMean: z.number() })).min(1),
});

/** What rounds leave in the bolts: force by position, how it evens out, and what friction makes of it. */
export function forcesOfRounds(output: unknown, scribe: Scribe): readonly Picture[] {
  return [...byPosition(output, scribe), ...byRound(output, scribe), ...withFriction(output, scribe)];
}

/** More positions than this are counted by tens. */
const EVERY_POSITION = 24;

function byPosition(output: unknown, scribe: Scribe): readonly Picture[] {
  const read = finalSchema.safeParse(output);
  if (!read.success) return [];
  const { finalN } = read.data;
  const { language } = scribe;
  const force = forces(scribe);
  const count = finalN.length;
  const positions = finalN.map((_, index) => index + 1);
  const named = positions.filter((position) => count <= EVERY_POSITION || position === 1 || position % 10 === 0);
  const meanN = finalN.reduce((sum, one) => sum + one, 0) / count;
  const marks: readonly Mark[] = [
    {
      kind: 'bars',
      name: sayMechanics(language, 'plot.force-by-position'),
      reads: `${force.show(Math.min(...finalN))} – ${force.show(Math.max(...finalN))}`,
      points: finalN.map((one, index) => ({ x: index + 1, y: force.of(one) })),
      breadth: 0.7,
    },
    {
      kind: 'limit',
      name: sayMechanics(language, 'plot.mean-force'),
      along: 'y',
      at: force.of(meanN),
      reads: force.show(meanN),
    },
  ];
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.force-by-position'),
      plot: {
        x: {
          label: sayMechanics(language, 'plot.position'),
          from: 0.4,
          to: count + 0.6,
          ticks: named.map((position) => ({ at: position, text: String(position) })),
        },
        y: { label: `${sayMechanics(language, 'plot.preload')}, ${force.unit}`, from: 0 },
        marks,
      },
    },
  ];
}

function byRound(output: unknown, scribe: Scribe): readonly Picture[] {
  const read = roundsSchema.safeParse(output);
  if (!read.success) return [];
  const { language } = scribe;
  const ends = read.data.afterEachRound;
  const force = forces(scribe);
  const marks: readonly Mark[] = [
    {
      kind: 'band',
      name: sayMechanics(language, 'plot.forces-after-round'),
      points: ends.map(({ round, leastN, mostN }) => ({ x: round, low: force.of(leastN), high: force.of(mostN) })),
    },
    {
      kind: 'line',
      name: sayMechanics(language, 'plot.mean-force'),
      points: ends.map(({ round, meanN }) => ({ x: round, y: force.of(meanN) })),
    },
  ];
  const most = Math.max(...ends.map(({ spread }) => spread), 1e-9);
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.force-by-round'),
      plot: {
        x: {
          label: sayMechanics(language, 'plot.round'),
          ticks: ends.map(({ round }) => ({ at: round, text: String(round) })),
        },
        y: { label: `${sayMechanics(language, 'plot.preload')}, ${force.unit}`, from: 0 },
        marks,
      },
    },
    {
      kind: 'bars',
      title: sayMechanics(language, 'plot.spread-by-round'),
      parts: ends.map(({ round, spread }) => ({
        name: `${sayMechanics(language, 'plot.round')} ${round}`,
        share: spread / most,
        text: showShare(spread, language),
      })),
    },
  ];
}

function withFriction(output: unknown, { value, language }: Scribe): readonly Picture[] {
  const read = scatterSchema.safeParse(output);
  if (!read.success) return [];
  const plans = read.data.scatter;
  const most = Math.max(...plans.map(({ spreadMean }) => spreadMean), 1e-9);
  const parts = plans.map(({ plan, spreadMean }) => ({
    name: value(plan),
    share: spreadMean / most,
    text: showShare(spreadMean, language),
  }));
  return [{ kind: 'bars', title: sayMechanics(language, 'plot.spread-with-friction'), parts }];
}
