import type { ReactNode } from 'react';
import './state-word.css';

/** `good`: in order. `soon`: wants care before long. `bad`: must not be used. `open`: not finished. */
export type StateKind = 'good' | 'soon' | 'bad' | 'open';

const SIGNS = {
  good: 'M3 10.5 L8 15.5 L17 4.5',
  soon: 'M10 4 V10 L14 13 M10 1.5 A8.5 8.5 0 1 0 10.1 1.5',
  bad: 'M6.5 1.5 H13.5 L18.5 6.5 V13.5 L13.5 18.5 H6.5 L1.5 13.5 V6.5 Z M7 7 L13 13 M13 7 L7 13',
  open: 'M3 17 L4 13 L14 3 L17 6 L7 16 Z',
} as const satisfies Record<StateKind, string>;

/** A state of a thing that is no verdict: sign, word and colour together. */
export const StateWord = ({ kind, children }: { readonly kind: StateKind; readonly children: ReactNode }) => (
  <span className={`state-word state-word-${kind}`}>
    <svg viewBox="0 0 20 20" aria-hidden="true">
      <path d={SIGNS[kind]} />
    </svg>
    <span>{children}</span>
  </span>
);
