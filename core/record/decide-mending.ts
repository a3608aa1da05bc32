import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import type { Command } from './command.ts';
import { cellNamed, judgedIn } from './decide-pull.ts';
import { type DecisionContext, leadOf } from './decision-context.ts';
import type { CellRef, EntryBody, Pull } from './entry.ts';
import type { CellState, JobState, JointState } from './state.ts';

/** Where a pull stands now. */
interface Standing {
  readonly joint: JointState;
  readonly cell: CellState;
}

/** The last pull of a joint can be mended by whoever works; an earlier one by the lead. */
function standing(state: JobState, pullId: string, context: DecisionContext): Result<Standing> {
  for (const joint of state.joints) {
    const cell = joint.cells
      .flat()
      .find(({ attempts }) => attempts.some((attempt) => attempt.pullId === pullId && attempt.standing === 'stands'));
    if (!cell) continue;
    if (joint.lastPull?.pullId === pullId || leadOf(context)) return ok({ joint, cell });
    return failed({ kind: 'forbidden', action: 'mend a pull that is not the last one', needs: 'lead' });
  }
  return failed({ kind: 'not-found', what: 'standing pull', id: pullId });
}

export function setPullAside(
  state: JobState,
  command: Extract<Command, { kind: 'set-pull-aside' }>,
  context: DecisionContext,
): Result<EntryBody> {
  const found = standing(state, command.pullId, context);
  if (!found.ok) return found;
  return ok({ kind: 'pull-set-aside', pullId: command.pullId, cell: found.value.cell.ref, reason: command.reason });
}

/** Moves a pull to its right position and judges it there; where it was stays in sight. */
export function movePull(
  state: JobState,
  command: Extract<Command, { kind: 'move-pull' }>,
  context: DecisionContext,
): Result<EntryBody> {
  const found = standing(state, command.pullId, context);
  if (!found.ok) return found;
  const target = cellNamed(state, command.to, 'to');
  if (!target.ok) return target;
  const { joint, cell } = found.value;
  if (target.value === cell) return invalid('to', 'the pull stands there already', 'another cell');
  if (command.to.jointRef !== joint.ref) return invalid('to.jointRef', 'a pull is moved within its joint', joint.ref);
  const { pulled } = context;
  if (!pulled) return failed({ kind: 'not-found', what: 'pull', id: command.pullId });
  const tool = joint.tools.findLast(({ wrench }) => wrench.id === pulled.wrenchId);
  if (!tool) return failed({ kind: 'not-found', what: 'wrench', id: pulled.wrenchId });
  const judgement = judgedIn(state, joint, target.value, placed(pulled, command.to), tool, context.now);
  return ok({
    kind: 'pull-moved',
    pullId: command.pullId,
    from: cell.ref,
    to: command.to,
    reason: command.reason,
    judgement,
  });
}

const placed = (pull: Pull, cell: CellRef): Pull => ({ ...pull, cell });
