import type { CalibrationPlan, CalibrationStep, Comparison } from '@clampwright/core/wrench';
import { DIRECTIONS } from '@clampwright/core/wrench';
import { z } from 'zod';

/* A calibration under way: what was done so far, one act after the other. Nothing is counted but from these. */

const directionSchema = z.enum(DIRECTIONS);
const actSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['preload', 'zero']), direction: directionSchema }),
  z.strictObject({
    kind: z.literal('reading'),
    direction: directionSchema,
    targetNm: z.number(),
    indicatedNm: z.number().optional(),
    referenceNm: z.number(),
  }),
]);
export type Act = z.infer<typeof actSchema>;
export type Reading = Extract<Act, { kind: 'reading' }>;

/** What was typed before the first reading, as typed. */
const setUpSchema = z.strictObject({
  referenceId: z.string(),
  certificate: z.string(),
  place: z.string(),
  temperature: z.string(),
  humidity: z.string(),
  dueOn: z.string(),
  /** Absent: as usual. */
  dueAfterPulls: z.string().optional(),
  reproducibility: z.string(),
  outputInterface: z.string(),
  driveInterface: z.string(),
  leverVariation: z.string(),
});
export type SetUp = z.infer<typeof setUpSchema>;

const runSchema = z.strictObject({ at: z.string(), acts: z.array(actSchema) });
export type Run = z.infer<typeof runSchema>;

export const sessionSchema = z.strictObject({
  /** Identity of the calibration that comes of it. */
  id: z.uuid(),
  wrenchId: z.uuid(),
  /** The screen where it stands. */
  at: z.enum(['set-up', 'found', 'between', 'left', 'finish']),
  setUp: setUpSchema,
  found: runSchema,
  left: runSchema.optional(),
});
export type CalibrationSession = z.infer<typeof sessionSchema>;

/** What is next in a run, and the how manieth of how many; undefined when all of the plan is done. */
export interface Next {
  readonly step: CalibrationStep;
  readonly number: number;
  readonly of: number;
  /** Place of the step in the plan, from 1. */
  readonly place: number;
}

export function nextOf({ steps }: CalibrationPlan, acts: readonly Act[]): Next | undefined {
  for (const [index, step] of steps.entries()) {
    const of = timesOf(step);
    const done = acts.filter((act) => belongs(act, step)).length;
    if (done < of) return { step, number: done + 1, of, place: index + 1 };
  }
  return undefined;
}

function timesOf(step: CalibrationStep): number {
  switch (step.kind) {
    case 'preload':
      return step.times;
    case 'zero':
      return 1;
    case 'point':
      return step.repeats;
  }
}

function belongs(act: Act, step: CalibrationStep): boolean {
  if (act.direction !== step.direction) return false;
  if (step.kind === 'point') return act.kind === 'reading' && act.targetNm === step.torqueNm;
  return act.kind === step.kind;
}

/** Readings of a run at each point of the plan, also where there are none yet. */
export const readingsAt = ({ steps }: CalibrationPlan, acts: readonly Act[]) =>
  steps.flatMap((step) =>
    step.kind === 'point'
      ? [{ step, readings: acts.filter((act): act is Reading => act.kind === 'reading' && belongs(act, step)) }]
      : [],
  );

/** A run as it is kept. */
export function comparisonOf(plan: CalibrationPlan, { at, acts }: Run, spreads: Comparison['spreads']): Comparison {
  const points = readingsAt(plan, acts)
    .filter(({ readings }) => readings.length > 0)
    .map(({ step, readings }) => {
      const indicatedNm = readings.flatMap((reading) => reading.indicatedNm ?? []);
      return {
        direction: step.direction,
        targetNm: step.torqueNm,
        referenceNm: readings.map(({ referenceNm }) => referenceNm),
        ...(indicatedNm.length === readings.length ? { indicatedNm } : {}),
      };
    });
  const preloads = plan.directions.map(
    (direction) => acts.filter((act) => act.kind === 'preload' && act.direction === direction).length,
  );
  return { at, preloadings: Math.min(...preloads), points, spreads };
}

/** Deviation of one reading, percent of the reference (ISO 6789-1:2017). */
export const deviationPercent = ({ targetNm, indicatedNm, referenceNm }: Reading): number =>
  (((indicatedNm ?? targetNm) - referenceNm) / referenceNm) * 100;
