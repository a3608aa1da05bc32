import { type Quantity, quantityOf, readUnit, type Unit } from '@clampwright/core/quantity';
import { z } from 'zod';

/** EUInformation of OPC 10000-8, 5.6.4, as far as it is read here. */
export const engineeringUnitsSchema = z.object({
  unitId: z.number().optional(),
  displayName: z.object({ text: z.string().nullish() }).nullish(),
});
export type EngineeringUnits = z.infer<typeof engineeringUnitsSchema>;

// UNECE Recommendation 20, common codes (from memory).
const BY_CODE: Readonly<Record<string, Unit>> = {
  NU: 'N·m',
  J72: 'cN·m',
  DN: 'dN·m',
  B48: 'kN·m',
  M92: 'lbf·ft',
  F21: 'lbf·in',
  L41: 'ozf·in',
  B38: 'kgf·m',
  DD: 'deg',
  C81: 'rad',
  M44: 'turn',
};

/** The common code that a unit number stands for: its characters, the last one in the lowest byte (OPC 10000-8, 5.6.4.3). */
function codeOf(unitId: number): string {
  const bytes = [unitId >>> 24, (unitId >>> 16) & 255, (unitId >>> 8) & 255, unitId & 255];
  return String.fromCharCode(...bytes.filter((byte) => byte !== 0));
}

/** The unit of a quantity that is meant: by its number, otherwise as it is written; undefined where neither is known. */
export function unitMeant({ unitId, displayName }: EngineeringUnits, quantity: Quantity): Unit | undefined {
  const byCode = unitId !== undefined && unitId > 0 ? BY_CODE[codeOf(unitId)] : undefined;
  const written = readUnit(displayName?.text ?? '');
  const unit = byCode ?? (written.ok ? written.value : undefined);
  return unit !== undefined && quantityOf(unit) === quantity ? unit : undefined;
}

/** Whether a time is told in milliseconds; seconds where nothing is told. */
export const isInMilliseconds = ({ unitId, displayName }: EngineeringUnits): boolean =>
  displayName?.text === 'ms' || (unitId !== undefined && unitId > 0 && codeOf(unitId) === 'C26');
