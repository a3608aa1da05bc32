import { showShare } from '@clampwright/core/quantity';
import { useLanguage } from '../app/language.ts';
import { shownFigure } from './shown-figure.ts';
import { TableFrame } from './table-frame.tsx';
import { isShare, unitInName } from './unit-in-name.ts';
import { toShown, type Units, unitOf } from './units.ts';
import { useBenchWords } from './words.ts';

interface OutputTableProps {
  readonly label: string;
  readonly rows: readonly Readonly<Record<string, unknown>>[];
  readonly units: Units;
}

const LONG = 40;
const isLong = (value: unknown): boolean =>
  (typeof value === 'string' && value.length > LONG) || (Array.isArray(value) && value.length > LONG / 4);

/** Rows of a result, one column a field, its unit in the head. */
export function OutputTable({ label, rows, units }: OutputTableProps) {
  const words = useBenchWords();
  const language = useLanguage();
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const cell = (name: string, value: unknown) => {
    if (typeof value === 'number' && isShare(name)) return showShare(value, language);
    if (typeof value === 'number') return shownFigure(toShown(value, name, units), language);
    if (typeof value === 'boolean') return words.value(value ? 'yes' : 'no');
    if (Array.isArray(value)) return value.join(' ');
    return typeof value === 'string' ? words.value(value) : '–';
  };
  const head = (name: string) => {
    const unit = unitOf(name, units) ?? unitInName(name);
    return unit === undefined ? words.field(name) : `${words.field(name)}, ${unit}`;
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
          {rows.map((row, index) => (
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
