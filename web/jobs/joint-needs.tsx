import { say } from '@clampwright/core/language';
import { countPlaces } from '@clampwright/core/layout';
import { showTorque } from '@clampwright/core/quantity';
import type { JobJoint } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { TitleBlock } from '../parts/title-block.tsx';
import { torqueSpan } from './torque-span.ts';

interface JointNeedsProps {
  readonly jobJoint: JobJoint;
  readonly tool: Tool | undefined;
}

/** What must lie ready before the first pull. */
export function JointNeeds({ jobJoint, tool }: JointNeedsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { content, revision } = jobJoint.joint;
  const { fastener, numbersSource, torqueUnit, retorque } = content;
  const span = torqueSpan(content, tool);
  const show = (torqueNm: number) => showTorque(torqueNm, torqueUnit, language);
  return (
    <TitleBlock
      cells={[
        {
          label: t('joint.fastener'),
          value: [fastener.thread, fastener.propertyClass ?? fastener.ownMaterial?.name, fastener.description]
            .filter(Boolean)
            .join(' · '),
        },
        { label: t('joint.positions'), value: String(countPlaces(content.layout)) },
        { label: t('joint.lubricant'), value: fastener.lubricant },
        { label: t('joint.reuse'), value: t(`joint.reuse-word.${fastener.reuse}`) },
        {
          label: t('joint.torque-at-joint'),
          value: span && t('joint.from-to', { from: show(span.joint.lowestNm), to: show(span.joint.highestNm) }),
        },
        {
          label: t(tool?.adapter ? 'joint.wrench-range-adapter' : 'joint.wrench-range'),
          value: span && t('joint.from-to', { from: show(span.shown.lowestNm), to: show(span.shown.highestNm) }),
        },
        {
          label: t('joint.source'),
          value: `${say(language, `numbers.${numbersSource.kind}`)}: ${numbersSource.text}`,
        },
        { label: t('joint.revision'), value: `${content.name}, ${revision}` },
        {
          label: t('joint.retorque'),
          value:
            retorque &&
            say(language, 'record.retorque-text', {
              after: retorque.after,
              unit: say(language, `after.${retorque.unit}`),
              note: retorque.note,
            }),
        },
      ]}
    />
  );
}
