import type { Result } from '@clampwright/core/failure';
import { ok } from '@clampwright/core/failure';
import {
  acceptedFigures,
  type Command,
  type IncomingPull,
  type JobState,
  type JointState,
} from '@clampwright/core/record';
import type { TraceFigures } from '@clampwright/core/trace';
import type { Deps } from './deps.ts';

/** Figures of accepted traces by `stage/round`. */
export type Learned = Readonly<Record<string, readonly TraceFigures[]>>;

/** So many jobs teach, the ones last worked on: enough for a median, and the joint as it is now. */
const MOST_JOBS = 20;
/** So many traces of a step teach, of the jobs last worked on: more would move no median, and each pull would pay. */
const MOST_TRACES = 200;

/**
 * What other jobs on the same revision of the joint have taught about its curve, for a pull that brings a trace.
 *
 * @returns undefined for everything else
 */
export async function learnedFor(
  deps: Pick<Deps, 'store'>,
  jobId: string,
  command: Command,
): Promise<Result<Learned | undefined>> {
  if (command.kind !== 'record-pull' || !command.trace) return ok(undefined);
  const byJoint = await learnedForAll(deps, jobId, [command]);
  return byJoint.ok ? ok(byJoint.value.get(command.jointRef)) : byJoint;
}

/**
 * The same for many pulls of one job, by `jointRef`: each joint that a trace is for is looked up once.
 *
 * @returns empty where none of the pulls brings a trace
 */
export async function learnedForAll(
  deps: Pick<Deps, 'store'>,
  jobId: string,
  pulls: readonly Pick<IncomingPull, 'jointRef' | 'trace'>[],
): Promise<Result<ReadonlyMap<string, Learned>>> {
  const refs = new Set(pulls.flatMap(({ jointRef, trace }) => (trace ? [jointRef] : [])));
  const byJoint = new Map<string, Learned>();
  if (refs.size === 0) return ok(byJoint);
  const here = await deps.store.jobs.state(jobId);
  if (!here.ok) return here;
  for (const { ref, joint } of here.value.sheet.joints.filter(({ ref }) => refs.has(ref))) {
    const learned = await learnedElsewhere(deps, jobId, joint);
    if (!learned.ok) return learned;
    byJoint.set(ref, learned.value);
  }
  return ok(byJoint);
}

type Revision = Readonly<{ id: string; revision: number }>;

async function learnedElsewhere(
  { store }: Pick<Deps, 'store'>,
  jobId: string,
  joint: Revision,
): Promise<Result<Learned>> {
  const jobs = await store.jobs.withJoint(joint, MOST_JOBS + 1);
  if (!jobs.ok) return jobs;
  const learned = new Map<string, readonly TraceFigures[]>();
  for (const other of jobs.value.filter((id) => id !== jobId)) {
    const state = await store.jobs.state(other);
    if (!state.ok) return state;
    for (const [step, figures] of taughtBy(state.value, joint)) {
      learned.set(step, [...(learned.get(step) ?? []), ...figures].slice(0, MOST_TRACES));
    }
  }
  return ok(Object.fromEntries(learned));
}

/** Of every joint of a job that is this one, in the same revision. */
function taughtBy({ sheet, joints }: JobState, { id, revision }: Revision) {
  const refs = sheet.joints.filter(({ joint }) => joint.id === id && joint.revision === revision).map(({ ref }) => ref);
  return joints.filter(({ ref }) => refs.includes(ref)).flatMap((joint) => Object.entries(figuresOf(joint)));
}

/** A state never changes, so what it teaches is gathered once, however many pulls ask for it. */
const gathered = new WeakMap<JointState, ReturnType<typeof acceptedFigures>>();

function figuresOf(joint: JointState): ReturnType<typeof acceptedFigures> {
  const known = gathered.get(joint);
  if (known) return known;
  const figures = acceptedFigures(joint);
  gathered.set(joint, figures);
  return figures;
}
