import type { Language } from '@clampwright/core/quantity';
import type { Calibration, CalibrationPlan, ReferenceStandard } from '@clampwright/core/wrench';
import { type CalibrationSession, comparisonOf } from './session.ts';
import { readSetUp } from './set-up.ts';

/** The calibration that comes of a session; undefined while something of its set-up is missing. */
export function calibrationOf(
  session: CalibrationSession,
  plan: CalibrationPlan,
  reference: ReferenceStandard,
  {
    by,
    today,
    language,
    note,
  }: { readonly by: string; readonly today: string; readonly language: Language; readonly note: string },
): Calibration | undefined {
  // a due day that has come meanwhile is the server's to refuse, with the day named
  const { value } = readSetUp(session.setUp, today, language);
  if (!value) return undefined;
  const { spreads, ...rest } = value;
  const { found, left } = session;
  return {
    id: session.id,
    wrenchId: session.wrenchId,
    calibratedOn: (left ?? found).at.slice(0, 10),
    ...rest,
    by,
    reference,
    asFound: comparisonOf(plan, found, spreads),
    ...(left ? { asLeft: comparisonOf(plan, left, spreads) } : {}),
    ...(note.trim() === '' ? {} : { note: note.trim() }),
  };
}
