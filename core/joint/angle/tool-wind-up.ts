import { invalid, ok, type Result } from '../../failure/failure.ts';
import { inRowNmPerDeg, roundBarNmPerDeg, squareBarNmPerDeg } from '../../procedure/torsional-stiffness.ts';
import type { ToolPart } from './request.ts';

/**
 * Torsional stiffness of all that twists between wrench and fastener.
 *
 * @returns N·m a degree, undefined where nothing was told; refused with the field that a part lacks
 */
export function toolNmPerDeg(parts: readonly ToolPart[]): Result<number | undefined> {
  const stiffnesses: number[] = [];
  for (const [index, part] of parts.entries()) {
    const stiffness = partNmPerDeg(part, `toolParts[${index}]`);
    if (!stiffness.ok) return stiffness;
    stiffnesses.push(stiffness.value);
  }
  return ok(stiffnesses.length === 0 ? undefined : inRowNmPerDeg(stiffnesses));
}

function partNmPerDeg(part: ToolPart, field: string): Result<number> {
  const { form, acrossMm, boreMm = 0, lengthMm, stiffnessNmPerDeg } = part;
  if (form === 'measured')
    return stiffnessNmPerDeg === undefined ? missing(`${field}.stiffnessNmPerDeg`) : ok(stiffnessNmPerDeg);
  if (acrossMm === undefined) return missing(`${field}.acrossMm`);
  if (lengthMm === undefined) return missing(`${field}.lengthMm`);
  if (form === 'square') return ok(squareBarNmPerDeg(acrossMm, lengthMm));
  if (boreMm >= acrossMm)
    return invalid(`${field}.boreMm`, 'The bore is as wide as the bar.', `less than ${acrossMm} mm`);
  return ok(roundBarNmPerDeg(acrossMm, boreMm, lengthMm));
}

const missing = (field: string) => invalid(field, 'It is missing.', 'a figure above 0');
