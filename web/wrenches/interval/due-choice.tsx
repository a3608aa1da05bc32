import { type Language, showNumber } from '@clampwright/core/quantity';
import type { Calibration, IntervalProposal } from '@clampwright/core/wrench';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { readerIn } from '../../forms/reader.ts';
import { showDate } from '../../parts/dates.ts';
import { DecimalField } from '../../parts/decimal-field.tsx';
import { useNow } from '../../parts/now.ts';
import { Select } from '../../parts/select.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { MOST_PULLS } from '../calibrate/set-up.ts';
import { careQuery } from '../care-query.ts';
import { blankCalibration } from '../form/calibration-form.ts';
import { dayAfter, proposalsFor } from './proposals.ts';

/** When the next calibration is due, as typed; pulls left out: as usual. */
export interface TypedDue {
  readonly dueOn: string;
  readonly dueAfterPulls?: string | undefined;
}

interface DueChoiceProps {
  readonly wrenchId: string;
  /** Not kept yet: how the wrench was found is known, so it counts. */
  readonly calibration: Calibration;
  readonly due: TypedDue;
  readonly onChange: (due: { dueOn: string; dueAfterPulls: string }, isFit: boolean) => void;
}

const BY_HAND = 'by-hand';

/** When the wrench is due again, by day or pulls: as usual, as a method proposes, or as somebody wants it. */
export function DueChoice({ wrenchId, calibration, due, onChange }: DueChoiceProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const care = useQuery(careQuery(wrenchId));
  const proposals = care.data ? proposalsFor(care.data, calibration) : [];
  const { calibratedOn } = calibration;
  const today = useNow().toISOString().slice(0, 10);
  const [typed, setTyped] = useState({ dueOn: due.dueOn, dueAfterPulls: due.dueAfterPulls ?? '' });
  const areWhole = (pulls: string) =>
    pulls === '' || readerIn(language).number('pulls', pulls, MOST_PULLS) !== undefined;
  const take = (next: typeof typed) => {
    setTyped(next);
    onChange(next, next.dueOn > today && areWhole(next.dueAfterPulls));
  };
  const usual = {
    value: 'usual',
    dueOn: blankCalibration(calibratedOn).dueOn,
    dueAfterPulls: '',
    label: t('interval.usual'),
  };
  const options = [
    usual,
    ...proposals.flatMap((proposal) => {
      const chosen = dueBy(proposal, calibratedOn, language);
      if (!chosen) return [];
      const { dueOn: day, dueAfterPulls: pulls, days } = chosen;
      const words = { method: t(`interval.${proposal.method}`), days, on: showDate(day, language), pulls };
      return [{ value: proposal.method, dueOn: day, dueAfterPulls: pulls, label: t('interval.option', words) }];
    }),
  ];
  const chosen = options.find((one) => one.dueOn === typed.dueOn && one.dueAfterPulls === typed.dueAfterPulls);
  const byPulls = proposals.find(({ method }) => method === chosen?.value);
  const earlier = byPulls && pullsFirst(byPulls, calibratedOn);
  return (
    <>
      <div className="field-row">
        <Select
          size="wide"
          label={t('interval.choose')}
          value={chosen?.value ?? BY_HAND}
          options={[
            ...options.map(({ value, label }) => ({ value, label })),
            { value: BY_HAND, label: t('interval.by-hand') },
          ]}
          onChange={(value) => {
            const one = options.find((option) => option.value === value);
            if (one) take({ dueOn: one.dueOn, dueAfterPulls: one.dueAfterPulls });
          }}
        />
        <TextField
          type="date"
          size="narrow"
          label={t('calibration.due')}
          value={typed.dueOn}
          problem={typed.dueOn > today ? undefined : t('fault.due-before')}
          onChange={(dueOn) => take({ ...typed, dueOn })}
        />
        <DecimalField
          size="narrow"
          label={t('interval.pulls')}
          hint={t('interval.pulls-hint')}
          value={typed.dueAfterPulls}
          problem={areWhole(typed.dueAfterPulls) ? undefined : t('fault.whole', MOST_PULLS)}
          onChange={(dueAfterPulls) => take({ ...typed, dueAfterPulls })}
        />
      </div>
      {earlier === undefined ? null : (
        <p className="soft">{t('interval.pulls-about', { on: showDate(earlier, language) })}</p>
      )}
    </>
  );
}

function dueBy({ interval }: IntervalProposal, calibratedOn: string, language: Language) {
  if (!interval.ok) return undefined;
  const days = Math.max(1, Math.floor(interval.value.intervalDays));
  const pulls = Math.max(1, Math.floor(interval.value.intervalPulls));
  return { days, dueOn: dayAfter(calibratedOn, days), dueAfterPulls: showNumber(pulls, language) };
}

/** The day on which the pulls of a proposal are used up at the use so far, where that is before its own day. */
const pullsFirst = ({ interval, dueAfterDays }: IntervalProposal, calibratedOn: string): string | undefined =>
  interval.ok && interval.value.comesFirst === 'pulls' && dueAfterDays !== undefined
    ? dayAfter(calibratedOn, dueAfterDays)
    : undefined;
