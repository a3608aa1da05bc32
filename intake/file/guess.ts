import { ok, type Result } from '@clampwright/core/failure';
import { angleUnitOf, guessColumns, type KnownColumn, torqueUnitOf, unitInName } from './guess-columns.ts';
import { guessDecimal } from './guess-decimal.ts';
import { type GuessedTime, guessTime } from './guess-time.ts';
import { headTable } from './head-table.ts';
import { COLUMN_FIELDS, type Column, type ColumnField, type WrittenMapping } from './mapping.ts';

/** Something of the proposal that a person has to look at. */
export interface Doubt {
  readonly field: ColumnField | 'encoding' | 'delimiter' | 'decimalSign' | 'zone';
  readonly message: string;
}

/** A proposal for the screen; never used to judge before somebody has said yes to it. */
export interface Guess {
  /** What was found; `torque` is missing when no column is known to be it. */
  readonly mapping: Partial<Omit<WrittenMapping, 'name'>>;
  /** False as long as anything is open. */
  readonly sure: boolean;
  readonly doubts: readonly Doubt[];
  /** Names of the columns; undefined: there is no header row. */
  readonly header: readonly string[] | undefined;
  /** The first rows of figures. */
  readonly rows: readonly (readonly string[])[];
}

export interface GuessOptions {
  /** Taken for times without one: the zone of whoever looks. */
  readonly zone: string;
  /** Taken for the start of elapsed seconds, UTC with three decimals. */
  readonly now: string;
}

const SHOWN_ROWS = 8;

/**
 * Proposes how a file is to be read, by its first bytes: encoding, delimiter, decimal sign, and columns by the usual
 * words in English, German, French and Spanish.
 *
 * @param firstBytes some kilobytes; more make it surer
 * @returns refused when the bytes are no text, or hold no row
 */
export function guessMapping(firstBytes: Uint8Array, options: GuessOptions): Result<Guess> {
  const table = headTable(firstBytes);
  if (!table.ok) return table;
  const { encoding, delimiter, header, linesBefore, rows } = table.value;
  const known = guessColumns(table.value);
  const decimal = guessDecimal(['torque', 'angle'].flatMap((role) => columnOf(known, role)?.cells ?? []));
  const time = timeOf(known, options);
  const mapping = {
    delimiter: delimiter.delimiter,
    encoding: encoding.encoding,
    decimalSign: decimal.sign,
    linesBefore,
    headerRow: header !== undefined,
    rows: rowsMapping(known, time),
    ...placeMapping(known),
    ...figureMapping(known),
    ...(time?.time ? { time: time.time } : {}),
    ignored: known.filter(({ role }) => role === 'none').map(({ column }) => column),
  };
  const doubts = [
    ...(encoding.sure ? [] : [doubt('encoding', 'The file is not UTF-8; a western encoding is taken.')]),
    ...(delimiter.sure ? [] : [doubt('delimiter', 'No delimiter cuts the rows evenly.')]),
    ...(decimal.doubt === undefined ? [] : [doubt('decimalSign', decimal.doubt)]),
    ...(time?.doubt === undefined ? [] : [doubt('time', time.doubt)]),
    ...columnDoubts(known),
  ];
  const shown = rows.slice(0, SHOWN_ROWS).map((row) => [...row.cells]);
  return ok({ mapping, sure: doubts.length === 0, doubts, header, rows: shown });
}

const doubt = (field: Doubt['field'], message: string): Doubt => ({ field, message });

const columnOf = (known: readonly KnownColumn[], role: string): KnownColumn | undefined =>
  known.find((column) => column.role === role);

function timeOf(known: readonly KnownColumn[], { zone, now }: GuessOptions): GuessedTime | undefined {
  const time = columnOf(known, 'time');
  return time && guessTime(time.column, time.cells, zone, now);
}

function placeMapping(known: readonly KnownColumn[]): Partial<WrittenMapping> {
  const fields = ['position', 'joint', 'stage', 'round', 'wrenchSerial'] as const;
  return Object.fromEntries(fields.flatMap((field) => columnEntry(known, field)));
}

function figureMapping(known: readonly KnownColumn[]): Partial<WrittenMapping> {
  const torqueName = columnOf(known, 'torque')?.name ?? '';
  const angleName = columnOf(known, 'angle')?.name ?? '';
  const torqueColumn = columnOf(known, 'torqueUnit')?.column;
  const angleColumn = columnOf(known, 'angleUnit')?.column;
  return {
    ...Object.fromEntries((['torque', 'angle'] as const).flatMap((field) => columnEntry(known, field))),
    torqueUnit:
      torqueColumn === undefined ? { unit: unitInName(torqueName, torqueUnitOf) ?? 'N·m' } : { column: torqueColumn },
    angleUnit:
      angleColumn === undefined ? { unit: unitInName(angleName, angleUnitOf) ?? 'deg' } : { column: angleColumn },
  };
}

function columnEntry(known: readonly KnownColumn[], field: ColumnField): readonly (readonly [ColumnField, Column])[] {
  const found = columnOf(known, field);
  return found ? [[field, found.column]] : [];
}

/** Samples have a time and an angle, and a curve several of them, one after the other. */
function rowsMapping(
  known: readonly KnownColumn[],
  time: GuessedTime | undefined,
): NonNullable<WrittenMapping['rows']> {
  const curve = columnOf(known, 'curveBy');
  const repeats = curve?.cells.some((cell, i, all) => cell !== '' && cell === all[i + 1] && cell === all[i + 2]);
  return curve && repeats && time?.time && columnOf(known, 'angle')
    ? { each: 'sample', curveBy: curve.column }
    : { each: 'pull' };
}

function columnDoubts(known: readonly KnownColumn[]): readonly Doubt[] {
  const torque = columnOf(known, 'torque');
  const hasUnit = columnOf(known, 'torqueUnit') ?? unitInName(torque?.name ?? '', torqueUnitOf);
  const doubled = COLUMN_FIELDS.filter((field) => known.filter(({ role }) => role === field).length > 1);
  return [
    ...(torque ? [] : [doubt('torque', 'No column is known by its name to be the torque.')]),
    ...(hasUnit ? [] : [doubt('torqueUnit', 'No unit of torque stands in the file; N·m is taken.')]),
    ...doubled.map((field) => doubt(field, 'More than one column could be it; the first is taken.')),
  ];
}
