import { sayCautions } from '@clampwright/core/language';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Notice } from './notice.tsx';

/** The usual cautions of the trade. */
export default function UsualCautions() {
  const { t } = useTranslation();
  const language = useLanguage();
  return (
    <Notice kind="caution" title={t('caution.title')}>
      <ul className="caution-list">
        {sayCautions(language).map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </Notice>
  );
}
