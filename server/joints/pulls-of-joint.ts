import { ok, type Result } from '@clampwright/core/failure';
import type { Step } from '@clampwright/core/procedure';
import type { JobState, JointState } from '@clampwright/core/record';
import type { Store } from '@clampwright/store';
import type { JointPulls } from '../api/contract.ts';

/** Jobs that are looked through, the ones last worked on: what was long ago says little of how it is done now. */
const MOST_JOBS = 50;

type PullsAt = JointPulls['steps'][number];

/** What was pulled on a revision of a joint, step by step: pulls that stand, in the order of the jobs. */
export async function pullsOfJoint(
  { jobs }: Pick<Store, 'jobs'>,
  joint: { readonly id: string; readonly revision: number },
): Promise<Result<JointPulls>> {
  const latest = await jobs.withJoint(joint, MOST_JOBS);
  if (!latest.ok) return latest;
  const steps = new Map<string, PullsAt>();
  for (const id of latest.value.toReversed()) {
    const state = await jobs.state(id);
    if (!state.ok) return state;
    for (const one of thoseOf(state.value, joint)) gather(steps, one);
  }
  return ok({ steps: [...steps.values()], jobs: latest.value.length });
}

function thoseOf({ sheet, joints }: JobState, { id, revision }: { id: string; revision: number }) {
  const refs = sheet.joints.filter(({ joint }) => joint.id === id && joint.revision === revision).map(({ ref }) => ref);
  return joints.filter(({ ref }) => refs.includes(ref));
}

function gather(into: Map<string, PullsAt>, { steps, cells }: JointState): void {
  for (const [index, step] of steps.entries()) {
    const known = into.get(`${step.stage}/${step.round}`) ?? blank(step);
    if (!known) continue;
    const standing = (cells[index] ?? [])
      .flatMap(({ attempts }) => attempts.filter(({ standing }) => standing === 'stands').slice(-1))
      .toSorted((a, b) => a.seq - b.seq)
      .flatMap(({ torqueNm, angleDeg }) => (known.quantity === 'torque' ? torqueNm : (angleDeg ?? [])));
    into.set(`${step.stage}/${step.round}`, { ...known, values: [...known.values, ...standing] });
  }
}

/** A step that judges an angle is looked at by its angle, another by its torque; loosening judges nothing. */
function blank({ stage, round, torque, torques, angle }: Step): PullsAt | undefined {
  const at = { stage, round, values: [] };
  if (angle) return { ...at, quantity: 'angle', lower: angle.lowerDeg, upper: angle.upperDeg };
  if (torques) return { ...at, quantity: 'torque' };
  return torque && { ...at, quantity: 'torque', lower: torque.lowerNm, upper: torque.upperNm };
}
