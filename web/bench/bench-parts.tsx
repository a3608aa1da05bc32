import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { FieldProps } from './bench-field.tsx';
import { BenchFields } from './bench-fields.tsx';
import type { FieldPart } from './field-parts.ts';
import type { Field } from './fields.ts';
import type { BenchForm } from './input.ts';

interface BenchPartsProps extends FieldProps {
  readonly parts: readonly FieldPart[];
  readonly form: BenchForm;
}

/** A long form in parts that open and close. */
export function BenchParts({ parts, ...rest }: BenchPartsProps) {
  return parts.map((part) => <BenchPart key={part.name} part={part} {...rest} />);
}

function BenchPart({ part, ...rest }: Omit<BenchPartsProps, 'parts'> & { readonly part: FieldPart }) {
  const { t } = useTranslation('lead');
  const [chosen, setChosen] = useState<boolean>();
  const filled = part.fields.filter(({ name }) => isFilled(rest.form[name])).length;
  const { failure } = rest;
  const isAccused = failure?.kind === 'invalid' && part.fields.some((field) => isAt(field, failure.field));
  const isOpen = chosen ?? (filled > 0 || part.fields.some(({ isNeeded }) => isNeeded));
  return (
    <details
      className="bench-part"
      open={isOpen || isAccused}
      onToggle={(event) => {
        const { open } = event.currentTarget;
        if (open !== (isOpen || isAccused)) setChosen(open);
      }}
    >
      <summary>
        <span className="bench-part-title">{t(`bench.part.${part.name}`)}</span>
        <span className="bench-part-filled">{t('bench.filled', { filled, count: part.fields.length })}</span>
      </summary>
      <BenchFields fields={part.fields} {...rest} />
    </details>
  );
}

const isAt = ({ name }: Field, place: string) =>
  place === name || place.startsWith(`${name}.`) || place.startsWith(`${name}[`);

const isFilled = (typed: BenchForm[string] | undefined): boolean =>
  typeof typed === 'string'
    ? typed.trim() !== ''
    : (typed ?? []).some((row) => Object.values(row).some((inner) => isFilled(inner)));
