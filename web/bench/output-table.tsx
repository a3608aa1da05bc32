import { remarkSchema, sayRemark } from '@clampwright/core/language';
import { type Language, showShare } from '@clampwright/core/quantity';
import { z } from 'zod';
import { useLanguage } from '../app/language.ts';
import { shownFigure } from './shown-figure.ts';
import { TableFrame } from './table-frame.tsx';
import { isShare, unitInName } from './unit-in-name.ts';
import { toShown, type Units, unitOf } from './units.ts';
import { useBenchWords } from './words.ts';

/** A row that carries a remark: its sentence in the language in place of code and figures, its field by name. */
function saidIn(row: Row, language: Language, nameOf: (field: string) => string): Row {
  const remark = rowSchema.safeParse(row);
  if (!remark.success) return row;
  const { code: _code, figures: _figures, field, ...rest } = row;
  return {
    ...rest,
    ...(typeof field === 'string' ? { field: nameOf(field) } : {}),
    message: sayRemark(remark.data, language),
  };
}

const rowSchema = z.object(remarkSchema.shape);

type Row = Readonly<Record<string, unknown>>;

interface OutputTableProps {
  readonly label: string;
  readonly rows: readonly Row[];
  readonly units: Units;
}

const LONG = 40;
const isLong = (value: unknown): boolean =>
  (typeof value === 'string' && value.length > LONG) ||
  (Array.isArray(value) && value.length > LONG / 4) ||
  remarkSchema.safeParse(value).success;

/** A table within a row has no room there; the JSON tells it. */
const isTable = (value: unknown): boolean =>
  Array.isArray(value) && value.some((one) => typeof one === 'object' && one !== null);

/** Rows of a result, one column a field, its unit in the head. */
export function OutputTable({ label, rows, units }: OutputTableProps) {
  const words = useBenchWords();
  const language = useLanguage();
  const told = rows.map((row) => saidIn(row, language, words.field));
  const names = [...new Set(told.flatMap((row) => Object.keys(row).filter((name) => !isTable(row[name]))))];
  const cell = (name: string, value: unknown): string => {
    if (typeof value === 'number' && isShare(name)) return showShare(value, language);
    if (typeof value === 'number') return shownFigure(toShown(value, name, units), language);
    if (typeof value === 'boolean') return words.value(value ? 'yes' : 'no');
    if (Array.isArray(value)) return value.map((one: unknown) => cell(name, one)).join(' ');
    const remark = remarkSchema.safeParse(value);
    if (remark.success) return sayRemark(remark.data, language);
    return typeof value === 'string' ? words.value(value) : '–';
  };
  const head = (name: string) => {
    const unit = unitOf(name, units) ?? unitInName(name);
    const shown = unit === 'deg' ? '°' : unit;
    return shown === undefined ? words.field(name) : `${words.field(name)}, ${shown}`;
  };
  return (
    <TableFrame label={label}>
      <table className="table">
        <thead>
          <tr>
            {names.map((name) => (
              <th key={name} scope="col">
                {head(name)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {told.map((row, index) => (
            <tr key={index}>
              {names.map((name) => (
                <td key={name} className={isLong(row[name]) ? 'table-note' : undefined}>
                  {cell(name, row[name])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
