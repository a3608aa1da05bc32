import type { OwnBolt } from '@clampwright/core/fastener';
import { convertTorque, type Language, type TorqueUnit } from '@clampwright/core/quantity';
import { asTyped } from '../form/as-typed.ts';
import { blankStage, blankWindow, stageOfKind } from '../form/blank.ts';
import type { JointForm, StageForm, WindowForm } from '../form/joint-form.ts';
import type { Brought, StageBrought, WindowBrought } from './brought.ts';

interface Filled {
  readonly form: JointForm;
  /** The stage that was filled in, from 0; undefined where nothing was brought that can be. */
  readonly stageIndex: number | undefined;
}

/**
 * The joint with the stage filled in that a calculation brought: the first of its kind, the blank one of a new joint, or
 * one more at the end. Tolerances that nobody told stay empty.
 */
export function withStage(form: JointForm, brought: Brought, bolts: readonly OwnBolt[], language: Language): Filled {
  const { stage, thread, propertyClass, sourceText } = brought;
  if (!stage) return { form, stageIndex: undefined };
  const { stages, stageIndex } = stagesWith(form, stage, language);
  return {
    form: {
      ...form,
      fastener: {
        ...form.fastener,
        thread,
        propertyClass: propertyClass ?? form.fastener.propertyClass,
        ownBolt: bolts.find(({ name }) => name === thread),
        ownMaterial: propertyClass === undefined ? form.fastener.ownMaterial : undefined,
      },
      stages,
      numbersSource: { kind: 'derived', text: sourceText ?? '', derivation: undefined },
    },
    stageIndex,
  };
}

function stagesWith({ stages, torqueUnit }: JointForm, brought: StageBrought, language: Language) {
  const alike = stages.findIndex(({ kind }) => kind === brought.kind);
  const place = alike >= 0 ? alike : stages.findIndex((stage) => stages.length === 1 && isBlank(stage));
  const stageIndex = place >= 0 ? place : stages.length;
  const nextKey = Math.max(0, ...stages.map(({ key }) => key)) + 1;
  const before = stages[stageIndex] ?? blankStage(nextKey, brought.kind, torqueUnit);
  const filled = filledIn(stageOfKind(before, brought.kind), brought, torqueUnit, language);
  return { stages: [...stages.slice(0, stageIndex), filled, ...stages.slice(stageIndex + 1)], stageIndex };
}

const isBlank = ({ torque, angle }: StageForm): boolean =>
  [torque, angle].every(({ target, lower, upper }) => target === '' && lower === '' && upper === '');

function filledIn(stage: StageForm, brought: StageBrought, unit: TorqueUnit, language: Language): StageForm {
  const torqueText = (torqueNm: number) => asTyped(inUnit(torqueNm, unit), language);
  const { torque, angle, angleFromNm } = brought;
  return {
    ...stage,
    torque: torque ? windowOf(torque, unit, torqueText, language) : stage.torque,
    angle: angle ? windowOf(angle, 'deg', (angleDeg) => asTyped(angleDeg, language), language) : stage.angle,
    angleFrom: angleFromNm === undefined ? stage.angleFrom : torqueText(angleFromNm),
    angleFromUnit: angleFromNm === undefined ? stage.angleFromUnit : unit,
  };
}

/** Four digits are more than a torque has, and hide what conversion leaves behind. */
const inUnit = (torqueNm: number, unit: TorqueUnit): number =>
  unit === 'N·m' ? torqueNm : Number(convertTorque(torqueNm, 'N·m', unit).toPrecision(4));

function windowOf(
  { target, percent, lower, upper }: WindowBrought,
  unit: string,
  said: (figure: number) => string,
  language: Language,
): WindowForm {
  const text = (figure: number | undefined) => (figure === undefined ? '' : said(figure));
  return {
    ...blankWindow(unit),
    form: lower === undefined ? 'percent' : 'limits',
    target: text(target),
    percent: percent === undefined ? '' : asTyped(percent, language),
    lower: text(lower),
    upper: text(upper),
  };
}
