import { useState } from 'react';
import { useLanguage } from '../app/language.ts';
import { numberFault } from './figure-fault.ts';
import { TextField, type TextFieldProps } from './text-field.tsx';
import { useFigureWords } from './use-figure-words.ts';

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
  const words = useFigureWords();
  const refusal = wasLeft && field.value.trim() !== '' ? words(numberFault(field.value, language)) : undefined;
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
