import {
  checkJoint,
  type FastenerSpec,
  type JointContent,
  type JointWarning,
  type Neighbours,
  warnJoint,
} from '@clampwright/core/joint';
import type { Layout } from '@clampwright/core/layout';
import type { Stage } from '@clampwright/core/procedure';
import type { Language } from '@clampwright/core/quantity';
import type { Fault } from '../../forms/fault.ts';
import { type Reader, readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import { readNeighbours } from '../plan/read-neighbours.ts';
import type { JointForm, PrevailingForm } from './joint-form.ts';
import { faultOfCheck } from './mend.ts';
import { readLayout } from './read-layout.ts';
import { readStage } from './read-stage.ts';

/** What a form says: the joint, if it can be kept as a draft, and all that must be mended before it is released. */
export interface JointReading {
  readonly content: JointContent | undefined;
  /** What can be read already, for the drawing and the figures as they were understood. */
  readonly layout: Layout | undefined;
  readonly stages: readonly (Stage | undefined)[];
  readonly faults: readonly Fault[];
  readonly fastener: FastenerSpec | undefined;
  readonly neighbours: Neighbours | undefined;
  /** Torques that are doubtful; they hinder nothing. */
  readonly warnings: readonly JointWarning[];
}

/** Reads a joint's form in the language on screen. */
export function readJoint(form: JointForm, language: Language): JointReading {
  const reader = readerIn(language);
  const layout = readLayout(form.layout, reader);
  const stages = form.stages.map((stage, index) => readStage(stage, index, layout, reader));
  const fastener = readFastener(form, reader);
  const neighbours = form.neighbours.isUsed ? readNeighbours(form.neighbours, layout, reader) : undefined;
  const content = contentOf(form, { fastener, layout, stages, neighbours }, reader);
  const isKnown = (field: string) => reader.faults.some((fault) => field.startsWith(fault.field));
  const checked = content
    ? checkJoint(content)
        .map((failure) => faultOfCheck(failure, content))
        .filter((fault) => !isKnown(fault.field))
    : [];
  const warnings = fastener ? warnJoint({ fastener, stages: stages.map((stage) => stage ?? NOTHING_YET) }) : [];
  return { content, layout, stages, faults: [...reader.faults, ...checked], fastener, neighbours, warnings };
}

/** Keeps the place of a stage that cannot be read yet. */
const NOTHING_YET: Stage = { kind: 'loosen', rounds: [] };

interface Parts {
  readonly fastener: FastenerSpec | undefined;
  readonly layout: Layout | undefined;
  readonly stages: readonly (Stage | undefined)[];
  readonly neighbours: Neighbours | undefined;
}

function contentOf(
  form: JointForm,
  { fastener, layout, stages, neighbours }: Parts,
  reader: Reader,
): JointContent | undefined {
  const known = stages.filter((stage) => stage !== undefined);
  const { kind, derivation } = form.numbersSource;
  const sourceText = reader.text('numbersSource.text', form.numbersSource.text);
  return whole({
    name: reader.text('name', form.name),
    fastener,
    layout,
    stages: known.length === stages.length && known.length > 0 ? known : undefined,
    numbersSource: whole({
      kind,
      text: sourceText,
      ...(kind === 'derived' && derivation ? { derivation } : {}),
    }),
    cautions: form.cautions.map((caution) => caution.text.trim()).filter((text) => text !== ''),
    rework: readRework(form, reader),
    decisionRule: readDecisionRule(form, reader),
    torqueUnit: form.torqueUnit,
    ...(form.neighbours.isUsed ? { neighbours } : {}),
    ...(form.consequenceClass === 'none' ? {} : { consequenceClass: form.consequenceClass }),
    ...(form.retorque.used ? { retorque: readRetorque(form, reader) } : {}),
  });
}

function readFastener({ fastener }: JointForm, reader: Reader) {
  const { ownBolt, ownMaterial } = fastener;
  const propertyClass = ownMaterial ? '' : fastener.propertyClass.trim();
  return whole({
    thread: reader.text('fastener.thread', fastener.thread),
    ...(propertyClass === '' ? {} : { propertyClass }),
    ...(ownBolt ? { ownBolt } : {}),
    ...(ownMaterial ? { ownMaterial } : {}),
    description: fastener.description.trim(),
    lubricant: fastener.lubricant.trim(),
    reuse: fastener.reuse,
    ...(fastener.prevailing.by === 'none' ? {} : { prevailing: readPrevailing(fastener.prevailing, reader) }),
    ...(fastener.stiffness.trim() === ''
      ? {}
      : {
          stiffnessNPerMm: reader.number('fastener.stiffnessNPerMm', fastener.stiffness, { isPositive: true, to: 1e8 }),
        }),
  });
}

const readPrevailing = ({ by, highest, unit }: PrevailingForm, reader: Reader) =>
  whole({
    by: by === 'none' ? undefined : by,
    highestNm: reader.torqueNm('fastener.prevailing.highestNm', highest, unit),
  });

const readRework = ({ rework }: JointForm, reader: Reader) =>
  whole({
    rule: rework.rule,
    underContinues: rework.underContinues,
    maximumAttempts: reader.number('rework.maximumAttempts', rework.maximumAttempts, {
      isWhole: true,
      from: 1,
      to: 20,
    }),
  });

/** The rule that stands in the form; undefined while its figure cannot be read. */
export function readDecisionRule({ decisionRule }: Pick<JointForm, 'decisionRule'>, reader: Reader) {
  const { kind, factor, maximumPercent } = decisionRule;
  switch (kind) {
    case 'simple':
      return { kind };
    case 'guarded':
      return whole({ kind, factor: reader.number('decisionRule.factor', factor, { isPositive: true, to: 2 }) });
    case 'risk': {
      const percent = reader.number('decisionRule.maximum', maximumPercent, { isPositive: true, to: 50 });
      return whole({ kind, maximum: percent === undefined ? undefined : percent / 100 });
    }
  }
}

const readRetorque = ({ retorque }: JointForm, reader: Reader) =>
  whole({
    after: reader.number('retorque.after', retorque.after, { isPositive: true }),
    unit: retorque.unit,
    note: retorque.note.trim(),
  });
