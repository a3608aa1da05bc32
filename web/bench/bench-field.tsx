import type { Failure } from '@clampwright/core/failure';
import { showNumber } from '@clampwright/core/quantity';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import type { Field } from './fields.ts';
import { unitInName } from './unit-in-name.ts';
import { useBenchWords } from './words.ts';

interface BenchFieldProps {
  readonly field: Field;
  readonly path: string;
  readonly typed: string;
  readonly unreadable: readonly string[];
  readonly failure: Failure | undefined;
  readonly onChange: (typed: string) => void;
}

/** One input of a calculation. */
export function BenchField(props: BenchFieldProps) {
  const { field, typed, onChange } = props;
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const problems = useProblem(props);
  const name = words.field(field.name);
  const label = field.isNeeded ? name : t('bench.optional', { name });
  const options = optionsOf(field);
  if (options) {
    const unset = field.isNeeded ? [] : [{ value: '', label: t('bench.unset') }];
    const labels = { yes: t('bench.yes'), no: t('bench.no') };
    return (
      <Select
        label={label}
        hint={words.hint(field.name)}
        problem={problems.problem}
        value={typed}
        options={[
          ...unset,
          ...options.map((value) => ({
            value,
            label: value === 'yes' || value === 'no' ? labels[value] : words.value(value),
          })),
        ]}
        onChange={onChange}
      />
    );
  }
  const isFigure = field.shape.kind === 'number' || field.shape.kind === 'measured';
  return (
    <TextField
      label={label}
      hint={words.hint(field.name)}
      problem={problems.problem}
      value={typed}
      onChange={onChange}
      onBlur={problems.leave}
      isLong={field.shape.kind === 'json' || field.shape.kind === 'numbers'}
      {...(isFigure ? { inputMode: 'decimal', after: unitInName(field.name) } : {})}
    />
  );
}

function optionsOf({ shape }: Field): readonly string[] | undefined {
  if (shape.kind === 'choice') return shape.options;
  return shape.kind === 'yes-no' ? ['yes', 'no'] : undefined;
}

/** What cannot be read is told at once, what is missing once the field was left. */
function useProblem({ field, path, typed, unreadable, failure }: BenchFieldProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [wasLeft, setLeft] = useState(false);
  const leave = () => setLeft(true);
  if (unreadable.includes(path)) {
    const text = typed.trim();
    const problem =
      field.shape.kind === 'json'
        ? t('bench.no-json')
        : t('fault.number', { text, example: showNumber(12.5, language) });
    return { problem: wasLeft ? problem : undefined, leave };
  }
  if (typed.trim() === '') return { problem: wasLeft && field.isNeeded ? t('fault.needed') : undefined, leave };
  const isMine = failure?.kind === 'invalid' && failure.field === path;
  return { problem: isMine ? t('bench.refused', failure) : undefined, leave };
}
