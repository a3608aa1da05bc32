import { say } from '../language/say.ts';
import { sayStage, sayVerdict } from '../language/words.ts';
import type { Step } from '../procedure/step.ts';
import type { Language } from '../quantity/language.ts';
import { showAngle, showTorqueFigure } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import { isLeftOut } from './closing.ts';
import type { Cell, Column, Row, RowGroup, TableBlock } from './document.ts';
import { type EntryOf, type RecordFacts, sayJoint, shortTime, tagOfPerson, toolOfPull } from './document-facts.ts';
import { remarks } from './document-remarks.ts';
import type { JobJoint } from './entry.ts';
import type { CellState, JointState } from './state.ts';
import { attemptsOf, type TracedAttempt } from './traced-attempt.ts';

/** What all rows of a joint's table have in common. */
interface Frame {
  readonly facts: RecordFacts;
  readonly unit: TorqueUnit;
  /** Where every pull of the joint came from; undefined where they came from several sources. */
  readonly commonSource: string | undefined;
}

/** The table of every attempt on a joint: what stands, and quietly also what was set aside, moved or undone. */
export function attemptTable(facts: RecordFacts, joint: JobJoint, state: JointState): TableBlock {
  const { language } = facts;
  const sources = new Set(
    state.cells.flat().flatMap((cell) => attemptsOf(facts, cell).map(({ pull }) => sayPullSource(pull, language))),
  );
  const commonSource = sources.size === 1 ? [...sources][0] : undefined;
  const frame: Frame = { facts, unit: joint.joint.content.torqueUnit, commonSource };
  const caption = `${sayJoint(joint)}: ${say(language, 'record.attempts')}`;
  return {
    kind: 'table',
    name: 'attempts',
    caption: commonSource === undefined ? caption : `${caption}, ${commonSource}`,
    columns: columns(frame),
    groups: state.steps.map((step, index) => stepGroup(frame, step, state.cells[index]!)),
  };
}

const sayPullSource = ({ body }: EntryOf<'pull'>, language: Language): string =>
  say(language, `source.${body.pull.source.kind}`);

function columns({ facts: { language }, unit }: Frame): readonly Column[] {
  const left = (title: string): Column => ({ title, align: 'left' });
  const right = (title: string): Column => ({ title, align: 'right' });
  return [
    right(say(language, 'record.position')),
    right(say(language, 'record.attempt')),
    left(say(language, 'record.time')),
    right(say(language, 'record.shown')),
    right(say(language, 'record.torque-in', { unit })),
    right(say(language, 'record.uncertainty-in')),
    right(say(language, 'record.angle')),
    left(say(language, 'record.verdict')),
    left(say(language, 'record.hands')),
    { ...left(say(language, 'record.remarks')), place: 'below' },
  ];
}

function stepGroup(frame: Frame, step: Step, cells: readonly CellState[]): RowGroup {
  const { language } = frame.facts;
  const title = say(language, 'record.step', {
    stage: step.stage,
    round: step.round,
    kind: sayStage(step.kind, language),
  });
  const untouched = cells
    .filter((cell) => cell.verdict === undefined && !isLeftOut(cell))
    .map(({ ref }) => ref.position);
  const waiting = untouched.length === 0 ? '' : ` (${say(language, 'verdict.none')}: ${spans(untouched)})`;
  return { title: `${title}${waiting}`, rows: cells.flatMap((cell) => cellRows(frame, cell)) };
}

/** Positions in ascending order, runs drawn together: `1, 4–9, 12`. */
export function spans(positions: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const position of positions) {
    const run = runs.at(-1);
    if (run && run[1] === position - 1) run[1] = position;
    else runs.push([position, position]);
  }
  return runs.map(([first, last]) => (first === last ? `${first}` : `${first}–${last}`)).join(', ');
}

const cellRows = (frame: Frame, cell: CellState): readonly Row[] =>
  attemptsOf(frame.facts, cell).map((attempt, index) => attemptRow(frame, cell, attempt, index + 1));

function attemptRow(frame: Frame, cell: CellState, traced: TracedAttempt, number: number): Row {
  const { facts, unit, commonSource } = frame;
  const { language } = facts;
  const { attempt, pull, judgement } = traced;
  const { reading } = pull.body.pull;
  const uncertainty = judgement.expandedUncertaintyNm;
  const source = commonSource === undefined ? [`(${sayPullSource(pull, language)})`] : [];
  const cells: readonly Cell[] = [
    { text: String(cell.ref.position) },
    { text: String(number) },
    { text: timeOf(facts, pull) },
    { text: shownOf(pull) },
    { text: showTorqueFigure(reading.torqueNm, unit, language) },
    { text: uncertainty === undefined ? '–' : showTorqueFigure(uncertainty, unit, language) },
    { text: reading.angleDeg === undefined ? '–' : showAngle(reading.angleDeg, language) },
    { text: sayVerdict(attempt.verdict, language), verdict: attempt.verdict },
    { text: `${toolOfPull(facts, pull)?.tag ?? '–'}\u00a0${tagOfPerson(facts, pull.by)}` },
    { text: [...remarks(facts, cell, traced, unit), ...source].join(' ') },
  ];
  return { cells, voice: attempt.standing === 'stands' ? 'plain' : 'quiet' };
}

/** Time of arrival; below it the device's own where the two are more than a second apart. */
function timeOf({ language }: RecordFacts, { at, body }: EntryOf<'pull'>): string {
  const { takenAt } = body.pull;
  const apartMs = Math.abs(new Date(at).getTime() - new Date(takenAt).getTime());
  return apartMs > 1000
    ? `${shortTime(at)}\n${say(language, 'record.device-time', { time: shortTime(takenAt) })}`
    : shortTime(at);
}

/** What the wrench showed, as it showed it. */
function shownOf({ body }: EntryOf<'pull'>): string {
  const { torque, angle } = body.pull.shown;
  const figure = ({ text, unit }: typeof torque) => (unit === 'deg' ? `${text}°` : `${text}\u00a0${unit}`);
  return angle ? `${figure(torque)}\u00a0/\u00a0${figure(angle)}` : figure(torque);
}
