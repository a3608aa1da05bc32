import { useId } from 'react';

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly onChange: (value: Value) => void;
}

/** One of a few, all in sight side by side. */
export function Choice<Value extends string>({ label, value, options, onChange }: ChoiceProps<Value>) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend className="unseen">{label}</legend>
      {options.map((option) => (
        <label key={option.value} className="choice-option">
          <input
            type="radio"
            name={name}
            className="unseen"
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </fieldset>
  );
}
