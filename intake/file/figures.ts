import { invalid, ok, type Result } from '@clampwright/core/failure';
import { convert, readUnit, type Unit, unitsOf } from '@clampwright/core/quantity';
import type { Columns } from './columns.ts';
import { readDecimal } from './decimal.ts';
import type { ColumnField, Mapping } from './mapping.ts';
import { cellOf } from './place.ts';

/** A figure with its unit, as the file gives it and converted. */
export interface Figure {
  /** N·m or degrees. */
  readonly value: number;
  readonly number: number;
  readonly unit: Unit;
  readonly text: string;
  readonly unitText: string;
}

/** Reads one quantity of a row, sign as it stands. */
export type FigureReader = (cells: readonly string[]) => Result<Figure>;

/** Torque of a row, N·m. */
export const torqueReader = (mapping: Mapping, columns: Columns): FigureReader =>
  figureReader(mapping, columns, { figure: 'torque', unit: 'torqueUnit', quantity: 'torque', to: 'N·m' });

/** Angle of a row, degrees. */
export const angleReader = (mapping: Mapping, columns: Columns): FigureReader =>
  figureReader(mapping, columns, { figure: 'angle', unit: 'angleUnit', quantity: 'angle', to: 'deg' });

interface Wanted {
  readonly figure: 'torque' | 'angle';
  readonly unit: 'torqueUnit' | 'angleUnit';
  readonly quantity: 'torque' | 'angle';
  readonly to: Unit;
}

function figureReader(mapping: Mapping, columns: Columns, wanted: Wanted): FigureReader {
  const given = mapping[wanted.unit];
  const fixed = 'unit' in given ? given.unit : undefined;
  const readUnitOf = unitReader(wanted);
  return (cells) => {
    const text = cellOf(columns, cells, wanted.figure) ?? '';
    const number = readDecimal(text, mapping.decimalSign, wanted.figure);
    if (!number.ok) return number;
    const unitText = fixed ?? cellOf(columns, cells, wanted.unit) ?? '';
    const unit = fixed === undefined ? readUnitOf(unitText) : ok(fixed);
    if (!unit.ok) return unit;
    const value = convert(number.value, unit.value, wanted.to);
    return value.ok ? ok({ value: value.value, number: number.value, unit: unit.value, text, unitText }) : value;
  };
}

/** Units of a column; the one read last is remembered, as it hardly ever changes. */
function unitReader({ unit: field, quantity }: Wanted): (text: string) => Result<Unit> {
  let last: { readonly text: string; readonly unit: Result<Unit> } | undefined;
  return (text) => {
    if (last?.text !== text) last = { text, unit: unitOf(text, field, quantity) };
    return last.unit;
  };
}

function unitOf(text: string, field: ColumnField, quantity: Wanted['quantity']): Result<Unit> {
  const units = unitsOf(quantity);
  const unit = readUnit(text);
  if (unit.ok && units.includes(unit.value)) return unit;
  return invalid(field, `“${text}” is no unit of ${quantity}.`, units.join(', '));
}
