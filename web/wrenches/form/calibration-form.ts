import type { Language } from '@clampwright/core/quantity';
import type { CalibrationSummary } from '@clampwright/core/wrench';
import { type Reader, readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import { type FormReading, reading } from './wrench-form.ts';

export interface CalibrationForm {
  /** ISO 8601 days, as a date field gives them. */
  readonly calibratedOn: string;
  readonly dueOn: string;
  readonly certificate: string;
  readonly by: string;
  readonly deviation: string;
  readonly uncertainty: string;
}

const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * A calibration done today and due in a year: the usual longest interval.
 *
 * @source ISO 6789-1:2017, clause on recalibration: 12 months or 5000 cycles, unless the user has a rule of their own (from memory)
 */
export function blankCalibration(today: string): CalibrationForm {
  const due = `${Number(today.slice(0, 4)) + 1}${today.slice(4)}`;
  const dueOn = due.endsWith('-02-29') ? due.replace(/29$/, '28') : due;
  return { calibratedOn: today, dueOn, certificate: '', by: '', deviation: '', uncertainty: '' };
}

/** The summary that stands in the form. */
export function readCalibration(form: CalibrationForm, language: Language): FormReading<CalibrationSummary> {
  const reader = readerIn(language);
  const calibratedOn = readDay(reader, 'calibratedOn', form.calibratedOn);
  const dueOn = readDay(reader, 'dueOn', form.dueOn);
  if (calibratedOn !== undefined && dueOn !== undefined && dueOn <= calibratedOn) {
    reader.fault('dueOn', { kind: 'due-before' });
  }
  const summary = whole({
    calibratedOn,
    dueOn,
    certificate: reader.text('certificate', form.certificate),
    by: reader.text('by', form.by),
    maximumDeviationPercent: reader.number('maximumDeviationPercent', form.deviation, { from: 0, to: 100 }),
    expandedUncertaintyPercent: reader.number('expandedUncertaintyPercent', form.uncertainty, { from: 0, to: 100 }),
  });
  return reading(summary, reader);
}

const readDay = (reader: Reader, field: string, text: string): string | undefined =>
  DAY.test(text) ? text : reader.fault(field, { kind: 'needed' });
