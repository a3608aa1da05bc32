import { sayChance } from '@clampwright/core/language';
import { showTorque } from '@clampwright/core/quantity';
import { ASSUMPTIONS } from '@clampwright/core/wrench';
import type { RecallPage } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { showDate } from '../parts/dates.ts';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { StateWord } from '../parts/state-word.tsx';
import { VerdictBadge } from '../parts/verdict-badge.tsx';
import type { Assumed } from './recall-query.ts';
import { RecheckDialog } from './recheck-dialog.tsx';

type Line = RecallPage['lines'][number];

interface RecallLinesProps {
  readonly page: RecallPage;
  readonly assumed: Assumed;
}

/** Each pull in doubt: where it is, what it was worth, how likely it lies outside, what was done about it. */
export function RecallLines({ page, assumed }: RecallLinesProps) {
  const { t } = useTranslation('lead');
  const [asked, setAsked] = useState<Line>();
  return (
    <>
      <Ledger label={t('care.recalls')}>
        {page.lines.map((line) => (
          <RecallRow key={line.pull.pullId} line={line} assumed={assumed} onRecheck={setAsked} />
        ))}
      </Ledger>
      {asked ? <RecheckDialog recallId={page.recall.id} line={asked} onClose={() => setAsked(undefined)} /> : null}
    </>
  );
}

interface RecallRowProps {
  readonly line: Line;
  readonly assumed: Assumed;
  readonly onRecheck: (line: Line) => void;
}

function RecallRow({ line, assumed, onRecheck }: RecallRowProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { pull, under, recheck } = line;
  const worst = ASSUMPTIONS.toSorted((a, b) => under[b].outside - under[a].outside)[0] ?? 'at-once';
  const again = under[assumed === 'worst' ? worst : assumed];
  const torque = (torqueNm: number) => showTorque(torqueNm, 'N·m', language);
  const figures = { shown: torque(pull.torqueNm), true: torque(again.torqueNm) };
  const where = t('care.recall-position', { joint: `${pull.jointRef} ${pull.joint}`, position: pull.position });
  return (
    <LedgerRow
      title={where}
      facts={[
        <Link key="job" to="/jobs/$jobId" params={{ jobId: pull.job.id }}>
          {`${pull.asset}: ${pull.job.title}`}
        </Link>,
        pull.consequenceClass ?? t('care.recall-no-class'),
        t('care.recall-cell', { stage: pull.stage, round: pull.round, on: showDate(pull.takenAt, language) }),
        pull.lowerNm === undefined || pull.upperNm === undefined
          ? t('care.recall-true-alone', figures)
          : t('care.recall-true', { ...figures, lower: torque(pull.lowerNm), upper: torque(pull.upperNm) }),
        ...(recheck
          ? [`${t(`care.outcome-${recheck.outcome}`)}, ${showDate(recheck.at, language)}, ${recheck.by}`]
          : []),
      ]}
      state={
        recheck ? (
          <StateWord kind="good">{t('care.recheck')}</StateWord>
        ) : (
          <span className="recall-chance">
            <VerdictBadge verdict={again.verdict} />
            <span>{t('care.recall-outside', { chance: sayChance(again.outside, language) })}</span>
          </span>
        )
      }
      side={
        <Button
          kind={recheck ? 'quiet' : 'plain'}
          label={t('care.recheck-named', { where })}
          onPress={() => onRecheck(line)}
        >
          {t(recheck ? 'care.recheck-again' : 'care.recheck')}
        </Button>
      }
    />
  );
}
