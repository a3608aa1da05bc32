import { ok, type Result } from '@clampwright/core/failure';
import {
  type CellRef,
  expectedOf,
  type GroundCurve,
  groundCurve,
  type JobState,
  type JointState,
  type Pull,
  shownTrace,
} from '@clampwright/core/record';
import { type Expectation, learn, type TraceFigures } from '@clampwright/core/trace';
import type { Store } from '@clampwright/store';

/** No more than so many are laid under a drawing, the latest first: more make a smear. */
export const MOST_EARLIER = 200;
/** Points of each, lowest and highest of every piece. */
export const POINTS_EACH = 120;
/** Jobs looked through, the ones last worked on. */
const MOST_JOBS = 20;

/** What a pull is drawn over: the joint as it is expected, and accepted pulls on the same step. */
export interface EarlierTraces {
  readonly expected?: Expectation;
  readonly curves: readonly GroundCurve[];
}

/** A pull with the identity that its entry gives it. */
export interface PullEntry {
  readonly id: string;
  readonly pull: Pull;
}

interface Accepted {
  readonly state: JobState;
  readonly pullId: string;
  readonly seq: number;
  readonly figures: TraceFigures;
}

/** Accepted traces of the same joint revision, stage and round, in this job and others; never the pull itself. */
export async function earlierTraces(
  { jobs }: Pick<Store, 'jobs'>,
  jobId: string,
  { id: pullId, pull: { cell } }: PullEntry,
): Promise<Result<EarlierTraces>> {
  const here = await jobs.state(jobId);
  if (!here.ok) return here;
  const states = await statesWith({ jobs }, here.value, cell);
  if (!states.ok) return states;
  const accepted = states.value
    .flatMap((state) => acceptedIn(state, here.value, cell))
    .filter((one) => one.pullId !== pullId);
  const expected = learn(accepted.map(({ figures }) => figures)) ?? expectedAt(here.value, cell);
  const curves: GroundCurve[] = [];
  for (const one of accepted.slice(0, MOST_EARLIER)) {
    const curve = await curveOf({ jobs }, one);
    if (!curve.ok) return curve;
    if (curve.value) curves.push(curve.value);
  }
  return ok({ ...(expected ? { expected } : {}), curves });
}

function expectedAt({ sheet, joints }: JobState, cell: CellRef): Expectation | undefined {
  const content = sheet.joints.find(({ ref }) => ref === cell.jointRef)?.joint.content;
  const steps = joints.find(({ ref }) => ref === cell.jointRef)?.steps ?? [];
  const step = steps.find(({ stage, round }) => stage === cell.stage && round === cell.round);
  return content && step && expectedOf(content, step, cell);
}

async function statesWith(
  { jobs }: Pick<Store, 'jobs'>,
  here: JobState,
  { jointRef }: CellRef,
): Promise<Result<readonly JobState[]>> {
  const joint = here.sheet.joints.find(({ ref }) => ref === jointRef)?.joint;
  if (!joint) return ok([here]);
  const others = await jobs.withJoint(joint, MOST_JOBS + 1);
  if (!others.ok) return others;
  const states = [here];
  for (const id of others.value.filter((other) => other !== here.sheet.id)) {
    const state = await jobs.state(id);
    if (!state.ok) return state;
    states.push(state.value);
  }
  return ok(states);
}

function acceptedIn(state: JobState, here: JobState, cell: CellRef): readonly Accepted[] {
  const wanted = here.sheet.joints.find(({ ref }) => ref === cell.jointRef)?.joint;
  const refs = state.sheet.joints
    .filter(({ joint }) => joint.id === wanted?.id && joint.revision === wanted.revision)
    .map(({ ref }) => ref);
  return state.joints
    .filter(({ ref }) => refs.includes(ref))
    .flatMap((joint) => acceptedOn(joint, cell))
    .toSorted((a, b) => b.seq - a.seq)
    .map((one) => ({ ...one, state }));
}

function acceptedOn({ cells }: JointState, { stage, round }: CellRef): readonly Omit<Accepted, 'state'>[] {
  const row = cells.find(([first]) => first?.ref.stage === stage && first.ref.round === round) ?? [];
  return row
    .flatMap(({ attempts }) => attempts)
    .flatMap(({ figures, verdict, standing, pullId, seq }) =>
      figures && verdict === 'within' && (standing === 'stands' || standing === 'undone')
        ? [{ pullId, seq, figures }]
        : [],
    );
}

async function curveOf(
  { jobs }: Pick<Store, 'jobs'>,
  { state, pullId, seq }: Accepted,
): Promise<Result<GroundCurve | undefined>> {
  const [trace, entries] = await Promise.all([
    jobs.trace(pullId),
    jobs.entries(state.sheet.id, { afterSeq: seq - 1, limit: 1 }),
  ]);
  if (!trace.ok) return trace;
  if (!entries.ok) return entries;
  const body = entries.value[0]?.body;
  if (body?.kind !== 'pull') return ok(undefined);
  return ok(groundCurve(shownTrace(state, body.pull, trace.value), POINTS_EACH));
}
