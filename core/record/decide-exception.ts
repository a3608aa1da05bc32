import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import type { Command } from './command.ts';
import { cellNamed } from './decide-pull.ts';
import { type DecisionContext, leadOf } from './decision-context.ts';
import type { EntryBody } from './entry.ts';
import type { JobState } from './state.ts';

/** The lead takes a cell as it is, with a reason that goes into the record. */
export function acceptCell(
  state: JobState,
  command: Extract<Command, { kind: 'accept' }>,
  context: DecisionContext,
): Result<EntryBody> {
  const lead = leadOf(context);
  if (!lead) return failed({ kind: 'forbidden', action: 'accept an exception', needs: 'lead' });
  const cell = cellNamed(state, command.cell, 'cell');
  if (!cell.ok) return cell;
  if (cell.value.need === 'nothing')
    return failed({
      kind: 'conflict',
      message: `Position ${command.cell.position} waits for nothing here.`,
      current: { verdict: cell.value.verdict ?? null },
    });
  return ok({ kind: 'accepted', cell: command.cell, exception: { by: lead, reason: command.reason } });
}

/** Loosening or a new fastener: everything done on the position is done again from the first stage. */
export function reworkPosition(
  state: JobState,
  command: Extract<Command, { kind: 'rework' }>,
  context: DecisionContext,
): Result<EntryBody> {
  const joint = state.joints.find(({ ref }) => ref === command.jointRef);
  if (!joint)
    return invalid(
      'jointRef',
      `this job has no joint ${command.jointRef}`,
      state.joints.map(({ ref }) => ref).join(', '),
    );
  const cells = joint.cells.flatMap((row) => row[command.position - 1] ?? []);
  if (cells.length === 0)
    return invalid(
      'position',
      `${joint.ref} has no position ${command.position}`,
      `a whole number from 1 to ${joint.cells[0]!.length}`,
    );
  if (!cells.some(({ attempts }) => attempts.some((attempt) => attempt.standing === 'stands'))) {
    return failed({
      kind: 'conflict',
      message: `Position ${command.position} has no standing pull that could be undone.`,
      current: null,
    });
  }
  const lead = leadOf(context);
  if (cells.some((cell) => cell.need === 'lead') && !lead)
    return failed({ kind: 'forbidden', action: 'go on after the attempts are used up', needs: 'lead' });
  return ok({
    kind: 'reworked',
    jointRef: joint.ref,
    position: command.position,
    how: command.how,
    reason: command.reason,
    ...(lead && lead.id !== context.by.id ? { orderedBy: lead } : {}),
  });
}
