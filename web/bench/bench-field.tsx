import type { Failure } from '@clampwright/core/failure';
import { showNumber, type Unit } from '@clampwright/core/quantity';
import { memo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import type { Field } from './fields.ts';
import { FigureField } from './figure-field.tsx';
import type { BenchForm, Hand } from './input.ts';
import { UncertainField } from './uncertain-field.tsx';
import { unitInName } from './unit-in-name.ts';
import { useBenchWords } from './words.ts';

/** What every field of a calculation is given. */
export interface FieldProps {
  readonly hand: Hand;
  readonly unreadable: readonly string[];
  /** What the calculation refused, beside its field. */
  readonly failure: Failure | undefined;
  /** This and the next are kept the same from one drawing to the next: only the field that changes is drawn anew. */
  readonly onField: (name: string, typed: BenchForm[string]) => void;
  readonly onUnit: (name: string, unit: Unit) => void;
}

interface BenchFieldProps extends FieldProps {
  readonly field: Field;
  readonly path: string;
  /** Text, or for a figure with its uncertainty one row of texts. */
  readonly typed: BenchForm[string];
}

/** One input of a calculation. */
export const BenchField = memo(function BenchField(props: BenchFieldProps) {
  const { field, typed, hand, onField, onUnit } = props;
  const { name, shape } = field;
  const onChange = (changed: BenchForm[string]) => onField(name, changed);
  const words = useBenchWords();
  const { problem, leave } = useProblem(props);
  const label = words.field(name);
  const told = {
    name,
    label,
    isRequired: field.isNeeded,
    hint: words.hint(name),
    problem,
    hand,
    onUnit,
    onLeave: leave,
  };
  if (typeof typed !== 'string') {
    if (shape.kind !== 'uncertain') return null;
    return <UncertainField {...told} shape={shape} form={typed[0] ?? {}} onChange={(changed) => onChange([changed])} />;
  }
  if (shape.kind === 'number') return <FigureField {...told} shape={shape} typed={typed} onChange={onChange} />;
  if (shape.kind === 'choice' || shape.kind === 'yes-no') {
    return <ChoiceField field={field} label={label} problem={problem} typed={typed} onChange={onChange} />;
  }
  return (
    <TextField
      label={label}
      isRequired={field.isNeeded}
      hint={told.hint}
      problem={problem}
      value={typed}
      onChange={onChange}
      onBlur={leave}
      isLong={shape.kind === 'json' || shape.kind === 'numbers' || shape.kind === 'lines'}
      after={unitInName(name)}
    />
  );
});

interface ChoiceFieldProps {
  readonly field: Field;
  readonly label: string;
  readonly problem: string | undefined;
  readonly typed: string;
  readonly onChange: (typed: string) => void;
}

function ChoiceField({ field: { name, isNeeded, shape }, label, problem, typed, onChange }: ChoiceFieldProps) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const known =
    shape.kind === 'choice'
      ? shape.options.map((value) => ({ value, label: words.value(value) }))
      : [
          { value: 'yes', label: t('bench.yes') },
          { value: 'no', label: t('bench.no') },
        ];
  return (
    <Select
      label={label}
      isRequired={isNeeded}
      hint={words.hint(name)}
      problem={problem}
      value={typed}
      options={isNeeded ? known : [{ value: '', label: t('bench.unset') }, ...known]}
      onChange={onChange}
    />
  );
}

/** What cannot be read is told at once, what is missing once the field was left. */
function useProblem({ field, path, typed, unreadable, failure }: BenchFieldProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [wasLeft, setLeft] = useState(false);
  const leave = () => setLeft(true);
  const text = textOf(typed);
  const isHere = (at: string) => at === path || (field.shape.kind === 'uncertain' && at.startsWith(`${path}.`));
  if (unreadable.some(isHere)) {
    const problem =
      field.shape.kind === 'json'
        ? t('bench.no-json')
        : t('fault.number', { text, example: showNumber(12.5, language) });
    return { problem: wasLeft ? problem : undefined, leave };
  }
  if (text === '') return { problem: wasLeft && field.isNeeded ? t('fault.needed') : undefined, leave };
  const isMine = failure?.kind === 'invalid' && isHere(failure.field);
  return { problem: isMine ? t('bench.refused', failure) : undefined, leave };
}

/** What is typed, for whoever is told that it cannot be read. */
function textOf(typed: BenchForm[string]): string {
  if (typeof typed === 'string') return typed.trim();
  const parts = Object.values(typed[0] ?? {}).map((part) => (typeof part === 'string' ? part : ''));
  return parts.join(' ').trim();
}
