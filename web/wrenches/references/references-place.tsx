import { showNumber, showTorque } from '@clampwright/core/quantity';
import { type ReferenceStandard, referenceState } from '@clampwright/core/wrench';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { usePerson } from '../../app/session.ts';
import { Button } from '../../parts/button.tsx';
import { showDate } from '../../parts/dates.ts';
import { Ledger, LedgerRow } from '../../parts/ledger.tsx';
import { useNow } from '../../parts/now.ts';
import { PageHeader } from '../../parts/page-header.tsx';
import { StateWord } from '../../parts/state-word.tsx';
import { EmptyState, Loading, Trouble } from '../../parts/states.tsx';
import { STATE_KINDS } from '../calibration-word.tsx';
import { referencesQuery } from '../care-query.ts';
import { mayKeep } from '../may-keep.ts';
import { ReferenceDialog } from './reference-dialog.tsx';
import '../wrenches.css';

/** What wrenches are compared with, each with its own certificate. */
export default function ReferencesPlace() {
  const { t } = useTranslation('lead');
  const references = useQuery(referencesQuery);
  const may = mayKeep(usePerson()).calibrate;
  const [open, setOpen] = useState<ReferenceStandard | 'new'>();
  return (
    <>
      <PageHeader
        title={t('care.references')}
        text={t('care.references-about')}
        above={<Link to="/wrenches">{t('care.all-wrenches')}</Link>}
      >
        {may ? (
          <Button kind="primary" onPress={() => setOpen('new')}>
            {t('care.reference-add')}
          </Button>
        ) : null}
      </PageHeader>
      {references.isPending ? <Loading /> : null}
      {references.isError ? <Trouble error={references.error} onRetry={() => void references.refetch()} /> : null}
      {references.data?.length === 0 ? (
        <EmptyState title={t('care.references-none')} text={t('care.references-none-text')} />
      ) : null}
      {references.data && references.data.length > 0 ? (
        <Ledger label={t('care.references')}>
          {references.data.map((reference) => (
            <ReferenceRow key={reference.id} reference={reference} onRenew={may ? setOpen : undefined} />
          ))}
        </Ledger>
      ) : null}
      {open ? <ReferenceDialog before={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} /> : null}
    </>
  );
}

interface ReferenceRowProps {
  readonly reference: ReferenceStandard;
  readonly onRenew: ((reference: ReferenceStandard) => void) | undefined;
}

function ReferenceRow({ reference, onRenew }: ReferenceRowProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { name, serial, lowestNm, highestNm, certificate, by, dueOn, expandedUncertaintyPercent, place } = reference;
  const state = referenceState(reference, useNow().toISOString());
  const torque = (torqueNm: number) => showTorque(torqueNm, 'N·m', language);
  return (
    <LedgerRow
      title={name}
      facts={[
        t('wrenches.serial', { serial }),
        `${torque(lowestNm)} – ${torque(highestNm)}`,
        t('care.reference-facts', { uncertainty: showNumber(expandedUncertaintyPercent, language), certificate, by }),
        t('care.reference-due', { on: showDate(dueOn, language) }),
        ...(place === undefined ? [] : [place]),
      ]}
      state={<StateWord kind={STATE_KINDS[state]}>{t(`care.state-${state}`)}</StateWord>}
      side={
        onRenew ? (
          <Button label={t('care.reference-renew-named', { name })} onPress={() => onRenew(reference)}>
            {t('care.reference-renew')}
          </Button>
        ) : null
      }
    />
  );
}
