import type { HTMLAttributes, ReactNode } from 'react';
import { FieldError } from 'react-aria-components/FieldError';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { Text } from 'react-aria-components/Text';
import { TextArea } from 'react-aria-components/TextArea';
import { TextField as AriaTextField } from 'react-aria-components/TextField';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onBlur?: () => void;
  /** A word of help that is always there. */
  readonly hint?: string | undefined;
  /** What is wrong and what it wants; marks the field. */
  readonly problem?: string | undefined;
  readonly type?: 'text' | 'password' | 'date' | 'search';
  readonly inputMode?: HTMLAttributes<HTMLInputElement>['inputMode'];
  /** More than one line. */
  readonly isLong?: boolean;
  readonly isRequired?: boolean;
  readonly isDisabled?: boolean;
  /** Stands behind the text, such as a unit. */
  readonly after?: ReactNode;
  readonly size?: 'usual' | 'narrow' | 'work';
}

/** A labelled line of text; problem and hint are tied to it for those who hear the page. */
export function TextField(props: TextFieldProps) {
  const { label, hint, problem, inputMode, isLong, after, size = 'usual', onBlur, ...field } = props;
  return (
    <AriaTextField
      {...field}
      {...(onBlur ? { onBlur: () => onBlur() } : {})}
      className={`field field-${size}`}
      isInvalid={problem !== undefined}
      autoComplete="off"
      validationBehavior="aria"
    >
      <Label className="field-label">{label}</Label>
      <span className="field-line">
        {isLong ? (
          <TextArea className="field-input" rows={3} />
        ) : (
          <Input className="field-input" inputMode={inputMode} spellCheck={false} />
        )}
        {after ? <span className="field-after">{after}</span> : null}
      </span>
      {hint ? (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      ) : null}
      <FieldError className="field-problem">{problem}</FieldError>
    </AriaTextField>
  );
}
