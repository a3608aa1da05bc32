import { type ErrorComponentProps, Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { Refusal, Unreachable } from '../app/api.ts';
import { Button, buttonClass } from './button.tsx';
import { Notice } from './notice.tsx';

/** Said while something is fetched. */
export function Loading() {
  const { t } = useTranslation();
  return (
    <p className="loading">
      <output>{t('state.loading')}</output>
    </p>
  );
}

interface EmptyStateProps {
  readonly title: string;
  readonly text: string;
  readonly children?: ReactNode;
}

/** Said where nothing is yet, with what to do about it. */
export const EmptyState = ({ title, text, children }: EmptyStateProps) => (
  <div className="empty">
    <p className="empty-title">{title}</p>
    <p>{text}</p>
    {children}
  </div>
);

const KNOWN_STATUS = [400, 401, 403, 404, 409, 413, 422, 503] as const;

/** Words for a failed request: what happened, then the server's own detail. */
export function useTroubleWords(): (error: Error) => { readonly title: string; readonly detail: string } {
  const { t } = useTranslation();
  return (error) => {
    if (error instanceof Unreachable) return { title: t('trouble.unreachable'), detail: t('trouble.unreachable-do') };
    if (!(error instanceof Refusal)) return { title: t('trouble.fault'), detail: error.message };
    const { problem } = error;
    const status = KNOWN_STATUS.find((known) => known === problem.status);
    const detail = [problem.field, problem.detail, problem.expected && t('trouble.wants', { what: problem.expected })];
    return {
      title: status ? t(`trouble.${status}`) : t('trouble.other', { status: problem.status }),
      detail: detail.filter(Boolean).join(': '),
    };
  };
}

interface TroubleProps {
  readonly error: Error;
  readonly onRetry?: (() => void) | undefined;
}

/** A failed request, where it happened, with the way on. */
export function Trouble({ error, onRetry }: TroubleProps) {
  const { t } = useTranslation();
  const words = useTroubleWords()(error);
  // What is not there will not be there when it is asked for again.
  const isMissing = onRetry && error instanceof Refusal && error.problem.status === 404;
  return (
    <Notice kind="alarm" title={words.title} isLive>
      {/* The server speaks English; whoever hears the page is told so. */}
      {words.detail ? <p lang={error instanceof Refusal ? 'en' : undefined}>{words.detail}</p> : null}
      {isMissing ? (
        <>
          <p>{t('shell.nowhere-text')}</p>
          <Link to="/" className={buttonClass()}>
            {t('shell.home')}
          </Link>
        </>
      ) : onRetry ? (
        <Button onPress={onRetry}>{t('act.retry')}</Button>
      ) : null}
    </Notice>
  );
}

/** A place that could not be shown. */
export const LoadFailed = ({ error, reset }: ErrorComponentProps) => (
  <Trouble error={error instanceof Error ? error : new Error(String(error))} onRetry={reset} />
);
