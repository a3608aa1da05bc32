import { useTranslation } from 'react-i18next';
import { Notice } from './notice.tsx';

/** What its lead wrote down to mind of a joint; nothing where there is nothing. */
export function JointCautions({ cautions }: { readonly cautions: readonly string[] }) {
  const { t } = useTranslation('technician');
  if (cautions.length === 0) return null;
  return (
    <Notice kind="caution" title={t('joint.cautions')}>
      <ul className="caution-list">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </Notice>
  );
}
