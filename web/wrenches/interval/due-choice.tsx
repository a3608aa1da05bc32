import type { Calibration } from '@clampwright/core/wrench';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { showDate } from '../../parts/dates.ts';
import { useNow } from '../../parts/now.ts';
import { Select } from '../../parts/select.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { careQuery } from '../care-query.ts';
import { blankCalibration } from '../form/calibration-form.ts';
import { dayAfter, proposalsFor } from './proposals.ts';

interface DueChoiceProps {
  readonly wrenchId: string;
  /** Not kept yet: how the wrench was found is known, so it counts. */
  readonly calibration: Calibration;
  readonly dueOn: string;
  /** The day; undefined: the one that is typed does not do. */
  readonly onChange: (dueOn: string | undefined) => void;
}

const BY_HAND = 'by-hand';

/** The day of the next calibration: as usual, as a method proposes, or a day of one's own. */
export function DueChoice({ wrenchId, calibration, dueOn, onChange }: DueChoiceProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const care = useQuery(careQuery(wrenchId));
  const proposals = care.data ? proposalsFor(care.data, calibration) : [];
  const { calibratedOn } = calibration;
  const today = useNow().toISOString().slice(0, 10);
  const [typed, setTyped] = useState(dueOn);
  const take = (day: string) => {
    setTyped(day);
    onChange(day > today ? day : undefined);
  };
  const options = [
    { value: 'usual', day: blankCalibration(calibratedOn).dueOn, label: t('interval.usual') },
    ...proposals.flatMap(({ method, dueAfterDays }) => {
      if (dueAfterDays === undefined) return [];
      const day = dayAfter(calibratedOn, dueAfterDays);
      const label = t('interval.option', {
        method: t(`interval.${method}`),
        days: dueAfterDays,
        on: showDate(day, language),
      });
      return [{ value: method, day, label }];
    }),
  ];
  return (
    <div className="field-row">
      <Select
        size="wide"
        label={t('interval.choose')}
        value={options.find(({ day }) => day === typed)?.value ?? BY_HAND}
        options={[
          ...options.map(({ value, label }) => ({ value, label })),
          { value: BY_HAND, label: t('interval.by-hand') },
        ]}
        onChange={(chosen) => {
          const day = options.find(({ value }) => value === chosen)?.day;
          if (day !== undefined) take(day);
        }}
      />
      <TextField
        type="date"
        size="narrow"
        label={t('calibration.due')}
        value={typed}
        problem={typed > today ? undefined : t('fault.due-before')}
        onChange={take}
      />
    </div>
  );
}
