import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import { appliedTorque } from '../procedure/setting.ts';
import { type Step, stepAt } from '../procedure/step.ts';
import { windUpDeg } from '../procedure/wind-up.ts';
import { judgePull } from '../verdict/judge-pull.ts';
import type { Reason } from '../verdict/verdict.ts';
import type { Tool } from '../wrench/wrench.ts';
import { canonical } from './canonical.ts';
import type { IncomingPull } from './command.ts';
import type { DecisionContext } from './decision-context.ts';
import { digestOf, type Sha256 } from './digest.ts';
import type { CellRef, EntryBody, JobJoint, Judgement, Pull } from './entry.ts';
import { findCell } from './fold.ts';
import type { CellState, JobState, JointState } from './state.ts';
import { doubted, isWrongWay, type TraceEvidence, traceEvidence } from './trace-evidence.ts';

/** Places an incoming pull, works out what reached the fastener, and judges it. */
export function recordPull(
  state: JobState,
  incoming: IncomingPull,
  context: DecisionContext,
): Result<EntryBody | 'already'> {
  if (context.known) return sameAgain(context.known.body, incoming);
  const joint = state.joints.find(({ ref }) => ref === incoming.jointRef);
  if (!joint)
    return invalid(
      'jointRef',
      `this job has no joint ${incoming.jointRef}`,
      state.joints.map(({ ref }) => ref).join(', '),
    );
  const cell = cellFor(joint, incoming);
  if (!cell.ok) return cell;
  const clash = attemptClash(cell.value, incoming);
  if (clash) return clash;
  const tool = toolFor(joint, incoming);
  if (!tool.ok) return tool;
  const step = stepOf(joint, cell.value.ref);
  const reading = readingAtFastener(incoming, step, tool.value);
  if (!reading.ok) return reading;
  if (incoming.trace && isWrongWay(incoming.trace, step))
    return invalid(
      'trace',
      'the trace is one of loosening, which is not judged as tightening',
      'a trace of tightening',
    );
  const read = readTrace(state, joint, { incoming, cell: cell.value.ref, tool: tool.value, step }, context);
  const pull = pullOf(incoming, cell.value.ref, tool.value, reading.value, read, context.sha256);
  const judgement = judgedIn(state, joint, cell.value, pull, tool.value, context.now);
  return ok({ kind: 'pull', pull, judgement });
}

/** Judges a pull as an attempt on a cell; also when it is moved there. */
export function judgedIn(
  state: JobState,
  joint: JointState,
  cell: CellState,
  pull: Pull,
  tool: Tool,
  now: string,
): Judgement {
  const step = stepOf(joint, cell.ref);
  const judgement = judgePull(step, pull.reading, {
    carriedDeg: cell.carriedDeg,
    tool,
    decisionRule: sheetJointOf(state, joint).joint.content.decisionRule,
  });
  const told = doubted(judgement, step, pull.trace);
  const { verdict, reasons } = wantsRework(cell, joint) ? unproven(told) : told;
  return { ...judgement, verdict, reasons: [...reasons, ...notices(state, joint, cell, pull, now)] };
}

function sheetJointOf({ sheet }: JobState, { ref }: JointState): JobJoint {
  const joint = sheet.joints.find((candidate) => candidate.ref === ref);
  if (!joint) throw new Error('a joint of the state stands on the sheet');
  return joint;
}

/** A fastener that is tight already reaches the number without turning: without rework nothing proves it. */
function wantsRework({ verdict }: CellState, { rework }: JointState): boolean {
  return verdict === 'over' || verdict === 'doubtful' || (verdict === 'under' && !rework.underContinues);
}

function unproven({
  verdict,
  reasons,
}: Pick<Judgement, 'verdict' | 'reasons'>): Pick<Judgement, 'verdict' | 'reasons'> {
  return { verdict: verdict === 'within' ? 'doubtful' : verdict, reasons: [...reasons, { code: 'not-reworked' }] };
}

/** The step of a cell, with the window that holds for its position. */
export function stepOf(joint: JointState, ref: CellRef): Step {
  const step = joint.steps.find((candidate) => candidate.stage === ref.stage && candidate.round === ref.round);
  if (!step) throw new Error('a cell belongs to a step');
  return stepAt(step, ref.position);
}

/** The same identity with the same content is stored once; with other content it is two things under one name. */
function sameAgain(stored: EntryBody, incoming: IncomingPull): Result<'already'> {
  const same =
    stored.kind === 'pull' &&
    stored.pull.cell.jointRef === incoming.jointRef &&
    (incoming.position === undefined || stored.pull.cell.position === incoming.position) &&
    stored.pull.takenAt === incoming.takenAt &&
    canonical(stored.pull.shown) === canonical(incoming.shown);
  if (same) return ok('already');
  return failed({
    kind: 'conflict',
    message: `Another entry is stored under the identity ${incoming.id}; give this pull one of its own.`,
    current: stored,
  });
}

function cellFor(joint: JointState, incoming: IncomingPull): Result<CellState> {
  const { position, stage, round } = incoming;
  if (position === undefined) return nextCell(joint);
  const positions = joint.cells[0]!.length;
  if (position > positions)
    return invalid('position', `${joint.ref} has no position ${position}`, `a whole number from 1 to ${positions}`);
  if (stage === undefined && round !== undefined)
    return invalid('stage', 'a round without its stage', 'the stage that the round belongs to');
  const steps = joint.steps.flatMap((step, index) =>
    (stage === undefined || step.stage === stage) && (round === undefined || step.round === round) ? [index] : [],
  );
  if (steps.length === 0) {
    return invalid(
      round === undefined ? 'stage' : 'round',
      `${joint.ref} has no stage ${stage}${round === undefined ? '' : `, round ${round}`}`,
      joint.steps.map((step) => `${step.stage}/${step.round}`).join(', '),
    );
  }
  const cells = steps.map((index) => joint.cells[index]![position - 1]!);
  return ok(cells.find((cell) => cell.need !== 'nothing') ?? cells.at(-1)!);
}

function nextCell(joint: JointState): Result<CellState> {
  const { next } = joint;
  if (!next)
    return failed({
      kind: 'conflict',
      message: `Every position of ${joint.ref} has its verdict; name the position that this pull belongs to.`,
      current: null,
    });
  const at = joint.steps.findIndex((step) => step.stage === next.stage && step.round === next.round);
  return ok(joint.cells[at]![next.position - 1]!);
}

function attemptClash(cell: CellState, incoming: IncomingPull): ReturnType<typeof failed> | undefined {
  if (incoming.attempt === undefined || incoming.attempt === cell.attemptCount + 1) return undefined;
  return failed({
    kind: 'conflict',
    message: `Position ${cell.ref.position} has got another pull meanwhile; look at it, then record this one as attempt ${cell.attemptCount + 1} or drop it.`,
    current: { cell: cell.ref, attemptCount: cell.attemptCount, last: cell.attempts.at(-1) ?? null },
  });
}

function toolFor(joint: JointState, incoming: IncomingPull): Result<Tool> {
  const { wrenchId } = incoming;
  const tool =
    wrenchId === undefined ? joint.tools.at(-1) : joint.tools.findLast(({ wrench }) => wrench.id === wrenchId);
  if (tool) return ok(tool);
  const taken = joint.tools.map(({ wrench }) => `${wrench.name} (${wrench.serial})`).join(', ');
  return invalid(
    'wrenchId',
    wrenchId === undefined
      ? `no wrench has been taken for ${joint.ref}`
      : `this wrench has not been taken for ${joint.ref}`,
    taken || 'a wrench taken for this joint first',
  );
}

/** Torque and angle at the fastener: the adapter's lever counted in, the extension's wind-up taken off. */
function readingAtFastener(incoming: IncomingPull, step: Step, tool: Tool): Result<Pull['reading']> {
  const shownNm = incoming.shownTorqueNm;
  if (shownNm < 0 && step.kind !== 'loosen')
    return invalid(
      'shownTorqueNm',
      `${shownNm} N·m is loosening, which is not judged as tightening`,
      'a torque of 0 N·m or more',
    );
  if (shownNm > tool.wrench.highestNm * BEYOND_RANGE) {
    return invalid(
      'shownTorqueNm',
      `${shownNm} N·m is far beyond ${tool.wrench.name}, which ends at ${tool.wrench.highestNm} N·m; is the unit right (lbf·in typed as lbf·ft, or lbf·ft as N·m)?`,
      `at most ${tool.wrench.highestNm * BEYOND_RANGE} N·m`,
    );
  }
  const torque = appliedTorque(shownNm, tool.wrench.leverMm, tool.adapter);
  if (!torque.ok) return torque;
  return ok({
    torqueNm: torque.value.torqueNm,
    ...(incoming.shownAngleDeg === undefined
      ? {}
      : { angleDeg: angleAtFastener(incoming.shownAngleDeg, torque.value.torqueNm, step, tool) }),
    ...(incoming.fastestDegPerS === undefined ? {} : { fastestDegPerS: incoming.fastestDegPerS }),
  });
}

/** An overload can be shown above the range; half as much again is a slip of unit or wrench. */
const BEYOND_RANGE = 1.5;

/** Where the step asks for no angle, the wrench counts from a torque of its own: its figure is kept as it is. */
function angleAtFastener(shownDeg: number, torqueNm: number, step: Step, tool: Tool): number {
  const stiffness = tool.extension?.stiffnessNmPerDeg;
  const isCountedAsTold = step.angle !== undefined || step.angleFromNm !== undefined;
  if (stiffness === undefined || !isCountedAsTold) return shownDeg;
  return shownDeg - windUpDeg(torqueNm, step.angleFromNm ?? 0, stiffness);
}

function readTrace(
  state: JobState,
  joint: JointState,
  {
    incoming,
    cell,
    tool,
    step,
  }: { readonly incoming: IncomingPull; readonly cell: CellRef; readonly tool: Tool; readonly step: Step },
  { learned }: DecisionContext,
): TraceEvidence | undefined {
  if (!incoming.trace) return undefined;
  const { content } = sheetJointOf(state, joint).joint;
  const lever = appliedTorque(1, tool.wrench.leverMm, tool.adapter);
  const factor = lever.ok ? lever.value.factor : 1;
  const elsewhere = learned?.[`${step.stage}/${step.round}`];
  return traceEvidence(incoming.trace, factor, { step, joint, cell, content, tool }, elsewhere);
}

function pullOf(
  incoming: IncomingPull,
  cell: CellRef,
  tool: Tool,
  reading: Pull['reading'],
  read: TraceEvidence | undefined,
  sha256?: Sha256,
): Pull {
  const { trace } = incoming;
  return {
    cell,
    wrenchId: tool.wrench.id,
    source: incoming.source,
    takenAt: incoming.takenAt,
    shown: incoming.shown,
    reading,
    ...(trace ? { trace: { samples: trace.timeS.length, sha256: digestOf(trace, sha256), ...kept(read) } } : {}),
  };
}

const kept = (read: TraceEvidence | undefined) => (read ? { figures: read.figures, findings: [...read.findings] } : {});

function notices(state: JobState, joint: JointState, cell: CellState, pull: Pull, now: string): readonly Reason[] {
  const { maximumAttempts } = joint.rework;
  const told: Reason[] = [];
  if (isBeforeItsTurn(joint, cell)) told.push({ code: 'notice-out-of-order' });
  if (clockDiffers(pull.takenAt, state.openedAt, now)) told.push({ code: 'notice-device-clock' });
  if (cell.attemptsCounted >= maximumAttempts)
    told.push({ code: 'notice-beyond-attempts', value: cell.attemptsCounted + 1, limit: maximumAttempts });
  return told;
}

/** A stage begins when the round before is done at every position. */
function isBeforeItsTurn(joint: JointState, cell: CellState): boolean {
  const { next } = joint;
  if (!next) return false;
  const turn = (ref: CellRef) => joint.steps.findIndex((step) => step.stage === ref.stage && step.round === ref.round);
  return turn(cell.ref) > turn(next);
}

const CLOCK_TOLERANCE_MS = 5 * 60_000;

/** A device's time before the job or ahead of now shows a clock that was not set. */
function clockDiffers(takenAt: string, openedAt: string, now: string): boolean {
  const takenMs = Date.parse(takenAt);
  return takenMs < Date.parse(openedAt) - CLOCK_TOLERANCE_MS || takenMs > Date.parse(now) + CLOCK_TOLERANCE_MS;
}

/** The cell that a reference names, or a refusal of the field. */
export function cellNamed(state: JobState, ref: CellRef, field: string): Result<CellState> {
  const cell = findCell(state, ref);
  if (cell) return ok(cell);
  return invalid(
    field,
    `this job has no ${ref.jointRef}, stage ${ref.stage}, round ${ref.round}, position ${ref.position}`,
    'a cell of this job',
  );
}
