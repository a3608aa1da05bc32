import type { FrictionRange, NewOwnRow, OwnRow } from '@clampwright/core/fastener';
import { type Language, showNumber } from '@clampwright/core/quantity';
import type { Fault } from '../../forms/fault.ts';
import { type Reader, readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';

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
}

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
};

/** Blank, or what stands in the row that is to be superseded; its source is asked for anew. */
export function ownRowForm(before: OwnRow | undefined, language: Language): OwnRowForm {
  if (!before) return BLANK;
  const figure = (value: number) => showNumber(value, language);
  const { kind, name } = before;
  return before.kind === 'material'
    ? {
        ...BLANK,
        kind,
        name,
        yieldMPa: figure(before.yieldStrengthMPa),
        tensileMPa: figure(before.tensileStrengthMPa),
      }
    : {
        ...BLANK,
        kind,
        name,
        threadLower: figure(before.threadFriction.lower),
        threadUpper: figure(before.threadFriction.upper),
        bearingLower: figure(before.bearingFriction.lower),
        bearingUpper: figure(before.bearingFriction.upper),
      };
}

export interface OwnRowReading {
  readonly row: NewOwnRow | undefined;
  readonly faults: readonly Fault[];
}

export function readOwnRow(
  form: OwnRowForm,
  { id, supersedes }: { readonly id: string; readonly supersedes: string | undefined },
  language: Language,
): OwnRowReading {
  const reader = readerIn(language);
  const written = {
    id,
    name: reader.text('name', form.name),
    source: reader.text('source', form.source),
    ...(supersedes === undefined ? {} : { supersedes }),
  };
  const row =
    form.kind === 'material'
      ? whole({ ...written, kind: form.kind, ...readStrength(form, reader) })
      : whole({
          ...written,
          kind: form.kind,
          threadFriction: readRange('threadFriction', form.threadLower, form.threadUpper, reader),
          bearingFriction: readRange('bearingFriction', form.bearingLower, form.bearingUpper, reader),
        });
  return { row: reader.faults.length > 0 ? undefined : row, faults: reader.faults };
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
