import { DecimalField } from '../parts/decimal-field.tsx';
import { TextField, type TextFieldProps } from '../parts/text-field.tsx';
import { useFaults } from './faults.tsx';
import './forms.css';

interface AtField {
  /** Path in the joint, such as `fastener.thread`. */
  readonly field: string;
}

/** A line of text that tells its own fault. */
export function FormText({ field, ...props }: AtField & TextFieldProps) {
  const faults = useFaults();
  return <TextField {...props} problem={faults.problem(field)} onBlur={() => faults.leave(field)} />;
}

/** A figure that tells its own fault. */
export function FormFigure({
  field,
  unit,
  size = 'narrow',
  ...props
}: AtField & Omit<TextFieldProps, 'after'> & { readonly unit?: string }) {
  const faults = useFaults();
  return (
    <DecimalField
      {...props}
      unit={unit}
      problem={faults.problem(field)}
      onBlur={() => faults.leave(field)}
      size={size}
    />
  );
}

/** What is wrong with a place as a whole. */
export function PlaceProblems({ place, shown = [] }: { readonly place: string; readonly shown?: readonly string[] }) {
  const problems = useFaults().problems(place, shown);
  if (problems.length === 0) return null;
  return (
    <ul className="place-problems">
      {problems.map((problem) => (
        <li key={problem} className="field-problem">
          {problem}
        </li>
      ))}
    </ul>
  );
}
