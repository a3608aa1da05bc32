import type { Today } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { showDate } from '../parts/dates.ts';
import { useNow } from '../parts/now.ts';
import { Sheet } from '../parts/sheet.tsx';
import { DueMark } from './due-mark.tsx';
import { alike, isPast } from './retorque.ts';

/** Joints of closed jobs that want to be tightened again. */
export function DueRetorques({ retorques }: { readonly retorques: Today['retorques'] }) {
  const { t } = useTranslation();
  const language = useLanguage();
  const now = useNow();
  return (
    <Sheet title={t('today.retorques')}>
      {retorques.length === 0 ? <p className="soft">{t('today.no-retorques')}</p> : null}
      <ul className="due-list">
        {alike(retorques).map(({ due, joints }) => (
          <li key={`${due.jobId} ${due.after} ${due.unit} ${due.note}`} className="due-row">
            <DueMark isPast={isPast(due, now.getTime())} />
            <span>
              <Link to="/jobs/$jobId" params={{ jobId: due.jobId }}>
                <strong>{due.assetName}</strong>
              </Link>
              <br />
              <span className="soft">{due.note || due.jobTitle}</span>
            </span>
            <span className="due-when">
              {t(`today.retorque.${due.unit}`, { after: due.after, on: showDate(due.closedAt, language) })}
              {joints > 1 ? ` · ${t('today.joints', { count: joints })}` : null}
            </span>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
