import type { ReactNode } from 'react';
import './ledger.css';

/** A ruled list, one thing a line. */
export const Ledger = ({ children, label }: { readonly children: ReactNode; readonly label: string }) => (
  <ul className="ledger" aria-label={label}>
    {children}
  </ul>
);

interface LedgerRowProps {
  /** The name; a link in it makes the whole line lead there. */
  readonly title: ReactNode;
  /** Short facts under the name. */
  readonly facts?: readonly ReactNode[];
  /** Where it stands, such as a `StateWord`. */
  readonly state?: ReactNode;
  /** Buttons or figures at the end of the line. */
  readonly side?: ReactNode;
}

export const LedgerRow = ({ title, facts = [], state, side }: LedgerRowProps) => (
  <li className="ledger-row">
    <span className="ledger-title">{title}</span>
    {state ? <span className="ledger-state">{state}</span> : null}
    {facts.length > 0 ? (
      <span className="ledger-facts">
        {facts.map((fact, index) => (
          // Facts have no identity of their own and never change places.
          <span key={index}>{fact}</span>
        ))}
      </span>
    ) : null}
    {side ? <span className="ledger-side">{side}</span> : null}
  </li>
);
