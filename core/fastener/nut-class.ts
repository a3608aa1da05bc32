import { invalid, ok, type Result } from '../failure/failure.ts';
import { NUT_CLASSES, NUTS_FOR_BOLTS } from './nut-classes.ts';
import type { Thread } from './thread.ts';

/** A nut's class at a size. */
export interface NutClass {
  readonly name: string;
  readonly proofStressMPa: number;
}

/**
 * Strength of a nut's class at the size of a thread.
 *
 * @param text   `8`, `10`, `05`
 * @param thread metric
 * @source ISO 898-2:1992, table 5 (from memory)
 */
export function readNutClass(text: string, thread: Thread, field = 'nutClass'): Result<NutClass> {
  const name = text.trim().replace(/^(?:class|property class|iso 898-2) /i, '');
  const having = NUT_CLASSES.filter(
    ({ aboveMm, upToMm }) =>
      thread.system === 'ISO metric' && thread.majorDiameterMm > aboveMm && thread.majorDiameterMm <= upToMm,
  );
  const found = having.find((row) => row.name === name);
  if (found !== undefined) return ok({ name, proofStressMPa: found.proofMPa });
  const expected =
    having.length > 0
      ? `one of ${having.map((row) => row.name).join(', ')}`
      : `left out: ISO 898-2 has no nut for ${thread.designation}`;
  return invalid(field, `“${text.trim()}” is no class of nut for ${thread.designation}.`, expected);
}

/**
 * The least class of nut for a bolt of a class; undefined for classes that ISO 898-1 does not have.
 *
 * @source ISO 898-2:2012, combination of bolts and nuts (from memory)
 */
export const nutClassFor = (boltClass: string): string | undefined =>
  NUTS_FOR_BOLTS.find((row) => row.boltClass === boltClass)?.nutClass;
