import { say } from '../language/say.ts';
import { sayStage } from '../language/words.ts';
import type { Stage, TypedWindow } from '../procedure/procedure.ts';
import type { Step } from '../procedure/step.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showAngle, showTorque } from '../quantity/show-quantity.ts';
import type { Row, TableBlock } from './document.ts';
import type { JobJoint } from './entry.ts';

/** The windows that each round was judged with, beside them as the lead typed them. */
export function limitTable({ ref, joint }: JobJoint, steps: readonly Step[], language: Language): TableBlock {
  const { stages, torqueUnit } = joint.content;
  const titles = ['stage', 'round', 'stage-kind', 'lower-limit', 'target', 'upper-limit', 'as-typed', 'order'] as const;
  const isFigure = (title: (typeof titles)[number]) =>
    title === 'lower-limit' || title === 'target' || title === 'upper-limit';
  return {
    kind: 'table',
    name: 'limits',
    caption: `${ref}: ${say(language, 'record.limits')}`,
    columns: titles.map((title) => column(title, language)),
    groups: [
      { title: '', rows: steps.flatMap((step) => stepRows(step, stages[step.stage - 1]!, torqueUnit, language)) },
    ],
  };
}

type Unit = JobJoint['joint']['content']['torqueUnit'];

/** What a window says: lower limit, target, upper limit, as typed. */
type Figures = readonly [string, string, string, string];

function stepRows(step: Step, stage: Stage, unit: Unit, language: Language): readonly Row[] {
  const windows = [torqueFigures(step, stage, unit, language), angleFigures(step, stage, language)].filter(
    (figures) => figures !== undefined,
  );
  const [first = NO_WINDOW, ...others] = windows;
  const order = [sayOrder(step, stage, language), ...conditions(step, stage, unit, language)].join('\n');
  return [
    row([String(step.stage), String(step.round), sayStage(step.kind, language), ...first, order]),
    ...others.map((figures) => row(['', '', '', ...figures, ''])),
  ];
}

const NO_WINDOW: Figures = ['–', '–', '–', '–'];

const row = (texts: readonly string[]): Row => ({ cells: texts.map((text) => ({ text })), voice: 'plain' });

function torqueFigures({ torque }: Step, stage: Stage, unit: Unit, language: Language): Figures | undefined {
  if (!torque || !stage.torque) return undefined;
  const show = (torqueNm: number) => showTorque(torqueNm, unit, language);
  return [show(torque.lowerNm), show(torque.targetNm), show(torque.upperNm), sayTyped(stage.torque.typed, language)];
}

function angleFigures({ angle }: Step, stage: Stage, language: Language): Figures | undefined {
  if (!angle || !stage.angle) return undefined;
  const show = (angleDeg: number) => showAngle(angleDeg, language);
  return [show(angle.lowerDeg), show(angle.targetDeg), show(angle.upperDeg), sayTyped(stage.angle.typed, language)];
}

/** A window in the lead's own figures and unit. */
export const sayTyped = (typed: TypedWindow, language: Language): string =>
  typedText(typed, language).replaceAll(' ', '\u00a0');

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
  const { angleFromNm, speedLimitDegPerS } = step;
  return [
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
