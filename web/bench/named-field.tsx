import { threadOfBolt } from '@clampwright/core/fastener';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { boltChoices } from '../joints/own-rows/own-choices.ts';
import { ownRowsQuery } from '../joints/own-rows/own-rows.ts';
import { Button } from '../parts/button.tsx';
import { Select } from '../parts/select.tsx';
import type { Field } from './fields.ts';
import { type BenchForm, blankForm, formFrom, type Hand } from './input.ts';

interface NamedFieldProps {
  readonly fields: readonly Field[];
  readonly typed: BenchForm[string];
  readonly hand: Hand;
  readonly onChange: (typed: BenchForm[string]) => void;
  /** The field itself: the name, or the figures. */
  readonly children: ReactNode;
}

/** A thread by its designation, by a bolt of the workshop's own, or by dimensions that are told here alone. */
export function NamedField({ fields, typed, hand, onChange, children }: NamedFieldProps) {
  const { t } = useTranslation('lead');
  const { data: rows = [] } = useQuery(ownRowsQuery);
  const bolts = boltChoices(rows, undefined);
  const isNamed = typeof typed === 'string';
  const chosen = isNamed ? undefined : bolts.find(({ name }) => name === typed[0]?.['designation']);
  const choose = (value: string) => {
    const bolt = bolts.find(({ id }) => id === value);
    onChange(bolt ? [formFrom(fields, threadOfBolt(bolt), hand)] : '');
  };
  return (
    <div className="named-field">
      {children}
      {bolts.length > 0 ? (
        <Select
          label={t('bench.thread-choose')}
          value={chosen?.id ?? ''}
          options={[
            { value: '', label: t('bench.thread-unchosen') },
            ...bolts.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onChange={choose}
        />
      ) : null}
      <div className="actions">
        <Button kind="quiet" onPress={() => onChange(isNamed ? [blankForm(fields)] : '')}>
          {t(isNamed ? 'bench.thread-own' : 'bench.thread-by-designation')}
        </Button>
      </div>
    </div>
  );
}
