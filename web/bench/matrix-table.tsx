import { useLanguage } from '../app/language.ts';
import { shownFigure } from './shown-figure.ts';
import { TableFrame } from './table-frame.tsx';
import { unitInName } from './unit-in-name.ts';
import { toShown, type Units, unitOf } from './units.ts';
import { useBenchWords } from './words.ts';

interface MatrixTableProps {
  readonly name: string;
  readonly rows: readonly (readonly unknown[])[];
  readonly units: Units;
}

/** Figures by two numbers that count from 1, such as force by pull and position. */
export function MatrixTable({ name, rows, units }: MatrixTableProps) {
  const words = useBenchWords();
  const language = useLanguage();
  const unit = unitOf(name, units) ?? unitInName(name);
  const widest = Math.max(0, ...rows.map((row) => row.length));
  const figure = (value: unknown) =>
    typeof value === 'number' ? shownFigure(Number(toShown(value, name, units).toPrecision(5)), language) : '';
  return (
    <TableFrame label={words.field(name)}>
      <table className="table">
        <thead>
          <tr>
            <th scope="col">{unit}</th>
            {Array.from({ length: widest }, (_, index) => (
              <th key={index} scope="col">
                {index + 1}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              <th scope="row">{index + 1}</th>
              {row.map((value, column) => (
                <td key={column}>{figure(value)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
