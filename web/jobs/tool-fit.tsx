import { showTorque } from '@clampwright/core/quantity';
import type { Tool } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Notice } from '../parts/notice.tsx';
import { noticeWords, objectionWords } from './objection-words.ts';
import type { Fit } from './tool-assessment.ts';
import { torqueSpan } from './torque-span.ts';

interface ToolFitProps {
  readonly fit: Fit;
  readonly tool: Tool;
  /** Names the joint, where there are several. */
  readonly isNamed: boolean;
}

/** Says whether a tool suits a joint, or each reason why not. */
export function ToolFit({ fit, tool, isNamed }: ToolFitProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { ref, label, joint } = fit.jobJoint;
  const manner = { t, language, unit: joint.content.torqueUnit };
  const span = torqueSpan(joint.content, tool);
  const isRefused = fit.objections.length > 0;
  const words = t(isRefused ? 'tool.refused' : 'tool.suits');
  return (
    <Notice
      kind={isRefused ? 'alarm' : 'plain'}
      title={isNamed ? `${t('joint.heading', { ref, label })}: ${words}` : words}
    >
      {span ? (
        <p>
          {t('tool.shows', {
            from: showTorque(span.shown.lowestNm, manner.unit, language),
            to: showTorque(span.shown.highestNm, manner.unit, language),
          })}
        </p>
      ) : null}
      <ul className="caution-list">
        {fit.objections.map((objection) => (
          <li key={JSON.stringify(objection)}>{objectionWords(objection, manner)}</li>
        ))}
        {fit.notices.map((notice) => (
          <li key={JSON.stringify(notice)}>{noticeWords(notice, manner)}</li>
        ))}
      </ul>
    </Notice>
  );
}
