import type { ReactNode } from 'react';

interface TickProps {
  readonly children: ReactNode;
  readonly isChosen: boolean;
  readonly onChange: (isChosen: boolean) => void;
  readonly isDisabled?: boolean;
}

/** A box to tick; the words belong to it, so that a glove finds it. */
export const Tick = ({ children, isChosen, onChange, isDisabled }: TickProps) => (
  <label className="tick">
    <input
      type="checkbox"
      checked={isChosen}
      disabled={isDisabled}
      onChange={(event) => onChange(event.target.checked)}
    />
    <span>{children}</span>
  </label>
);
