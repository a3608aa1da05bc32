import type { Today } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { Notice } from '../parts/notice.tsx';

/** Recalls with fasteners that nobody has re-checked yet; they come before everything else. */
export function OpenRecalls({ recalls }: Pick<Today, 'recalls'>) {
  const { t } = useTranslation();
  if (recalls.length === 0) return null;
  return (
    <Notice kind="caution" title={t('today.recalls')}>
      <ul className="due-list">
        {recalls.map(({ recall, wrench, pulls, rechecked }) => (
          <li key={recall.id}>
            <Link to="/recalls/$recallId" params={{ recallId: recall.id }}>
              {t('today.recall', { name: wrench.name, serial: wrench.serial, count: pulls - rechecked })}
            </Link>
          </li>
        ))}
      </ul>
    </Notice>
  );
}
