import { stepsOf } from '../procedure/steps.ts';
import { derived, type FoldOptions, undone, withAttempt, withoutAttempt } from './cell.ts';
import { withoutIdleRounds } from './closing.ts';
import type { CellRef, Entry, EntryBody, JobJoint, Judgement, PersonRef, Pull } from './entry.ts';
import type { Attempt, CellState, JobState, JointState } from './state.ts';

/**
 * The state of a job, from its entries alone, first to last.
 *
 * @throws when the entries do not begin with `opened`: a chain that was verified does
 */
export function fold(entries: readonly Entry[], options: FoldOptions = {}): JobState {
  const [first, ...rest] = entries;
  if (first?.body.kind !== 'opened') throw new Error('a job begins with its sheet');
  return rest.reduce((state, entry) => foldOn(state, entry, options), opened(first, first.body));
}

/** The state after one more entry. */
export function foldOn(state: JobState, entry: Entry, options: FoldOptions = {}): JobState {
  const after = applied(state, entry, options);
  return { ...after, lastSeq: entry.seq, lastHash: entry.hash, lastAt: entry.at };
}

function opened(entry: Entry, body: Extract<EntryBody, { kind: 'opened' }>): JobState {
  return {
    sheet: body.sheet,
    status: 'open',
    joints: body.sheet.joints.map(untouched),
    openedAt: entry.at,
    jobId: entry.jobId,
    lastSeq: entry.seq,
    lastHash: entry.hash,
    lastAt: entry.at,
  };
}

function untouched({ ref, joint }: JobJoint): JointState {
  const steps = stepsOf(joint.content);
  if (!steps.ok) throw new Error(`joint ${ref} was released with a procedure that cannot be worked`);
  const rework = joint.content.rework;
  const cells = steps.value.map(({ stage, round, order }) =>
    order
      .map((_, index) => emptyCell({ jointRef: ref, stage, round, position: index + 1 }))
      .map((cell) => derived(cell, rework)),
  );
  return withNext({ ref, rework, steps: steps.value, cells, next: undefined, tools: [], lastPull: undefined });
}

const emptyCell = (ref: CellRef): CellState => ({
  ref,
  attempts: [],
  attemptCount: 0,
  attemptsCounted: 0,
  verdict: undefined,
  acceptedBy: undefined,
  carriedDeg: 0,
  need: 'pull',
});

function withNext(changed: JointState): JointState {
  const joint = withoutIdleRounds(changed);
  return { ...joint, next: nextOf(joint) };
}

/** Within the first round that is not done: what can be worked on before what waits for the lead. */
function nextOf({ steps, cells }: JointState): CellRef | undefined {
  for (const [index, { order }] of steps.entries()) {
    let forLead: CellState | undefined;
    for (const position of order) {
      const cell = cells[index]![position - 1]!;
      if (cell.need === 'nothing') continue;
      if (cell.need !== 'lead') return cell.ref;
      forLead ??= cell;
    }
    if (forLead) return forLead.ref;
  }
  return undefined;
}

function applied(state: JobState, entry: Entry, options: FoldOptions): JobState {
  const body = entry.body;
  switch (body.kind) {
    case 'opened':
      throw new Error('a job is opened once');
    case 'tool-taken':
      return changeJoints(state, body.jointRefs, (joint) => ({ ...joint, tools: [...joint.tools, body.tool] }));
    case 'pull':
      return reopened(
        changeJoints(state, [body.pull.cell.jointRef], (joint) =>
          pulled(joint, entry, body.pull, body.judgement, options),
        ),
      );
    case 'pull-moved':
      return reopened(moved(state, entry, body, options));
    case 'pull-set-aside':
      return reopened(setAside(state, body));
    case 'reworked':
      return reopened(reworked(state, body, body.orderedBy ?? entry.by));
    case 'accepted':
      return changeJoints(state, [body.cell.jointRef], (joint) =>
        changeCell(joint, body.cell, (cell) => derived({ ...cell, acceptedBy: body.exception.by }, joint.rework)),
      );
    case 'noted':
      return state;
    case 'signed-off':
      return { ...state, status: 'signed-off' };
    case 'closed':
      return { ...state, status: 'closed' };
  }
}

/** Work after a sign-off lets the sign-off lapse. */
const reopened = (state: JobState): JobState => (state.status === 'signed-off' ? { ...state, status: 'open' } : state);

function changeJoints(state: JobState, refs: readonly string[], change: (joint: JointState) => JointState): JobState {
  return {
    ...state,
    joints: state.joints.map((joint) => (refs.includes(joint.ref) ? withNext(change(joint)) : joint)),
  };
}

function changeCell(joint: JointState, ref: CellRef, change: (cell: CellState) => CellState): JointState {
  const at = joint.steps.findIndex((step) => step.stage === ref.stage && step.round === ref.round);
  const cells = joint.cells.map((row, index) =>
    index === at ? row.with(ref.position - 1, change(row[ref.position - 1]!)) : row,
  );
  return { ...joint, cells };
}

const attemptOf = (pullId: string, seq: number, { reading, trace }: Pull, judgement: Judgement): Attempt => ({
  pullId,
  seq,
  verdict: judgement.verdict,
  torqueNm: reading.torqueNm,
  angleDeg: reading.angleDeg,
  ...(trace?.figures ? { figures: trace.figures } : {}),
  standing: 'stands',
});

function pulled(joint: JointState, entry: Entry, pull: Pull, judgement: Judgement, options: FoldOptions): JointState {
  const attempt = attemptOf(entry.id, entry.seq, pull, judgement);
  const changed = changeCell(joint, pull.cell, (cell) => withAttempt(cell, attempt, joint.rework, options));
  return { ...changed, lastPull: { pullId: entry.id, cell: pull.cell } };
}

function moved(
  state: JobState,
  entry: Entry,
  body: Extract<EntryBody, { kind: 'pull-moved' }>,
  options: FoldOptions,
): JobState {
  const source = findCell(state, body.from)?.attempts.find((attempt) => attempt.pullId === body.pullId);
  if (!source) throw new Error('a pull is moved from where it stands');
  const away = changeJoints(state, [body.from.jointRef], (joint) => ({
    ...changeCell(joint, body.from, (cell) => withoutAttempt(cell, body.pullId, 'moved', joint.rework)),
    lastPull: joint.lastPull?.pullId === body.pullId ? undefined : joint.lastPull,
  }));
  const attempt: Attempt = { ...source, seq: entry.seq, verdict: body.judgement.verdict, standing: 'stands' };
  return changeJoints(away, [body.to.jointRef], (joint) => ({
    ...changeCell(joint, body.to, (cell) => withAttempt(cell, attempt, joint.rework, options)),
    lastPull: { pullId: body.pullId, cell: body.to },
  }));
}

function setAside(state: JobState, body: Extract<EntryBody, { kind: 'pull-set-aside' }>): JobState {
  return changeJoints(state, [body.cell.jointRef], (joint) => ({
    ...changeCell(joint, body.cell, (cell) => withoutAttempt(cell, body.pullId, 'set-aside', joint.rework)),
    lastPull: joint.lastPull?.pullId === body.pullId ? undefined : joint.lastPull,
  }));
}

/** Loosening undoes every stage of the position, not only the one in hand. */
function reworked(state: JobState, body: Extract<EntryBody, { kind: 'reworked' }>, by: PersonRef): JobState {
  const countsAfresh = body.how === 'fastener-replaced' || by.role === 'lead';
  return changeJoints(state, [body.jointRef], (joint) => ({
    ...joint,
    lastPull: joint.lastPull?.cell.position === body.position ? undefined : joint.lastPull,
    cells: joint.cells.map((row) =>
      row.with(body.position - 1, undone(row[body.position - 1]!, countsAfresh, joint.rework)),
    ),
  }));
}

/** The cell of a reference, or undefined where the job has none. */
export function findCell(state: JobState, ref: CellRef): CellState | undefined {
  const joint = state.joints.find((candidate) => candidate.ref === ref.jointRef);
  const at = joint?.steps.findIndex((step) => step.stage === ref.stage && step.round === ref.round) ?? -1;
  return joint?.cells[at]?.[ref.position - 1];
}
