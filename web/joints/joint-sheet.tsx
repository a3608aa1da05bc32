import type { JointContent } from '@clampwright/core/joint';
import {
  say,
  sayConsequence,
  sayMechanics,
  sayOwnRow,
  sayPrevailing,
  sayRule,
  sayStiffness,
} from '@clampwright/core/language';
import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { JointCautions } from '../parts/joint-cautions.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { TitleBlock } from '../parts/title-block.tsx';
import { KeptDerivation } from './derive/kept-derivation.tsx';
import { KeptPlan } from './plan/kept-plan.tsx';
import { PositionsDrawing } from './positions-drawing.tsx';
import { StageSheet } from './stage-sheet.tsx';

/** All that a revision says, to be read. */
export function JointSheet({ content }: { readonly content: JointContent }) {
  const { t } = useTranslation('lead');
  return (
    <>
      <div className="with-drawing">
        <JointFacts content={content} />
        <PositionsDrawing layout={content.layout} />
      </div>
      {content.numbersSource.derivation ? (
        <KeptDerivation
          derivation={content.numbersSource.derivation}
          stages={content.stages}
          torqueUnit={content.torqueUnit}
        />
      ) : null}
      <KeptPlan content={content} />
      <JointCautions cautions={content.cautions} />
      <Sheet title={t('joint.stages')}>
        {content.stages.map((stage, index) => (
          <StageSheet key={index} stage={stage} number={index + 1} content={content} />
        ))}
      </Sheet>
    </>
  );
}

function JointFacts({ content }: { readonly content: JointContent }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { fastener, numbersSource, rework, decisionRule, retorque } = content;
  const attempts = t('joint.attempts-said', { count: rework.maximumAttempts });
  const cells = [
    { label: t('joint.thread'), value: fastener.thread },
    ...[fastener.ownBolt, fastener.ownMaterial].flatMap((row) =>
      row ? [{ label: say(language, 'record.own-row'), value: sayOwnRow(row, language) }] : [],
    ),
    { label: t('joint.class'), value: fastener.propertyClass },
    { label: t('joint.description'), value: fastener.description },
    { label: t('joint.lubricant'), value: fastener.lubricant },
    { label: t('joint.reuse'), value: say(language, `reuse.${fastener.reuse}`) },
    {
      label: t('joint.prevailing'),
      value: fastener.prevailing && sayPrevailing(fastener.prevailing, content.torqueUnit, language),
    },
    {
      label: t('joint.stiffness'),
      value: fastener.stiffnessNPerMm === undefined ? undefined : sayStiffness(fastener.stiffnessNPerMm, language),
    },
    { label: t('joint.torque-unit'), value: content.torqueUnit },
    {
      label: t('joint.source'),
      value: sayMechanics(language, 'plot.reads', {
        name: say(language, `numbers.${numbersSource.kind}`),
        value: numbersSource.text,
      }),
    },
    {
      label: t('joint.rework'),
      value: [
        say(language, `rework.${rework.rule}`),
        attempts,
        ...(rework.underContinues ? [say(language, 'record.under-continues')] : []),
      ].join('; '),
    },
    {
      label: t('joint.decision'),
      value: sayRule(decisionRule, language),
    },
    {
      label: t('joint.consequence'),
      value: content.consequenceClass && sayConsequence(content.consequenceClass, language),
    },
    {
      label: t('joint.retorque'),
      value:
        retorque &&
        `${showNumber(retorque.after, language)} ${say(language, `after.${retorque.unit}`)} ${retorque.note}`,
    },
  ];
  return <TitleBlock cells={cells} />;
}
