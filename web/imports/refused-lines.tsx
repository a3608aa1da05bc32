import type { ImportResult } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { ROLES } from './mapping.ts';

/** The lines that are not taken, by number, each with its reason. */
export function RefusedLines({ result }: { readonly result: ImportResult }) {
  const { t } = useTranslation('lead');
  const { refused, refusedCount } = result;
  return (
    <section className="refused" aria-label={t('import.refused', { count: refusedCount })}>
      <h3 className="sheet-subtitle">{t('import.refused', { count: refusedCount })}</h3>
      <ul>
        {refused.map(({ line, field, message }) => {
          const role = ROLES.find((one) => one === field);
          return (
            <li key={`${line} ${field} ${message}`}>
              <strong>{t('import.line-number', { line })}</strong>{' '}
              {role && role !== 'none' ? `${t(`import.role.${role}`)}: ` : ''}
              <span lang="en">{message}</span>
            </li>
          );
        })}
      </ul>
      {refusedCount > refused.length ? (
        <p>{t('import.refused-more', { count: refusedCount - refused.length })}</p>
      ) : null}
    </section>
  );
}
