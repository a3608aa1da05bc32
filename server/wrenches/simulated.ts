import { failed, invalid, ok, type Result } from '@clampwright/core/failure';
import { aimOf, stepAt } from '@clampwright/core/procedure';
import type { CellState, IncomingPull, JobState, JointState } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import {
  type Aim,
  type Fault,
  type JointModel,
  looseFastener,
  modelFor,
  type SimulatedPull,
  simulatePull,
  tightenedFastener,
} from '@clampwright/intake/simulated';

/** What the simulated wrench is asked to do. */
export interface SimulatedTask {
  readonly jointRef: string;
  readonly position?: number | undefined;
  readonly fault: Fault;
}

/** A pull, and what its display showed of the angle meanwhile. */
interface MadePull {
  readonly incoming: IncomingPull;
  readonly countedDeg: readonly number[];
}

/** The pull that the simulated wrench makes on the cell whose turn it is, or on the position that is named. */
export function simulatedPull(
  state: JobState,
  task: SimulatedTask,
  stamp: { readonly id: string; readonly now: string },
): Result<MadePull> {
  const joint = state.joints.find(({ ref }) => ref === task.jointRef);
  if (!joint)
    return invalid('jointRef', `this job has no joint ${task.jointRef}`, state.joints.map(({ ref }) => ref).join(', '));
  const tool = simulatedTool(joint);
  if (!tool.ok) return tool;
  const cell = cellFor(joint, task.position);
  if (!cell.ok) return cell;
  const pull = pullOn(state, joint, cell.value, tool.value, task.fault);
  if (!pull.ok) return pull;
  return ok({ incoming: incomingFrom(cell.value, tool.value, pull.value, stamp), countedDeg: pull.value.countedDeg });
}

function simulatedTool({ ref, tools }: JointState): Result<Tool> {
  const tool = tools.at(-1);
  if (tool?.wrench.connection.kind === 'simulated') return ok(tool);
  const message = tool
    ? `The wrench taken for ${ref} is a real one: ${tool.wrench.name}.`
    : `No wrench has been taken for ${ref}.`;
  return failed({
    kind: 'conflict',
    message: `${message} Take a simulated wrench for it first.`,
    current: tool ?? null,
  });
}

function cellFor({ ref, cells, next }: JointState, position: number | undefined): Result<CellState> {
  const column = cells.flatMap((row) => row[(position ?? next?.position ?? 1) - 1] ?? []);
  const cell = column.find(({ need }) => need !== 'nothing') ?? (position === undefined ? undefined : column.at(-1));
  if (cell) return ok(cell);
  if (position === undefined)
    return failed({
      kind: 'conflict',
      message: `Every position of ${ref} has its verdict; name the one to pull again.`,
      current: null,
    });
  return invalid('position', `${ref} has no position ${position}`, `a whole number from 1 to ${cells[0]?.length ?? 0}`);
}

function pullOn(state: JobState, joint: JointState, cell: CellState, tool: Tool, fault: Fault): Result<SimulatedPull> {
  const content = state.sheet.joints.find(({ ref }) => ref === joint.ref)?.joint.content;
  const step = joint.steps.find(({ stage, round }) => stage === cell.ref.stage && round === cell.ref.round);
  if (!content || !step) throw new Error('a cell belongs to a step of a joint on the sheet');
  const model = modelFor(content, tool);
  if (!model.ok) return model;
  const aim = aimOf(stepAt(step, cell.ref.position), tool, cell.carriedDeg);
  if (!aim.ok) return aim;
  const { torque, angle, angleFromNm } = aim.value;
  const counted: Pick<Aim, 'angleFromNm' | 'speedLimitDegPerS'> = {
    angleFromNm,
    speedLimitDegPerS: step.speedLimitDegPerS,
  };
  const target: Aim = angle
    ? { ...counted, angleDeg: angle.turnDeg }
    : { ...counted, torqueNm: torque?.settingNm ?? 0 };
  const fastener = fastenerAt(state, joint, cell, model.value.joint);
  return ok(
    simulatePull({
      model: model.value,
      aim: target,
      fault,
      seed: seedOf(state.jobId, [cell.ref.position, state.lastSeq]),
      fastener,
    }),
  );
}

/** The fastener as the pulls that stand have left it; after rework it is loose, and so another one. */
function fastenerAt(state: JobState, joint: JointState, { ref }: CellState, model: JointModel) {
  const attempts = joint.cells
    .flatMap((row) => row[ref.position - 1]?.attempts ?? [])
    .toSorted((a, b) => a.seq - b.seq);
  const undone = attempts.filter(({ standing }) => standing === 'undone').length;
  const seed = seedOf(state.jobId + joint.ref, [ref.position, undone]);
  const last = attempts.findLast(({ standing }) => standing === 'stands');
  return last ? tightenedFastener(model, seed, last.torqueNm) : looseFastener(model, seed);
}

/** The same place in the same job always has the same chance. */
function seedOf(text: string, numbers: readonly number[]): number {
  let seed = 7;
  for (const letter of `${text}/${numbers.join('/')}`) seed = (seed * 31 + letter.charCodeAt(0)) % 2_147_483_647;
  return seed;
}

function incomingFrom(
  { ref, attemptCount }: CellState,
  { wrench }: Tool,
  pull: SimulatedPull,
  { id, now }: { readonly id: string; readonly now: string },
): IncomingPull {
  const showsAngle = wrench.angleResolutionDeg !== undefined;
  return {
    kind: 'record-pull',
    id,
    jointRef: ref.jointRef,
    position: ref.position,
    stage: ref.stage,
    round: ref.round,
    attempt: attemptCount + 1,
    wrenchId: wrench.id,
    source: { kind: 'simulated' },
    takenAt: now,
    shown: {
      torque: { text: String(pull.shownTorqueNm), unit: 'N·m' },
      ...(showsAngle ? { angle: { text: String(pull.shownAngleDeg), unit: 'deg' } } : {}),
    },
    shownTorqueNm: pull.shownTorqueNm,
    ...(showsAngle ? { shownAngleDeg: pull.shownAngleDeg, fastestDegPerS: pull.fastestDegPerS } : {}),
    trace: pull.trace,
  };
}
