import type { Language } from '@clampwright/core/quantity';
import type { Comparison, ReferenceStandard } from '@clampwright/core/wrench';
import { usableReference } from '@clampwright/core/wrench';
import { readerIn, type Wants } from '../../forms/reader.ts';
import { type FormReading, reading } from '../form/wrench-form.ts';
import type { SetUp } from './session.ts';

/** What was typed before the first reading, read. */
export interface ReadSetUp {
  readonly certificate: string;
  readonly dueOn: string;
  readonly dueAfterPulls?: number;
  readonly place?: string;
  readonly temperatureC?: number;
  readonly humidityPercent?: number;
  readonly spreads: Comparison['spreads'];
}

export const SPREADS = ['reproducibility', 'outputInterface', 'driveInterface', 'leverVariation'] as const;

/** Pulls that a wrench may make between two calibrations. */
export const MOST_PULLS = { isWhole: true, from: 1, to: 10_000_000 } as const satisfies Wants;

const DAY = /^\d{4}-\d{2}-\d{2}$/;

export function readSetUp(setUp: SetUp, today: string, language: Language): FormReading<ReadSetUp> {
  const reader = readerIn(language);
  const optional = (field: keyof SetUp, wants: Wants) => {
    const { [field]: text = '' } = setUp;
    return text.trim() === '' ? undefined : reader.number(field, text, wants);
  };
  if (setUp.referenceId === '') reader.fault('referenceId', { kind: 'needed' });
  const certificate = reader.text('certificate', setUp.certificate);
  if (!DAY.test(setUp.dueOn)) reader.fault('dueOn', { kind: 'needed' });
  else if (setUp.dueOn <= today) reader.fault('dueOn', { kind: 'due-before' });
  const dueAfterPulls = optional('dueAfterPulls', MOST_PULLS);
  const temperatureC = optional('temperature', { from: -20, to: 60 });
  const humidityPercent = optional('humidity', { from: 0, to: 100 });
  const spreads = Object.fromEntries(
    SPREADS.flatMap((spread) => {
      const value = optional(spread, { from: 0 });
      return value === undefined ? [] : [[spread, value] as const];
    }),
  );
  const value =
    certificate === undefined
      ? undefined
      : {
          certificate,
          dueOn: setUp.dueOn,
          ...(dueAfterPulls === undefined ? {} : { dueAfterPulls }),
          ...(setUp.place.trim() === '' ? {} : { place: setUp.place.trim() }),
          ...(temperatureC === undefined ? {} : { temperatureC }),
          ...(humidityPercent === undefined ? {} : { humidityPercent }),
          spreads,
        };
  return reading(value, reader);
}

/** Why a reference cannot be taken on a day up to these torques; undefined: it can. */
export function againstReference(
  reference: ReferenceStandard,
  today: string,
  torquesNm: readonly number[],
): 'overdue' | 'small' | undefined {
  const usable = usableReference(reference, today, torquesNm);
  if (usable.ok) return undefined;
  return usable.failure.kind === 'invalid' && usable.failure.field === 'reference.dueOn' ? 'overdue' : 'small';
}
