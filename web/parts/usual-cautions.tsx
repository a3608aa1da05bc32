import { useTranslation } from 'react-i18next';
import { Notice } from './notice.tsx';

/** As the record gives them; a test holds the words to those of `core/language`, which would be much to load for a first page. */
const CAUTIONS = [
  'maker-first',
  'licensed',
  'estimates',
  'relieve-first',
  'eyes-hands',
  'no-cheater',
  'not-for-loosening',
] as const;

/** The usual cautions of the trade. */
export function UsualCautions() {
  const { t } = useTranslation();
  return (
    <Notice kind="caution" title={t('caution.title')}>
      <ul className="caution-list">
        {CAUTIONS.map((caution) => (
          <li key={caution}>{t(`caution.usual.${caution}`)}</li>
        ))}
      </ul>
    </Notice>
  );
}
