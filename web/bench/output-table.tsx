import { SLIP_KINDS } from '@clampwright/core/joint';
import { remarkSchema, sayCitation, sayMechanics, sayRemark, saySlip } from '@clampwright/core/language';
import { type Language, showShare } from '@clampwright/core/quantity';
import { z } from 'zod';
import { useLanguage } from '../app/language.ts';
import { shownFigure } from './shown-figure.ts';
import { TableFrame } from './table-frame.tsx';
import { isShare, unitInName } from './unit-in-name.ts';
import { toShown, type Units, unitOf } from './units.ts';
import { useBenchWords } from './words.ts';

/** A row that carries a remark or a slip: its sentence in the language in place of code and figures, its field by name. */
function saidIn(row: Row, language: Language, nameOf: (field: string) => string): Row {
  const slip = slipSchema.safeParse(row);
  if (slip.success) return { ...row, message: saySlip(slip.data, language) };
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
const slipSchema = z.object({
  kind: z.enum(SLIP_KINDS),
  meant: z.string(),
  taken: z.string().optional(),
  torqueNm: z.number(),
  utilization: z.number(),
});

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

/** Columns that tell where something stands. */
const CITED: ReadonlySet<string> = new Set(['clause', 'source']);

/** A table within a row has no room there; the JSON tells it. */
const isTable = (value: unknown): boolean =>
  Array.isArray(value) && value.some((one) => typeof one === 'object' && one !== null);

/** Rows of a result, one column a field, its unit in the head; sentences stand below their row, where they have room. */
export function OutputTable({ label, rows, units }: OutputTableProps) {
  const words = useBenchWords();
  const language = useLanguage();
  const told = rows.map((row) => saidIn(row, language, words.field));
  const names = [...new Set(told.flatMap((row) => Object.keys(row).filter((name) => !isTable(row[name]))))];
  const sentences = names.filter((name) => CITED.has(name) || told.some((row) => isLong(row[name])));
  const columns = names.filter((name) => !sentences.includes(name));
  const cell = (name: string, value: unknown): string => {
    if (typeof value === 'number' && isShare(name)) return showShare(value, language);
    if (typeof value === 'number') return shownFigure(toShown(value, name, units), language);
    if (typeof value === 'boolean') return words.value(value ? 'yes' : 'no');
    if (Array.isArray(value)) return value.map((one: unknown) => cell(name, one)).join(' ');
    const remark = remarkSchema.safeParse(value);
    if (remark.success) return sayRemark(remark.data, language);
    if (typeof value !== 'string') return '–';
    return CITED.has(name) ? sayCitation(value, language) : words.value(value);
  };
  const head = (name: string) => {
    const unit = unitOf(name, units) ?? unitInName(name);
    const shown = unit === 'deg' ? '°' : unit;
    return shown === undefined ? words.field(name) : `${words.field(name)}, ${shown}`;
  };
  const sentence = (name: string, value: unknown): string =>
    sentences.length === 1
      ? cell(name, value)
      : sayMechanics(language, 'plot.reads', { name: words.field(name), value: cell(name, value) });
  return (
    <TableFrame label={label}>
      <table className="table">
        <thead>
          <tr>
            {columns.map((name) => (
              <th key={name} scope="col">
                {head(name)}
              </th>
            ))}
          </tr>
        </thead>
        {told.map((row, index) => (
          <tbody key={index}>
            <tr>
              {columns.map((name) => (
                <td key={name}>{cell(name, row[name])}</td>
              ))}
            </tr>
            {sentences
              .filter((name) => row[name] !== undefined)
              .map((name) => (
                <tr key={name} className="table-below">
                  <td colSpan={Math.max(1, columns.length)}>
                    <p className="table-note">{sentence(name, row[name])}</p>
                  </td>
                </tr>
              ))}
          </tbody>
        ))}
      </table>
    </TableFrame>
  );
}
