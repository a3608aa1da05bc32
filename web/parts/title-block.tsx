import type { ReactNode } from 'react';

export interface TitleBlockCell {
  readonly label: string;
  readonly value: ReactNode;
}

/** Facts in ruled cells, as in the corner of a drawing. Cells without a value are left out. */
export const TitleBlock = ({ cells }: { readonly cells: readonly TitleBlockCell[] }) => (
  <dl className="title-block">
    {cells
      .filter((cell) => cell.value !== undefined && cell.value !== '')
      .map((cell) => (
        <div key={cell.label}>
          <dt>{cell.label}</dt>
          <dd>{cell.value}</dd>
        </div>
      ))}
  </dl>
);
