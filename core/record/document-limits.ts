import { say } from '../language/say.ts';
import { sayStage } from '../language/words.ts';
import type { Stage, TypedWindow } from '../procedure/procedure.ts';
import type { Step, TorqueLimits } from '../procedure/step.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showAngle, showTorque } from '../quantity/show-quantity.ts';
import type { Column, Row, TableBlock } from './document.ts';
import type { JobJoint } from './entry.ts';

/** The windows that each round was judged with, beside them as the lead typed them. */
export function limitTable({ ref, joint }: JobJoint, steps: readonly Step[], language: Language): TableBlock {
  const { stages, torqueUnit } = joint.content;
  const rows = steps.flatMap((step) => stepRows(step, stages[step.stage - 1]!, torqueUnit, language));
  return {
    kind: 'table',
    name: 'limits',
    caption: `${ref}: ${say(language, 'record.limits')}`,
    columns: columns(language),
    groups: [{ title: '', rows }],
  };
}

const columns = (language: Language): readonly Column[] => [
  { title: say(language, 'record.stage'), align: 'left' },
  { title: say(language, 'record.round'), align: 'left' },
  { title: say(language, 'record.stage-kind'), align: 'left' },
  { title: say(language, 'record.lower-limit'), align: 'right' },
  { title: say(language, 'record.target'), align: 'right' },
  { title: say(language, 'record.upper-limit'), align: 'right' },
  { title: say(language, 'record.as-typed'), align: 'left' },
  { title: say(language, 'record.order'), align: 'left', place: 'below' },
];

type Unit = JobJoint['joint']['content']['torqueUnit'];

/** What a window says: lower limit, target, upper limit, as typed. */
type Figures = readonly [string, string, string, string];

function stepRows(step: Step, stage: Stage, unit: Unit, language: Language): readonly Row[] {
  const windows = [torqueFigures(step, stage, unit, language), angleFigures(step, stage, language)].filter(
    (figures) => figures !== undefined,
  );
  const told = windows.length === 0 ? [NO_WINDOW] : windows;
  const kind = [String(step.stage), String(step.round), sayStage(step.kind, language)];
  const order = [sayOrder(step, stage, language), conditions(step, stage, unit, language).join(' ')].join('\n').trim();
  return told.map((figures, index) =>
    row([...(index === 0 ? kind : ['', '', '']), ...figures, index === told.length - 1 ? order : '']),
  );
}

const NO_WINDOW: Figures = ['–', '–', '–', '–'];

const row = (texts: readonly string[]): Row => ({ cells: texts.map((text) => ({ text })), voice: 'plain' });

function torqueFigures({ torque, torques }: Step, stage: Stage, unit: Unit, language: Language): Figures | undefined {
  if (!torque || !stage.torque) return undefined;
  const show = (torqueNm: number) => showTorque(torqueNm, unit, language);
  if (torques) {
    const span = (limit: keyof TorqueLimits) => {
      const all = torques.map((one) => one[limit]);
      return `${show(Math.min(...all))} – ${show(Math.max(...all))}`;
    };
    return [span('lowerNm'), span('targetNm'), span('upperNm'), sayTyped(stage.torque.typed, language)];
  }
  return [show(torque.lowerNm), show(torque.targetNm), show(torque.upperNm), sayTyped(stage.torque.typed, language)];
}

function angleFigures({ angle }: Step, stage: Stage, language: Language): Figures | undefined {
  if (!angle || !stage.angle) return undefined;
  const show = (angleDeg: number) => showAngle(angleDeg, language);
  return [show(angle.lowerDeg), show(angle.targetDeg), show(angle.upperDeg), sayTyped(stage.angle.typed, language)];
}

/** A window in the lead's own figures and unit, on one line. */
export const sayTyped = (typed: TypedWindow, language: Language): string =>
  typedText(typed, language)
    .replaceAll(' ', '\u00a0')
    .replace(/\u00a0deg\b/, '°');

function typedText(typed: TypedWindow, language: Language): string {
  switch (typed.form) {
    case 'percent':
      return say(language, 'record.typed-percent', typed);
    case 'plus-minus':
      return say(language, 'record.typed-plus-minus', typed);
    case 'limits':
      return say(language, 'record.typed-limits', typed);
  }
}

function sayOrder(step: Step, stage: Stage, language: Language): string {
  const method = stage.rounds[step.round - 1]!.order.method;
  return `${say(language, `order.${method}`)}: ${step.order.join(' ')}`;
}

function conditions(step: Step, stage: Stage, unit: Unit, language: Language): readonly string[] {
  const { share } = stage.rounds[step.round - 1]!;
  const { angleFromNm, speedLimitDegPerS, torques, closing } = step;
  return [
    ...(torques ? [say(language, 'plan.by-position')] : []),
    ...(closing ? [say(language, 'closing.limit', { limit: showAngle(closing.stillDeg, language) })] : []),
    ...(share === 1 || !step.torque
      ? []
      : [say(language, 'record.of-share', { percent: showNumber(Math.round(share * 1000) / 10, language) })]),
    ...(angleFromNm === undefined
      ? []
      : [say(language, 'record.angle-from', { torque: showTorque(angleFromNm, unit, language) })]),
    ...(speedLimitDegPerS === undefined
      ? []
      : [say(language, 'record.speed-limit', { speed: `${showAngle(speedLimitDegPerS, language)}/s` })]),
  ];
}
