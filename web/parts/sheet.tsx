import { type ReactNode, useId } from 'react';

interface SheetProps {
  readonly title: string;
  readonly children: ReactNode;
  /** At the right of the title. */
  readonly side?: ReactNode;
  readonly level?: 2 | 3;
  /** Lets an address lead here. */
  readonly anchor?: string;
}

/** A part of a page under its own heading. */
export function Sheet({ title, children, side, level = 2, anchor }: SheetProps) {
  const id = useId();
  const Title = level === 2 ? 'h2' : 'h3';
  return (
    <section id={anchor} className="sheet" aria-labelledby={id}>
      <div className="sheet-head">
        <Title id={id} className={level === 2 ? 'sheet-title' : 'sheet-subtitle'}>
          {title}
        </Title>
        {side}
      </div>
      {children}
    </section>
  );
}
