import { showNumber } from '@clampwright/core/quantity';
import type { CalibrationInterval, IntervalProposal } from '@clampwright/core/wrench';
import type { WrenchCare } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Ledger, LedgerRow } from '../../parts/ledger.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { proposalsFor } from './proposals.ts';

/** What each method proposes for the next interval, what it rests on and how sure it is. */
export function IntervalSheet({ care }: { readonly care: WrenchCare }) {
  const { t } = useTranslation('lead');
  return (
    <Sheet title={t('interval.title')}>
      <p className="soft">{t('interval.about')}</p>
      <Ledger label={t('interval.title')}>
        {proposalsFor(care).map((proposal) => (
          <ProposalRow key={proposal.method} proposal={proposal} care={care} />
        ))}
      </Ledger>
    </Sheet>
  );
}

interface ProposalRowProps {
  readonly proposal: IntervalProposal;
  readonly care: WrenchCare;
}

function ProposalRow({ proposal, care: { wrench } }: ProposalRowProps) {
  const { t } = useTranslation('lead');
  const figure = useFigure();
  const sureness = useSureness();
  const { method, restsOn, interval, dueAfterDays } = proposal;
  const name = t(`interval.${method}`);
  if (!interval.ok) return <LedgerRow title={name} facts={[t(`interval.refused-${method}`)]} />;
  const { intervalDays, intervalPulls, basisDays, heldAt, comesFirst, foundIn, foundOut } = interval.value;
  return (
    <LedgerRow
      title={`${name}: ${t('interval.proposal', { days: figure(intervalDays), pulls: figure(intervalPulls) })}`}
      facts={[
        t(`interval.basis-${basisDays}`),
        t(`interval.${restsOn}`, {
          type: wrench.type,
          class: wrench.class,
          inside: figure(foundIn),
          outside: figure(foundOut),
        }),
        sureness(interval.value),
        ...(heldAt === 'free' ? [] : [t(`interval.held-${heldAt}`)]),
        ...(comesFirst === 'pulls' && dueAfterDays !== undefined
          ? [t('interval.pulls-first', { days: figure(dueAfterDays) })]
          : []),
      ]}
    />
  );
}

/** Days and pulls are told whole, and never longer than they are. */
function useFigure() {
  const language = useLanguage();
  return (value: number) => showNumber(Math.floor(value), language);
}

function useSureness() {
  const { t } = useTranslation('lead');
  const figure = useFigure();
  return ({ method, lowerDays }: CalibrationInterval) => {
    if (lowerDays !== undefined) return t('interval.sure', { days: figure(lowerDays) });
    return t(method === 'control-chart' ? 'interval.sure-drift' : 'interval.unsure');
  };
}
