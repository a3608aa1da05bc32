import type { JointContent, Rework } from '../joint/joint.ts';
import { sayConsequence, sayPrevailing, sayRule, sayStiffness } from '../language/joint-rules.ts';
import { nameFastener, sayOwnRow } from '../language/own-rows.ts';
import { say } from '../language/say.ts';
import type { Layout } from '../layout/layout.ts';
import { countPlaces } from '../layout/places.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import type { Block, Fact } from './document.ts';
import { attemptTable } from './document-attempts.ts';
import { derivationBlocks } from './document-derivation.ts';
import { jointDrawingBlock } from './document-drawing.ts';
import { type RecordFacts, sayJoint } from './document-facts.ts';
import { limitTable } from './document-limits.ts';
import { closingBlocks, planBlocks } from './document-plan.ts';
import type { JobJoint } from './entry.ts';

/** One joint: what it is, its limits and their source, its cautions, how it looks now, and every attempt on it. */
export function jointBlocks(facts: RecordFacts, joint: JobJoint): readonly Block[] {
  const { language } = facts;
  const { cautions } = joint.joint.content;
  const state = facts.state.joints.find(({ ref }) => ref === joint.ref)!;
  return [
    { kind: 'heading', level: 1, text: sayJoint(joint) },
    { kind: 'facts', size: 'normal', facts: contentFacts(joint, language) },
    limitTable(joint, state.steps, language),
    ...derivationBlocks(joint, language),
    ...planBlocks(joint, state, language),
    ...(cautions.length === 0
      ? []
      : [{ kind: 'note', tone: 'caution', title: say(language, 'record.joint-cautions'), lines: cautions } as const]),
    jointDrawingBlock(joint, state, language),
    attemptTable(facts, joint, state),
    ...closingBlocks(joint, state, language),
  ];
}

function contentFacts({ joint }: JobJoint, language: Language): readonly Fact[] {
  const { content, revision } = joint;
  const { fastener, numbersSource, retorque } = content;
  return [
    {
      label: say(language, 'record.joint'),
      value: say(language, 'record.joint-revision', { name: content.name, revision }),
    },
    { label: say(language, 'record.fastener'), value: sayFastener(content) },
    ...[fastener.ownBolt, fastener.ownMaterial].flatMap((row) =>
      row ? [{ label: say(language, 'record.own-row'), value: sayOwnRow(row, language) }] : [],
    ),
    { label: say(language, 'record.lubricant'), value: fastener.lubricant || '–' },
    { label: say(language, 'record.reuse'), value: say(language, `reuse.${fastener.reuse}`) },
    ...(fastener.prevailing
      ? [
          {
            label: say(language, 'record.prevailing'),
            value: sayPrevailing(fastener.prevailing, content.torqueUnit, language),
          },
        ]
      : []),
    ...(fastener.stiffnessNPerMm === undefined
      ? []
      : [{ label: say(language, 'record.joint-stiffness'), value: sayStiffness(fastener.stiffnessNPerMm, language) }]),
    { label: say(language, 'record.layout'), value: sayLayout(content.layout, language) },
    {
      label: say(language, 'record.numbers-source'),
      value: `${numbersSource.text} (${say(language, `numbers.${numbersSource.kind}`)})`,
    },
    { label: say(language, 'record.decision-rule'), value: sayRule(content.decisionRule, language) },
    ...(content.consequenceClass
      ? [{ label: say(language, 'record.consequence'), value: sayConsequence(content.consequenceClass, language) }]
      : []),
    { label: say(language, 'record.rework-rule'), value: sayRework(content.rework, language) },
    ...(retorque ? [{ label: say(language, 'record.retorque'), value: sayRetorque(retorque, language) }] : []),
  ];
}

const sayFastener = ({ fastener }: JointContent): string =>
  [nameFastener(fastener), fastener.description].filter(Boolean).join(', ');

/** The layout in a few words: `circle, 24 positions, diameter 1600 mm`. */
function sayLayout(layout: Layout, language: Language): string {
  const count = countPlaces(layout);
  const mm = (length: number) => `${showNumber(length, language)}\u00a0mm`;
  switch (layout.kind) {
    case 'circle':
      return say(language, 'layout.circle', { count, diameter: mm(layout.diameterMm) });
    case 'rectangle':
      return say(language, 'layout.rectangle', { count, rows: layout.rows, columns: layout.columns });
    case 'line':
      return say(language, 'layout.line', { count, pitch: mm(layout.pitchMm) });
    case 'points':
      return say(language, 'layout.points', { count });
  }
}

function sayRework({ rule, underContinues, maximumAttempts }: Rework, language: Language): string {
  const text = say(language, 'record.rework-text', {
    rule: say(language, `rework.${rule}`),
    attempts: maximumAttempts,
  });
  return underContinues ? `${text}; ${say(language, 'record.under-continues')}` : text;
}

const sayRetorque = ({ after, unit, note }: NonNullable<JointContent['retorque']>, language: Language): string =>
  say(language, 'record.retorque-text', {
    after: showNumber(after, language),
    unit: say(language, `after.${unit}`),
    note,
  }).trim();
