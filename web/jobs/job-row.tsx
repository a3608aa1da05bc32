import type { JobListItem } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { buttonClass } from '../parts/button.tsx';
import { showInstant } from '../parts/dates.ts';
import { Progress } from '../parts/progress.tsx';

/** One job in a list: what, where, how far, and the way on. */
export function JobRow({ job }: { readonly job: JobListItem }) {
  const { t } = useTranslation();
  const language = useLanguage();
  return (
    <li className="job-row">
      <div className="job-row-words">
        <Link to="/jobs/$jobId" params={{ jobId: job.id }} className="job-row-title">
          {job.title}
        </Link>
        <p>{[job.assetName, job.assetLocation].filter(Boolean).join(', ')}</p>
        <p className="soft small">
          {t(`job.status.${job.status}`)}
          {' · '}
          {t('job.last-at', { when: showInstant(job.lastAt, language) })}
          {job.demo ? ` · ${t('demo.word')}` : ''}
        </p>
      </div>
      <Progress done={job.done} total={job.total} label={t('job.progress', { title: job.title })} />
      {job.status === 'open' ? (
        <Link
          to="/jobs/$jobId/continue"
          params={{ jobId: job.id }}
          className={buttonClass(job.done === 0 ? 'plain' : 'primary', 'work')}
          aria-label={t(job.done === 0 ? 'job.begin-named' : 'job.continue-named', { title: job.title })}
        >
          {t(job.done === 0 ? 'job.begin' : 'job.continue')}
        </Link>
      ) : (
        <Link
          to="/jobs/$jobId"
          params={{ jobId: job.id }}
          className={buttonClass('plain', 'work')}
          aria-label={t('job.open-named', { title: job.title })}
        >
          {t('job.open')}
        </Link>
      )}
    </li>
  );
}
