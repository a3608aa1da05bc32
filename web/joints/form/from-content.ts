import type { JointContent } from '@clampwright/core/joint';
import type { Layout } from '@clampwright/core/layout';
import type { Round, Stage } from '@clampwright/core/procedure';
import { convertTorque, type Language, type TorqueUnit } from '@clampwright/core/quantity';
import { neighboursForm } from '../plan/neighbours-form.ts';
import { asTyped } from './as-typed.ts';
import { BLANK_JOINT, blankStage } from './blank.ts';
import type { JointForm, LayoutForm, PrevailingForm, RoundForm, StageForm } from './joint-form.ts';
import { angleWindowForm, torqueWindowForm } from './show.ts';

/** A kept joint as it stands in the editor, figures in the language on screen. */
export function formOf(content: JointContent, language: Language): JointForm {
  const { fastener, decisionRule, retorque } = content;
  return {
    name: content.name,
    fastener: {
      ...fastener,
      propertyClass: fastener.propertyClass ?? '',
      ownBolt: fastener.ownBolt,
      ownMaterial: fastener.ownMaterial,
      prevailing: prevailingForm(content, language),
      stiffness: fastener.stiffnessNPerMm === undefined ? '' : asTyped(fastener.stiffnessNPerMm, language),
    },
    layout: layoutForm(content.layout, language),
    stages: content.stages.map((stage, index) => stageForm(stage, index + 1, content.torqueUnit, language)),
    numbersSource: { derivation: undefined, ...content.numbersSource },
    cautions: content.cautions.map((text, index) => ({ key: index + 1, text })),
    rework: { ...content.rework, maximumAttempts: asTyped(content.rework.maximumAttempts, language) },
    decisionRule: {
      kind: decisionRule.kind,
      factor: decisionRule.kind === 'guarded' ? asTyped(decisionRule.factor, language) : '',
      maximumPercent: decisionRule.kind === 'risk' ? asTyped(decisionRule.maximum * 100, language) : '',
    },
    neighbours: content.neighbours ? neighboursForm(content.neighbours, language) : BLANK_JOINT.neighbours,
    consequenceClass: content.consequenceClass ?? 'none',
    torqueUnit: content.torqueUnit,
    retorque: retorque
      ? { used: true, after: asTyped(retorque.after, language), unit: retorque.unit, note: retorque.note }
      : BLANK_JOINT.retorque,
  };
}

function prevailingForm(
  { fastener: { prevailing }, torqueUnit: unit }: JointContent,
  language: Language,
): PrevailingForm {
  if (!prevailing) return { by: 'none', highest: '', unit };
  return { by: prevailing.by, highest: asTyped(convertTorque(prevailing.highestNm, 'N·m', unit), language), unit };
}

function layoutForm(layout: Layout, language: Language): LayoutForm {
  const text = (value: number) => asTyped(value, language);
  const blank = { ...BLANK_JOINT.layout, kind: layout.kind };
  switch (layout.kind) {
    case 'circle':
      return {
        ...blank,
        count: text(layout.count),
        diameter: text(layout.diameterMm),
        firstAngle: text(layout.firstAngleDeg),
        direction: layout.direction,
      };
    case 'rectangle':
      return {
        ...blank,
        rows: text(layout.rows),
        columns: text(layout.columns),
        pitchX: text(layout.pitchXMm),
        pitchY: text(layout.pitchYMm),
        edgeOnly: layout.edgeOnly,
        staggered: layout.staggered ?? false,
        missing: (layout.missing ?? []).join(' '),
      };
    case 'line':
      return { ...blank, count: text(layout.count), pitch: text(layout.pitchMm) };
    case 'points':
      return {
        ...blank,
        points: layout.points.map((point, index) => ({ key: index + 1, x: text(point.xMm), y: text(point.yMm) })),
      };
  }
}

function stageForm(stage: Stage, key: number, unit: TorqueUnit, language: Language): StageForm {
  const { torque, angle, angleFromNm, speedLimitDegPerS } = stage;
  return {
    ...blankStage(key, stage.kind, unit),
    torqueUsed: torque !== undefined,
    angleUsed: angle !== undefined,
    ...(torque ? { torque: torqueWindowForm(torque, language) } : {}),
    ...(angle ? { angle: angleWindowForm(angle, language) } : {}),
    angleFrom: angleFromNm === undefined ? '' : asTyped(convertTorque(angleFromNm, 'N·m', unit), language),
    speedLimit: speedLimitDegPerS === undefined ? '' : asTyped(speedLimitDegPerS, language),
    rounds: stage.rounds.map((round, index) => roundForm(round, index + 1, language)),
  };
}

const roundForm = ({ share, order, positionShares, closing }: Round, key: number, language: Language): RoundForm => ({
  key,
  sharePercent: asTyped(share * 100, language),
  method: order.method,
  positions: order.method === 'own' ? order.positions : [],
  positionShares,
  isClosing: closing !== undefined,
  stillDeg: closing ? asTyped(closing.stillDeg, language) : '',
});
