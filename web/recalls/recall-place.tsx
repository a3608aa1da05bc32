import { ASSUMPTIONS } from '@clampwright/core/wrench';
import type { RecallPage } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button, buttonClass } from '../parts/button.tsx';
import { Choice } from '../parts/choice.tsx';
import { showInstant } from '../parts/dates.ts';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Progress } from '../parts/progress.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { RecallLines } from './recall-lines.tsx';
import { type Assumed, assumedQuery, recallQuery } from './recall-query.ts';
import { RecallSummary } from './recall-summary.tsx';
import './recalls.css';

const PAGE = 100;

/** From a wrench found off to every fastener in doubt: the list to go out with. */
export default function RecallPlace() {
  const { t } = useTranslation('lead');
  const { recallId } = useParams({ from: '/recalls/$recallId' });
  const language = useLanguage();
  const [assumed, setAssumed] = useState<Assumed>('worst');
  const [limit, setLimit] = useState(PAGE);
  const recall = useQuery(recallQuery(recallId, assumed, limit));
  const paper = (form: 'pdf' | 'csv') =>
    `/api/v1/recalls/${recallId}/list.${form}?${assumedQuery(assumed)}language=${language}`;
  const { data } = recall;
  return (
    <>
      <PageHeader
        title={data ? t('care.recall-title', { name: data.wrench.name }) : t('care.recalls')}
        text={data ? <SpanWords page={data} /> : undefined}
        above={<Link to="/recalls">{t('care.recalls')}</Link>}
      >
        <a className={buttonClass('primary')} href={paper('pdf')} download>
          {t('care.recall-pdf')}
        </a>
        <a className={buttonClass('plain')} href={paper('csv')} download>
          {t('care.recall-csv')}
        </a>
      </PageHeader>
      {recall.isPending ? <Loading /> : null}
      {recall.isError ? <Trouble error={recall.error} onRetry={() => void recall.refetch()} /> : null}
      {data ? (
        <>
          <Notice kind="caution" title={t('care.recall-caution')} />
          <Progress done={data.rechecked} total={data.total} label={t('care.recall-progress')} />
          <fieldset className="recall-assumption">
            <legend className="field-label">{t('care.assumption')}</legend>
            <Choice
              label={t('care.assumption')}
              value={assumed}
              options={(['worst', ...ASSUMPTIONS] as const).map((one) => ({
                value: one,
                label: t(`care.assume-${one}`),
              }))}
              onChange={setAssumed}
            />
            <p className="soft">{t('care.assumption-about')}</p>
          </fieldset>
          <RecallSummary page={data} assumed={assumed} />
          {data.total === 0 ? (
            <EmptyState title={t('care.recall-empty')} text="" />
          ) : (
            <RecallLines page={data} assumed={assumed} />
          )}
          {data.lines.length < data.total ? (
            <Button onPress={() => setLimit(limit + PAGE)}>{t('care.recall-more')}</Button>
          ) : null}
        </>
      ) : null}
    </>
  );
}

function SpanWords({ page: { recall, wrench } }: { readonly page: RecallPage }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return t('care.recall-span', {
    serial: wrench.serial,
    from: recall.goodAt === undefined ? t('care.recall-first') : showInstant(recall.goodAt, language),
    to: showInstant(recall.foundAt, language),
  });
}
