import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button, buttonClass } from '../parts/button.tsx';
import { ConfirmDialog } from '../parts/confirm-dialog.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { Trouble } from '../parts/states.tsx';
import type { JobInHand } from './job-in-hand.ts';
import { progressOfJob } from './place-in-work.ts';
import { ReasonDialog } from './reason-dialog.tsx';
import { NobodyActs, useCommand } from './use-command.ts';

/** The end of a job: sign-off, closing, and the record to take away. */
export function Finish({ job }: { readonly job: JobInHand }) {
  const { t } = useTranslation();
  const { jobId, status } = job.state;
  return (
    <Sheet title={t('finish.title')} anchor="finish">
      {status === 'open' ? <SignOff job={job} /> : null}
      {status === 'signed-off' ? <CloseJob jobId={jobId} /> : null}
      {status === 'closed' ? <p>{t('finish.closed')}</p> : null}
      <div className="actions">
        {(['pdf', 'html', 'csv', 'json'] as const).map((kind) => (
          <a
            key={kind}
            className={buttonClass()}
            href={`/api/v1/jobs/${jobId}/record.${kind}`}
            download={kind !== 'html'}
          >
            {t(kind === 'json' && status !== 'closed' ? 'finish.record.json-open' : `finish.record.${kind}`)}
          </a>
        ))}
        {status === 'closed' ? null : (
          <Link to="/jobs/$jobId/import" params={{ jobId }} className={buttonClass('quiet')}>
            {t('finish.import')}
          </Link>
        )}
      </div>
      {status === 'closed' ? null : <p className="soft small">{t('finish.unsealed')}</p>}
    </Sheet>
  );
}

function SignOff({ job }: { readonly job: JobInHand }) {
  const { t } = useTranslation();
  const [isAsking, setAsking] = useState(false);
  const ask = useCommand(job.state.jobId);
  const { done, total } = progressOfJob(job.state);
  if (done < total) return <p>{t('finish.waiting', { count: total - done })}</p>;
  return (
    <>
      <p>{t('finish.all-done')}</p>
      <div className="actions">
        <Button kind="primary" size="work" onPress={() => setAsking(true)}>
          {t('finish.sign-off')}
        </Button>
      </div>
      {isAsking ? (
        <ReasonDialog
          title={t('finish.sign-off-title')}
          action={t('finish.sign-off')}
          usual={[t('finish.usual-statement')]}
          reasonLabel={t('finish.statement')}
          error={ask.error}
          isBusy={ask.isPending}
          onSend={(statement) =>
            ask.mutate({ command: { kind: 'sign-off', statement } }, { onSuccess: () => setAsking(false) })
          }
          onClose={() => setAsking(false)}
        >
          <p>{t('finish.sign-off-text')}</p>
        </ReasonDialog>
      ) : null}
    </>
  );
}

function CloseJob({ jobId }: { readonly jobId: string }) {
  const { t } = useTranslation();
  const [isAsking, setAsking] = useState(false);
  const ask = useCommand(jobId);
  return (
    <>
      <p>{t('finish.signed-off')}</p>
      <div className="actions">
        <Button kind="primary" size="work" onPress={() => setAsking(true)}>
          {t('finish.close')}
        </Button>
      </div>
      {isAsking ? (
        <ConfirmDialog
          title={t('finish.close-title')}
          action={t('finish.close')}
          isBusy={ask.isPending}
          onConfirm={() => ask.mutate({ command: { kind: 'close' } }, { onSuccess: () => setAsking(false) })}
          onClose={() => setAsking(false)}
        >
          <p>{t('finish.close-text')}</p>
          {ask.error && !(ask.error instanceof NobodyActs) ? <Trouble error={ask.error} /> : null}
        </ConfirmDialog>
      ) : null}
    </>
  );
}
