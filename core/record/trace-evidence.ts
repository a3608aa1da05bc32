import type { JointContent } from '../joint/joint.ts';
import type { Step } from '../procedure/step.ts';
import { analyseTrace } from '../trace/analyse.ts';
import { type Expectation, learn, type TraceFigures } from '../trace/expectation.ts';
import { extremesOf } from '../trace/extremes.ts';
import { learnable } from '../trace/figures.ts';
import type { Finding } from '../trace/finding.ts';
import { expectationOf, expectationOfWindows } from '../trace/from-mechanics.ts';
import { traceOptionsSchema } from '../trace/judged-by.ts';
import { isLoosening } from '../trace/loosening.ts';
import { type Reason, traceReason, type Verdict } from '../verdict/verdict.ts';
import type { Tool } from '../wrench/wrench.ts';
import type { Trace } from './command.ts';
import { curveMechanics } from './curve-mechanics.ts';
import type { CellRef, Pull } from './entry.ts';
import type { JointState } from './state.ts';

/** What of a trace is kept in the entry of its pull. */
export interface TraceEvidence {
  readonly figures: TraceFigures;
  readonly findings: readonly Finding[];
}

/** Fewer samples are no curve. */
const FEWEST_SAMPLES = 20;

/** Torque that winds the wrong way, on a step that tightens. */
export const isWrongWay = (trace: Trace, step: Step): boolean =>
  step.kind !== 'loosen' && isLoosening(extremesOf(trace));

/**
 * Reads the trace of a pull at the fastener: adapter counted in, wind-up of the extension taken off, held to what the
 * joint's accepted traces on this step have taught, or else to its mechanics, or else to its windows.
 *
 * @param factor  torque at the fastener over torque shown
 * @param learned figures of accepted traces of the same joint revision and step in other jobs
 */
export function traceEvidence(
  trace: Trace,
  factor: number,
  { step, joint, cell, content, tool }: Placed,
  learned: readonly TraceFigures[] = [],
): TraceEvidence | undefined {
  if (trace.timeS.length < FEWEST_SAMPLES || step.kind === 'loosen') return undefined;
  const expected = learn([...learned, ...acceptedHere(joint, cell)]) ?? expectedOf(content, step, cell);
  const options = traceOptionsSchema.parse({
    startsAtNm: standingTorqueNm(joint, cell),
    // a bolt that is new each time and turned by angle is as a rule meant to yield
    intendsYield: step.angle !== undefined && content.fastener.reuse === 'new-each-time',
    ...(content.fastener.prevailing ? { prevailingUpToNm: content.fastener.prevailing.highestNm } : {}),
    ...(step.speedLimitDegPerS === undefined ? {} : { speedLimitDegPerS: step.speedLimitDegPerS }),
    ...(expected ? { expected } : {}),
  });
  const analysis = analyseTrace(atFastener(trace, factor, tool), options, windowOf(step));
  if (analysis.kind === 'loosening') return undefined;
  return { figures: learnable(analysis.figures), findings: analysis.findings };
}

/** Where a pull goes, and with what it was made. */
export interface Placed {
  readonly step: Step;
  readonly joint: JointState;
  readonly cell: CellRef;
  readonly content: JointContent;
  readonly tool: Tool;
}

/** Samples as the fastener got them: the adapter counted in, the wind-up of the extension taken off. */
export function atFastener({ angleDeg, torqueNm, timeS }: Trace, factor: number, { extension }: Tool) {
  const torque = Float64Array.from(torqueNm, (nm) => nm * factor);
  const stiffness = extension?.stiffnessNmPerDeg;
  const windUp = (i: number): number => (stiffness === undefined ? 0 : torque[i]! / stiffness);
  return {
    angleDeg: Float64Array.from(angleDeg, (deg, i) => deg - windUp(i)),
    torqueNm: torque,
    timeS: Float64Array.from(timeS),
  };
}

/** What the pull was to reach, as a trace is held to it. */
export const windowOf = ({ torque, angle, angleFromNm }: Step) => ({
  ...(torque ? { lowerNm: torque.lowerNm, targetNm: torque.targetNm, upperNm: torque.upperNm } : {}),
  ...(angle ? { lowerDeg: angle.lowerDeg, targetDeg: angle.targetDeg, upperDeg: angle.upperDeg } : {}),
  ...(angleFromNm === undefined ? {} : { angleFromNm }),
});

/** What the joint's mechanics, or else the windows of a step, tell of the curve of a position before anything was learned. */
export function expectedOf(
  content: JointContent,
  step: Step,
  { position }: Pick<CellRef, 'position'>,
): Expectation | undefined {
  const mechanics = curveMechanics(content, position);
  if (mechanics) return expectationOf(mechanics);
  const { torque, angle, angleFromNm } = step;
  if (!torque || !angle) return undefined;
  return expectationOfWindows(torque.targetNm, angleFromNm ?? 0, angle.targetDeg);
}

/** Torque to which the fastener was tightened by the pulls that stand, N·m. */
function standingTorqueNm({ cells }: JointState, { position }: CellRef): number {
  const attempts = cells.flatMap((row) => row[position - 1]?.attempts ?? []);
  const standing = attempts.filter(({ standing }) => standing === 'stands').toSorted((a, b) => a.seq - b.seq);
  return Math.max(0, standing.at(-1)?.torqueNm ?? 0);
}

/** Figures of the traces that were accepted on each step of a joint, by `stage/round`: what other jobs learn from. */
export const acceptedFigures = (joint: JointState): Readonly<Record<string, readonly TraceFigures[]>> =>
  Object.fromEntries(joint.steps.map((step) => [`${step.stage}/${step.round}`, acceptedHere(joint, step)]));

/** Figures of the traces on this step that were accepted, first attempts as well as later ones. */
function acceptedHere(
  { cells }: JointState,
  { stage, round }: Pick<CellRef, 'stage' | 'round'>,
): readonly TraceFigures[] {
  const row = cells.find(([first]) => first?.ref.stage === stage && first.ref.round === round) ?? [];
  return row
    .flatMap(({ attempts }) => attempts)
    .flatMap(({ verdict, standing, figures }) =>
      figures && verdict === 'within' && (standing === 'stands' || standing === 'undone') ? [figures] : [],
    );
}

/** What says something of the friction or the hand, and nothing against the pull. */
const ONLY_TOLD: readonly Finding['kind'][] = ['stick-slip'];

/**
 * What the trace adds to a judgement: a finding makes `within` doubtful, and makes nothing better. What the limits
 * judge already, torque and angle beyond the target and speed, is left to them.
 */
export function doubted<T extends { readonly verdict: Verdict; readonly reasons: readonly Reason[] }>(
  judged: T,
  step: Step,
  trace: Pull['trace'],
): Pick<T, 'verdict'> & { reasons: Reason[] } {
  const told = (trace?.findings ?? []).filter(({ kind }) => counts(kind, step));
  const isDoubtful = told.some(({ kind }) => !ONLY_TOLD.includes(kind));
  const verdict: T['verdict'] = isDoubtful && judged.verdict === 'within' ? 'doubtful' : judged.verdict;
  return { verdict, reasons: [...judged.reasons, ...told.map(reasonOf)] };
}

function counts(kind: Finding['kind'], step: Step): boolean {
  if (kind === 'over-run') return false;
  if (kind === 'pulled-too-fast') return step.angle !== undefined && step.speedLimitDegPerS === undefined;
  return kind !== 'already-tight' || step.kind !== 'check';
}

const reasonOf = ({ kind, quantity, value, limit }: Finding): Reason => ({
  code: traceReason(kind),
  quantity,
  value,
  limit,
});
