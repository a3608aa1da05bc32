import { type OwnRow, standingRows } from '@clampwright/core/fastener';
import { sayBolt } from '@clampwright/core/language';
import { showNumber } from '@clampwright/core/quantity';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { usePerson } from '../../app/session.ts';
import { Button } from '../../parts/button.tsx';
import { showInstant } from '../../parts/dates.ts';
import { Ledger, LedgerRow } from '../../parts/ledger.tsx';
import { Notice } from '../../parts/notice.tsx';
import { PageHeader } from '../../parts/page-header.tsx';
import { EmptyState, Loading, Trouble } from '../../parts/states.tsx';
import { OwnRowDialog } from './own-row-dialog.tsx';
import { ownRowsQuery } from './own-rows.ts';

/** Bolts, materials and lubricants of the workshop's own, beside the shipped tables. */
export default function OwnRowsPlace() {
  const { t } = useTranslation('lead');
  const person = usePerson();
  const rows = useQuery(ownRowsQuery);
  const [open, setOpen] = useState<{ readonly before: OwnRow | undefined }>();
  // Whoever is not signed in is asked for the name when it comes to it; the server has the last word.
  const mayAdd = !person || person.role === 'lead';
  return (
    <>
      <PageHeader above={<Link to="/joints">{t('joints.title')}</Link>} title={t('own.title')} text={t('own.text')}>
        {mayAdd ? (
          <Button kind="primary" onPress={() => setOpen({ before: undefined })}>
            {t('own.add')}
          </Button>
        ) : null}
      </PageHeader>
      {mayAdd ? null : <Notice kind="plain" title={t('own.lead-only')} />}
      {rows.isPending ? <Loading /> : null}
      {rows.isError ? <Trouble error={rows.error} onRetry={() => void rows.refetch()} /> : null}
      {rows.data ? (
        <RowList rows={rows.data} onSupersede={mayAdd ? (before) => setOpen({ before }) : undefined} />
      ) : null}
      {open ? <OwnRowDialog before={open.before} onClose={() => setOpen(undefined)} /> : null}
    </>
  );
}

interface RowListProps {
  readonly rows: readonly OwnRow[];
  readonly onSupersede: ((row: OwnRow) => void) | undefined;
}

function RowList({ rows, onSupersede }: RowListProps) {
  const { t } = useTranslation('lead');
  const standing = standingRows(rows);
  if (rows.length === 0) return <EmptyState title={t('own.none')} text={t('own.none-text')} />;
  return (
    <Ledger label={t('own.title')}>
      {rows.map((row) => (
        <Row key={row.id} row={row} onSupersede={standing.includes(row) ? onSupersede : undefined}>
          {standing.includes(row) ? null : t('own.superseded')}
        </Row>
      ))}
    </Ledger>
  );
}

interface RowProps {
  readonly row: OwnRow;
  readonly onSupersede: ((row: OwnRow) => void) | undefined;
  /** What is said of a row that no longer stands. */
  readonly children: string | null;
}

function Row({ row, onSupersede, children }: RowProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const figures = useFigures();
  return (
    <LedgerRow
      title={row.name}
      state={children}
      facts={[
        t(`own.kind-${row.kind}`),
        ...figures(row),
        row.source,
        t('own.entered', { name: row.by.name, when: showInstant(row.addedAt, language) }),
      ]}
      side={
        onSupersede ? (
          <Button kind="quiet" label={t('own.supersede-label', { name: row.name })} onPress={() => onSupersede(row)}>
            {t('own.supersede')}
          </Button>
        ) : null
      }
    />
  );
}

function useFigures(): (row: OwnRow) => readonly string[] {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const figure = (value: number) => showNumber(value, language);
  return (row) => {
    switch (row.kind) {
      case 'material':
        return [
          t('own.yield-said', { figure: figure(row.yieldStrengthMPa) }),
          t('own.tensile-said', { figure: figure(row.tensileStrengthMPa) }),
        ];
      case 'lubricant':
        return [
          t('own.thread-said', { lower: figure(row.threadFriction.lower), upper: figure(row.threadFriction.upper) }),
          t('own.bearing-said', { lower: figure(row.bearingFriction.lower), upper: figure(row.bearingFriction.upper) }),
        ];
      case 'bolt':
        return [t(`bench.value.${row.system}`), sayBolt(row, language)];
    }
  };
}
