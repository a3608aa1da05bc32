import { failed, ok, type Result, type Role } from '../failure/failure.ts';
import type { Command } from './command.ts';
import { acceptCell, reworkPosition } from './decide-exception.ts';
import { movePull, setPullAside } from './decide-mending.ts';
import { recordPull } from './decide-pull.ts';
import { takeTool } from './decide-tool.ts';
import { type DecisionContext, refOf } from './decision-context.ts';
import type { EntryBody, EntryDraft } from './entry.ts';
import type { JobState } from './state.ts';

/**
 * What is appended to a job for a command, or why nothing is. Pure: the same state, command and context
 * decide alike on the server and on a tablet. An empty list means that the same thing is stored already.
 */
export function decide(state: JobState, command: Command, context: DecisionContext): Result<readonly EntryDraft[]> {
  const refusal = mayWork(command, context.by.role);
  if (refusal) return refusal;
  const body = bodyFor(state, command, context);
  if (!body.ok) return body;
  if (body.value === 'already') return ok([]);
  const id = command.kind === 'record-pull' ? command.id : context.entryId;
  return ok([{ id, at: context.now, by: refOf(context.by), body: body.value }]);
}

function mayWork(command: Command, role: Role): ReturnType<typeof failed> | undefined {
  if (role !== 'technician' && role !== 'lead')
    return failed({ kind: 'forbidden', action: command.kind, needs: 'technician' });
  return undefined;
}

function bodyFor(state: JobState, command: Command, context: DecisionContext): Result<EntryBody | 'already'> {
  const { known } = context;
  if (known && command.kind !== 'record-pull') return ok('already');
  if (state.status === 'closed' && !known) {
    return failed({
      kind: 'conflict',
      message: 'This job is closed and sealed; nothing can be added. Make a new job for further work.',
      current: { status: state.status },
    });
  }
  switch (command.kind) {
    case 'record-pull':
      return recordPull(state, command, context);
    case 'take-tool':
      return takeTool(state, command, context);
    case 'move-pull':
      return movePull(state, command, context);
    case 'set-pull-aside':
      return setPullAside(state, command, context);
    case 'rework':
      return reworkPosition(state, command, context);
    case 'accept':
      return acceptCell(state, command, context);
    case 'note':
      return ok({ kind: 'noted', text: command.text });
    case 'sign-off':
      return signOff(state, command.statement);
    case 'close':
      return close(state);
  }
}

function signOff(state: JobState, statement: string): Result<EntryBody> {
  const waiting = state.joints.filter((joint) => joint.next).map((joint) => joint.next);
  if (waiting.length === 0) return ok({ kind: 'signed-off', statement });
  return failed({
    kind: 'conflict',
    message: 'Some positions still wait for a verdict or for the lead; finish them before signing off.',
    current: { waiting },
  });
}

function close(state: JobState): Result<EntryBody> {
  if (state.status === 'signed-off') return ok({ kind: 'closed' });
  return failed({
    kind: 'conflict',
    message: 'A job is signed off before it is closed.',
    current: { status: state.status },
  });
}
