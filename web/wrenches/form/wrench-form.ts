import { convert, type Language, type TorqueUnit } from '@clampwright/core/quantity';
import { DIRECTIONS, type Direction, DRIVES_MM, toolClass, type Wrench } from '@clampwright/core/wrench';
import type { Fault } from '../../forms/fault.ts';
import { type Reader, readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';

export type LengthUnit = 'mm' | 'in';

export interface WrenchForm {
  readonly name: string;
  readonly serial: string;
  readonly type: Wrench['type'];
  readonly class: string;
  readonly unit: TorqueUnit;
  readonly lowest: string;
  readonly highest: string;
  readonly resolution: string;
  /** Empty: it shows no angle. */
  readonly angleResolution: string;
  readonly lever: string;
  readonly lengthUnit: LengthUnit;
  /** ISO 8601 day, as a date field gives it; empty: not known. */
  readonly madeOn: string;
  readonly directions: Direction | 'both';
  /** Nominal size of the square, mm; `other` where it is none of the standard ones. */
  readonly drive: `${(typeof DRIVES_MM)[number]}` | 'other';
  readonly connection: Wrench['connection']['kind'];
  readonly path: string;
}

export const BLANK_WRENCH: WrenchForm = {
  name: '',
  serial: '',
  type: 'I',
  class: '',
  unit: 'N·m',
  lowest: '',
  highest: '',
  resolution: '',
  angleResolution: '',
  lever: '',
  lengthUnit: 'mm',
  madeOn: '',
  directions: 'clockwise',
  drive: 'other',
  connection: 'typed',
  path: '',
};

export interface FormReading<T> {
  readonly value: T | undefined;
  readonly faults: readonly Fault[];
}

/** A value that only counts when nothing was wrong on the way to it. */
export const reading = <T>(value: T | undefined, reader: Reader): FormReading<T> => ({
  value: reader.faults.length === 0 ? value : undefined,
  faults: reader.faults,
});

/** The wrench that stands in the form; `today` is an ISO 8601 day. */
export function readWrench(form: WrenchForm, id: string, language: Language, today: string): FormReading<Wrench> {
  const reader = readerIn(language);
  const lowestNm = reader.torqueNm('lowestNm', form.lowest, form.unit);
  const highestNm = reader.torqueNm('highestNm', form.highest, form.unit);
  if (lowestNm !== undefined && highestNm !== undefined && lowestNm >= highestNm) {
    reader.fault('highestNm', { kind: 'lower-above-upper' });
  }
  const letter = reader.text('class', form.class);
  const known = letter === undefined ? undefined : reader.take('', toolClass(form.type, letter));
  const isAngled = form.angleResolution.trim() !== '';
  const wrench = whole({
    id,
    name: reader.text('name', form.name),
    serial: reader.text('serial', form.serial),
    type: form.type,
    class: known?.class,
    lowestNm,
    highestNm,
    resolutionNm: reader.torqueNm('resolutionNm', form.resolution, form.unit),
    ...(isAngled
      ? { angleResolutionDeg: reader.number('angleResolutionDeg', form.angleResolution, { isPositive: true, to: 90 }) }
      : {}),
    leverMm: readLengthMm(reader, 'leverMm', form.lever, form.lengthUnit),
    ...readMake(form, reader, today),
    connection: readConnection(form, reader),
  });
  return reading(wrench, reader);
}

function readMake({ madeOn, directions, drive }: WrenchForm, reader: Reader, today: string) {
  if (madeOn > today) reader.fault('madeOn', { kind: 'to-come' });
  const driveMm = DRIVES_MM.find((size) => String(size) === drive);
  return {
    directions: DIRECTIONS.filter((direction) => directions === 'both' || directions === direction),
    ...(driveMm === undefined ? {} : { driveMm }),
    ...(madeOn === '' ? {} : { madeOn }),
  };
}

/** A length above 0, mm. */
export function readLengthMm(reader: Reader, field: string, text: string, unit: LengthUnit): number | undefined {
  const length = reader.number(field, text, { isPositive: true });
  return length === undefined ? undefined : reader.take(field, convert(length, unit, 'mm'));
}

/** A simulated wrench is set by its seed alone; any will do. */
const SEED = 1;

function readConnection(form: WrenchForm, reader: Reader): Wrench['connection'] | undefined {
  switch (form.connection) {
    case 'typed':
      return { kind: 'typed' };
    case 'simulated':
      return { kind: 'simulated', seed: SEED };
    case 'serial':
      return whole({ kind: 'serial' as const, path: reader.text('connection.path', form.path) });
  }
}
