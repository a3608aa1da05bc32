import { type CalibrationSession, sessionSchema } from './session.ts';

const keyOf = (wrenchId: string): string => `clampwright.calibration.${wrenchId}`;

/** The calibration of a wrench that was begun at this device and not finished. */
export function keptSession(wrenchId: string): CalibrationSession | undefined {
  const text = localStorage.getItem(keyOf(wrenchId));
  if (text === null) return undefined;
  try {
    const read = sessionSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : undefined;
  } catch {
    // Not ours, or cut short by a full disk: it is begun anew.
    return undefined;
  }
}

export const keepSession = (session: CalibrationSession): void =>
  localStorage.setItem(keyOf(session.wrenchId), JSON.stringify(session));

export const forgetSession = (wrenchId: string): void => localStorage.removeItem(keyOf(wrenchId));
