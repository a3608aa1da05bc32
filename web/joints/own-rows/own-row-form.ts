import {
  boltFault,
  type FrictionRange,
  joinsRows,
  type NewOwnRow,
  type OwnRow,
  readThread,
} from '@clampwright/core/fastener';
import { type Language, showNumber } from '@clampwright/core/quantity';
import type { Fault } from '../../forms/fault.ts';
import { type Reader, readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';

/** Dimensions of an own bolt in the order of their fields; the first two are needed. */
export const BOLT_FIGURES = [
  'majorDiameterMm',
  'pitchMm',
  'pitchDiameterMm',
  'minorDiameterMm',
  'rootDiameterMm',
  'stressAreaMm2',
  'bearingOuterMm',
  'holeMm',
  'shankDiameterMm',
] as const;
export type BoltFigure = (typeof BOLT_FIGURES)[number];
type BoltForm = Readonly<Record<BoltFigure, string>>;

/** A row of the workshop's own while it is being written. */
export interface OwnRowForm {
  readonly kind: OwnRow['kind'];
  readonly name: string;
  readonly source: string;
  readonly yieldMPa: string;
  readonly tensileMPa: string;
  readonly threadLower: string;
  readonly threadUpper: string;
  readonly bearingLower: string;
  readonly bearingUpper: string;
  readonly system: 'ISO metric' | 'Unified';
  readonly bolt: BoltForm;
}

const BLANK_BOLT: BoltForm = {
  majorDiameterMm: '',
  pitchMm: '',
  pitchDiameterMm: '',
  minorDiameterMm: '',
  rootDiameterMm: '',
  stressAreaMm2: '',
  bearingOuterMm: '',
  holeMm: '',
  shankDiameterMm: '',
};

const BLANK: OwnRowForm = {
  kind: 'lubricant',
  name: '',
  source: '',
  yieldMPa: '',
  tensileMPa: '',
  threadLower: '',
  threadUpper: '',
  bearingLower: '',
  bearingUpper: '',
  system: 'ISO metric',
  bolt: BLANK_BOLT,
};

/** Blank, or what stands in the row that is to be superseded; its source is asked for anew. */
export function ownRowForm(before: OwnRow | undefined, language: Language): OwnRowForm {
  if (!before) return BLANK;
  const figure = (value: number) => showNumber(value, language);
  const { kind, name } = before;
  switch (before.kind) {
    case 'material':
      return {
        ...BLANK,
        kind,
        name,
        yieldMPa: figure(before.yieldStrengthMPa),
        tensileMPa: figure(before.tensileStrengthMPa),
      };
    case 'lubricant':
      return {
        ...BLANK,
        kind,
        name,
        threadLower: figure(before.threadFriction.lower),
        threadUpper: figure(before.threadFriction.upper),
        bearingLower: figure(before.bearingFriction.lower),
        bearingUpper: figure(before.bearingFriction.upper),
      };
    case 'bolt': {
      const told = BOLT_FIGURES.map((name) => [name, before[name] === undefined ? '' : figure(before[name])] as const);
      return { ...BLANK, kind, name, system: before.system, bolt: { ...BLANK_BOLT, ...Object.fromEntries(told) } };
    }
  }
}

export interface OwnRowReading {
  readonly row: NewOwnRow | undefined;
  readonly faults: readonly Fault[];
}

/** What the row stands beside. */
export interface OwnRowPlace {
  readonly id: string;
  readonly supersedes: string | undefined;
  readonly rows: readonly OwnRow[];
}

export function readOwnRow(form: OwnRowForm, { id, supersedes, rows }: OwnRowPlace, language: Language): OwnRowReading {
  const reader = readerIn(language);
  const written = {
    id,
    name: reader.text('name', form.name),
    source: reader.text('source', form.source),
    ...(supersedes === undefined ? {} : { supersedes }),
  };
  const row = whole({ ...written, ...figuresOf(form, reader) });
  if (row?.kind === 'bolt' && isTaken(row, rows)) reader.fault('name', { kind: 'taken', name: row.name });
  return { row: reader.faults.length > 0 ? undefined : row, faults: reader.faults };
}

function figuresOf(form: OwnRowForm, reader: Reader) {
  switch (form.kind) {
    case 'material':
      return { kind: form.kind, ...readStrength(form, reader) } as const;
    case 'lubricant':
      return {
        kind: form.kind,
        threadFriction: readRange('threadFriction', form.threadLower, form.threadUpper, reader),
        bearingFriction: readRange('bearingFriction', form.bearingLower, form.bearingUpper, reader),
      } as const;
    case 'bolt':
      return { kind: form.kind, ...readBolt(form, reader) } as const;
  }
}

function isTaken(row: NewOwnRow, rows: readonly OwnRow[]): boolean {
  const joins = joinsRows(rows, row);
  return readThread(row.name).ok || (!joins.ok && joins.failure.kind === 'invalid');
}

/** Steel stronger than this holds no bolt. */
const STRONGEST_MPA = 3000;

function readStrength(form: OwnRowForm, reader: Reader) {
  const wants = { isPositive: true, to: STRONGEST_MPA } as const;
  const yieldStrengthMPa = reader.number('yieldStrengthMPa', form.yieldMPa, wants);
  const tensileStrengthMPa = reader.number('tensileStrengthMPa', form.tensileMPa, wants);
  if ((yieldStrengthMPa ?? 0) > (tensileStrengthMPa ?? STRONGEST_MPA)) {
    reader.fault('tensileStrengthMPa', { kind: 'lower-above-upper' });
  }
  return { yieldStrengthMPa, tensileStrengthMPa };
}

function readRange(field: string, lowerText: string, upperText: string, reader: Reader): FrictionRange | undefined {
  const wants = { isPositive: true, to: 1 } as const;
  const range = whole({
    lower: reader.number(`${field}.lower`, lowerText, wants),
    upper: reader.number(`${field}.upper`, upperText, wants),
  });
  if (range && range.lower > range.upper) return reader.fault(`${field}.upper`, { kind: 'lower-above-upper' });
  return range;
}

const NEEDED: readonly BoltFigure[] = ['majorDiameterMm', 'pitchMm'];

function readBolt({ system, bolt }: OwnRowForm, reader: Reader) {
  const figure = (name: BoltFigure) => reader.number(name, bolt[name], { isPositive: true });
  const further = BOLT_FIGURES.filter((name) => !NEEDED.includes(name) && bolt[name].trim() !== '');
  const told = {
    system,
    majorDiameterMm: figure('majorDiameterMm'),
    pitchMm: figure('pitchMm'),
    ...Object.fromEntries(further.map((name) => [name, figure(name)])),
  };
  const read = whole(told);
  const fault = read && boltFault(read);
  if (fault) reader.fault(fault.field, { kind: 'bolt', fault });
  return told;
}
