import type { ReactNode } from 'react';

interface TableFrameProps {
  readonly label: string;
  readonly children: ReactNode;
}

/** A table that may be wider than its place; whoever has no pointer scrolls it with the arrow keys. */
export const TableFrame = ({ label, children }: TableFrameProps) => (
  // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what scrolls must be reachable with the keyboard
  <section className="table-frame" aria-label={label} tabIndex={0}>
    {children}
  </section>
);
