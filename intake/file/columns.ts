import { invalid, ok, type Result } from '@clampwright/core/failure';
import { type Column, type ColumnField, type Mapping, usedColumns } from './mapping.ts';

/** Index from 0 of each column that is read. */
export interface Columns {
  readonly index: Readonly<Partial<Record<ColumnField, number>>>;
  /** Cells that a whole row has: as many as the header, or as the first row of figures. */
  readonly width: number;
}

const plain = (name: string): string => name.trim().toLowerCase();

/**
 * Finds the mapping's columns.
 *
 * @param first the header row, or the first row of figures when there is none
 * @returns refused when a column is not there, or its name stands over two
 */
export function findColumns(mapping: Mapping, first: readonly string[]): Result<Columns> {
  const names = mapping.headerRow ? first.map(plain) : [];
  const index: Partial<Record<ColumnField, number>> = {};
  for (const [field, column] of usedColumns(mapping)) {
    const found = findColumn(column, names, first.length, field);
    if (!found.ok) return found;
    index[field] = found.value;
  }
  return ok({ index, width: first.length });
}

function findColumn(column: Column, names: readonly string[], width: number, field: ColumnField): Result<number> {
  if (typeof column === 'number') {
    return column <= width
      ? ok(column - 1)
      : invalid(field, `There is no column ${column}; the first row has ${width}.`, `1 to ${width}`);
  }
  const at = names.indexOf(plain(column));
  if (at < 0)
    return invalid(
      field,
      `No column is named “${column}”; there are ${names.map((name) => `“${name}”`).join(', ')}.`,
      'a name in the header row',
    );
  if (names.indexOf(plain(column), at + 1) >= 0)
    return invalid(field, `Two columns are named “${column}”.`, 'the number of the column');
  return ok(at);
}

/**
 * Whether a row has the shape of the table. More cells than the header come from a delimiter within a figure, such
 * as a decimal comma in a file with commas: every column after it would be off by one.
 *
 * @returns what is wrong with it
 */
export function misshapen(cells: readonly string[], { index, width }: Columns): string | undefined {
  const extra = cells.slice(width).some((cell) => cell.trim() !== '');
  if (extra)
    return `The row has ${cells.length} cells, the first one ${width}. Is the delimiter also the decimal sign?`;
  const needed = Math.max(...Object.values(index)) + 1;
  if (cells.length < needed) return `The row has ${cells.length} cells; it is cut short, as ${needed} are needed.`;
  return undefined;
}
