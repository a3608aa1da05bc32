import type { TorqueUnit } from '@clampwright/core/quantity';
import type { Column, Guess, Mapping, Role, TimeFormat, TimeMapping } from './mapping.ts';

/** One column of the file as it is shown: its name, if it has one, and what stands in its first rows. */
export interface ColumnForm {
  readonly name: string;
  readonly cells: readonly string[];
  readonly role: Role;
}

/** How a file is read, while it is being told. */
export interface MappingForm {
  readonly columns: readonly ColumnForm[];
  readonly delimiter: Mapping['delimiter'];
  readonly encoding: Mapping['encoding'];
  readonly decimalSign: Mapping['decimalSign'];
  readonly linesBefore: number;
  readonly headerRow: boolean;
  readonly torqueUnit: TorqueUnit;
  readonly angleUnit: 'deg' | 'rad' | 'turn';
  readonly signs: Mapping['signs'];
  readonly timeFormat: TimeFormat;
  readonly zone: string;
  /** Start of elapsed seconds, UTC. */
  readonly start: string;
}

export interface FormDefaults {
  readonly zone: string;
  readonly now: string;
}

/** The form filled with a proposal, or with a saved mapping over the columns of this file. */
export function formOf(guess: Guess, mapping: Partial<Mapping>, { zone, now }: FormDefaults): MappingForm {
  const { torqueUnit, angleUnit, time } = mapping;
  return {
    columns: columnsOf(guess, mapping),
    delimiter: mapping.delimiter ?? 'auto',
    encoding: mapping.encoding ?? 'auto',
    decimalSign: mapping.decimalSign ?? 'point',
    linesBefore: mapping.linesBefore ?? 0,
    headerRow: mapping.headerRow ?? guess.header !== undefined,
    torqueUnit: torqueUnit && 'unit' in torqueUnit ? torqueUnit.unit : 'N·m',
    angleUnit: angleUnit && 'unit' in angleUnit ? angleUnit.unit : 'deg',
    signs: mapping.signs ?? 'positive-tightens',
    timeFormat: time?.format ?? 'iso-8601',
    zone: time && 'zone' in time ? time.zone : zone,
    start: time && 'start' in time ? time.start : now,
  };
}

function columnsOf({ header, rows }: Guess, mapping: Partial<Mapping>): readonly ColumnForm[] {
  const width = Math.max(header?.length ?? 0, ...rows.map((row) => row.length));
  const roles = rolesIn(mapping);
  return Array.from({ length: width }, (_, index) => {
    const name = header?.[index] ?? '';
    const role = roles.find(([, column]) => isColumn(column, name, index))?.[0];
    return { name, cells: rows.map((row) => row[index] ?? ''), role: role ?? 'none' };
  });
}

const isColumn = (column: Column, name: string, index: number): boolean =>
  typeof column === 'number' ? column === index + 1 : plain(column) === plain(name);

const plain = (name: string): string => name.trim().toLowerCase();

function rolesIn(mapping: Partial<Mapping>): readonly (readonly [Role, Column])[] {
  const { rows, torqueUnit, angleUnit, time, torque, angle, position, joint, stage, round, wrenchSerial } = mapping;
  const all: readonly (readonly [Role, Column | undefined])[] = [
    ['curveBy', rows?.each === 'sample' ? rows.curveBy : undefined],
    ['torqueUnit', torqueUnit && 'column' in torqueUnit ? torqueUnit.column : undefined],
    ['angleUnit', angleUnit && 'column' in angleUnit ? angleUnit.column : undefined],
    ['time', time?.column],
    ['torque', torque],
    ['angle', angle],
    ['position', position],
    ['joint', joint],
    ['stage', stage],
    ['round', round],
    ['wrenchSerial', wrenchSerial],
  ];
  return all.flatMap(([role, column]) => (column === undefined ? [] : [[role, column] as const]));
}

/** A column given a role; whichever had it before loses it, as each role has but one column. */
export function withRole(form: MappingForm, index: number, role: Role): MappingForm {
  const columns = form.columns.map((column, at): ColumnForm => {
    if (at === index) return { ...column, role };
    return role !== 'none' && column.role === role ? { ...column, role: 'none' } : column;
  });
  return { ...form, columns };
}

/** What is still open before the file can be read. */
export type Missing = 'torque' | 'curve-time' | 'curve-angle' | 'zone';

export interface MappingReading {
  readonly mapping: Mapping | undefined;
  readonly missing: readonly Missing[];
}

/** The mapping that stands in the form. */
export function readMapping(form: MappingForm, name: string): MappingReading {
  const torque = columnWith(form, 'torque');
  const curveBy = columnWith(form, 'curveBy');
  const time = timeIn(form);
  const angle = columnWith(form, 'angle');
  const isZoned = !time || !('zone' in time) || isZone(time.zone);
  const missing: Missing[] = [
    ...(torque === undefined ? (['torque'] as const) : []),
    ...(curveBy !== undefined && !time ? (['curve-time'] as const) : []),
    ...(curveBy !== undefined && angle === undefined ? (['curve-angle'] as const) : []),
    ...(isZoned ? [] : (['zone'] as const)),
  ];
  if (torque === undefined || missing.length > 0) return { mapping: undefined, missing };
  const torqueUnit = columnWith(form, 'torqueUnit');
  const angleUnit = columnWith(form, 'angleUnit');
  const { delimiter, encoding, decimalSign, linesBefore, headerRow, signs } = form;
  const mapping: Mapping = {
    name,
    delimiter,
    encoding,
    decimalSign,
    linesBefore,
    headerRow,
    signs,
    torque,
    rows: curveBy === undefined ? { each: 'pull' } : { each: 'sample', curveBy },
    torqueUnit: torqueUnit === undefined ? { unit: form.torqueUnit } : { column: torqueUnit },
    angleUnit: angleUnit === undefined ? { unit: form.angleUnit } : { column: angleUnit },
    ...(angle === undefined ? {} : { angle }),
    ...(time ? { time } : {}),
    ...placeColumns(form),
    ignored: form.columns.flatMap((column, index) => (column.role === 'none' ? [reference(form, index)] : [])),
  };
  return { mapping, missing };
}

function placeColumns(form: MappingForm): Partial<Mapping> {
  const roles = ['position', 'joint', 'stage', 'round', 'wrenchSerial'] as const;
  return Object.fromEntries(
    roles.flatMap((role) => {
      const column = columnWith(form, role);
      return column === undefined ? [] : [[role, column] as const];
    }),
  );
}

function columnWith(form: MappingForm, role: Role): Column | undefined {
  const index = form.columns.findIndex((column) => column.role === role);
  return index < 0 ? undefined : reference(form, index);
}

/** By its name where that is the only one; the mapping then also fits a file whose columns stand in another order. */
function reference({ columns, headerRow }: MappingForm, index: number): Column {
  const name = plain(columns[index]?.name ?? '');
  const isOwn = columns.filter((column) => plain(column.name) === name).length === 1;
  return headerRow && name !== '' && isOwn ? (columns[index]?.name.trim() ?? '') : index + 1;
}

function timeIn(form: MappingForm): TimeMapping | undefined {
  const column = columnWith(form, 'time');
  if (column === undefined) return undefined;
  const { timeFormat: format, zone, start } = form;
  if (format === 'unix-seconds') return { column, format };
  return format === 'elapsed-seconds' ? { column, format, start } : { column, format, zone };
}

/** Whether a name is a zone of the IANA time zone database that this browser knows. */
export function isZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch {
    // Unknown zones are told by an exception alone.
    return false;
  }
}
