import { sayFailure } from '@clampwright/core/language';
import { readNumber } from '@clampwright/core/quantity';
import { useState } from 'react';
import { useLanguage } from '../app/language.ts';
import { TextField, type TextFieldProps } from './text-field.tsx';

interface DecimalFieldProps extends Omit<TextFieldProps, 'type' | 'inputMode' | 'isLong' | 'after'> {
  /** Shown behind the figure. */
  readonly unit?: string | undefined;
}

/**
 * A figure typed as text. What cannot be read in the language on screen, or only by guessing, is refused with the
 * reason once the field is left; the caller reads the text with `readNumber` or one of its kin and never gets a guess.
 */
export function DecimalField({ unit, problem, onBlur, onChange, ...field }: DecimalFieldProps) {
  const language = useLanguage();
  const [wasLeft, setLeft] = useState(false);
  const read = field.value.trim() === '' ? undefined : readNumber(field.value, language);
  const refusal = wasLeft && read && !read.ok ? sayFailure(read.failure, language) : undefined;
  return (
    <TextField
      {...field}
      inputMode="decimal"
      after={unit}
      problem={problem ?? refusal}
      onChange={(text) => {
        setLeft(false);
        onChange(text);
      }}
      onBlur={() => {
        setLeft(true);
        onBlur?.();
      }}
    />
  );
}
