import { useId } from 'react';

export interface SelectOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly isDisabled?: boolean;
}

interface SelectProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly SelectOption<Value>[];
  readonly onChange: (value: Value) => void;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly isRequired?: boolean;
  readonly isDisabled?: boolean;
  readonly size?: 'usual' | 'narrow' | 'wide' | 'work';
}

/** One of a few. The browser's own list: it is large under a glove and every reader of screens knows it. */
export function Select<Value extends string>(props: SelectProps<Value>) {
  const id = useId();
  const { hint, problem } = props;
  const described = [hint ? `${id}-hint` : '', problem ? `${id}-problem` : ''].filter(Boolean).join(' ');
  return (
    <div className={`field field-${props.size ?? 'usual'}`}>
      <label className="field-label" htmlFor={id}>
        {props.label}
      </label>
      <select
        id={id}
        className="field-input field-select"
        value={props.value}
        disabled={props.isDisabled}
        aria-required={props.isRequired}
        aria-invalid={problem ? true : undefined}
        aria-describedby={described || undefined}
        onChange={(event) => {
          const chosen = props.options.find((option) => option.value === event.target.value);
          if (chosen) props.onChange(chosen.value);
        }}
      >
        {props.options.map((option) => (
          <option key={option.value} value={option.value} disabled={option.isDisabled}>
            {option.label}
          </option>
        ))}
      </select>
      {hint ? (
        <span id={`${id}-hint`} className="field-hint">
          {hint}
        </span>
      ) : null}
      {problem ? (
        <span id={`${id}-problem`} className="field-problem">
          {problem}
        </span>
      ) : null}
    </div>
  );
}
