import type { FastenerSpec, JointWarning } from '@clampwright/core/joint';
import { sayJointWarning } from '@clampwright/core/language';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Notice } from './notice.tsx';

interface JointWarningsProps {
  readonly warnings: readonly JointWarning[];
  readonly fastener: FastenerSpec;
}

/** Torques of a joint that are doubtful; they hinder nothing, but must be seen. */
export function JointWarnings({ warnings, fastener }: JointWarningsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  if (warnings.length === 0) return null;
  return (
    <Notice kind="caution" title={t('joint.doubtful')}>
      <ul className="caution-list">
        {warnings.map((warning) => (
          <li key={warning.field}>{sayJointWarning(warning, fastener, language)}</li>
        ))}
      </ul>
    </Notice>
  );
}
