import { type Language, showNumber } from '@clampwright/core/quantity';
import type { ReferenceStandard } from '@clampwright/core/wrench';
import { readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import { blankCalibration } from '../form/calibration-form.ts';
import { type FormReading, reading } from '../form/wrench-form.ts';

export interface ReferenceForm {
  readonly name: string;
  readonly serial: string;
  readonly lowest: string;
  readonly highest: string;
  readonly certificate: string;
  readonly by: string;
  readonly calibratedOn: string;
  readonly dueOn: string;
  readonly uncertainty: string;
  readonly place: string;
}

/** A new reference, or the next certificate of one that is there. */
export function beginReference(
  before: ReferenceStandard | undefined,
  today: string,
  language: Language,
): ReferenceForm {
  const { dueOn } = blankCalibration(today);
  const figure = (value: number | undefined) => (value === undefined ? '' : showNumber(value, language));
  return {
    name: before?.name ?? '',
    serial: before?.serial ?? '',
    lowest: figure(before?.lowestNm),
    highest: figure(before?.highestNm),
    certificate: '',
    by: before?.by ?? '',
    calibratedOn: today,
    dueOn,
    uncertainty: figure(before?.expandedUncertaintyPercent),
    place: before?.place ?? '',
  };
}

const DAY = /^\d{4}-\d{2}-\d{2}$/;

export function readReference(form: ReferenceForm, id: string, language: Language): FormReading<ReferenceStandard> {
  const reader = readerIn(language);
  const lowestNm = reader.number('lowestNm', form.lowest, { from: 0 });
  const highestNm = reader.number('highestNm', form.highest, { isPositive: true });
  if (lowestNm !== undefined && highestNm !== undefined && lowestNm >= highestNm)
    reader.fault('highestNm', { kind: 'lower-above-upper' });
  const day = (field: 'calibratedOn' | 'dueOn') =>
    DAY.test(form[field]) ? form[field] : reader.fault(field, { kind: 'needed' });
  const [calibratedOn, dueOn] = [day('calibratedOn'), day('dueOn')];
  if (calibratedOn !== undefined && dueOn !== undefined && dueOn <= calibratedOn)
    reader.fault('dueOn', { kind: 'due-before' });
  const reference = whole({
    id,
    name: reader.text('name', form.name),
    serial: reader.text('serial', form.serial),
    lowestNm,
    highestNm,
    certificate: reader.text('certificate', form.certificate),
    by: reader.text('by', form.by),
    calibratedOn,
    dueOn,
    expandedUncertaintyPercent: reader.number('expandedUncertaintyPercent', form.uncertainty, { from: 0, to: 100 }),
  });
  const place = form.place.trim();
  return reading(reference && (place === '' ? reference : { ...reference, place }), reader);
}
