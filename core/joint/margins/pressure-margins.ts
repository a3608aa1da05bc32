import { invalid, ok, type Result } from '../../failure/failure.ts';
import { BEARING_PRESSURES } from '../../fastener/materials.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import type { CheckedJoint } from './checked-joint.ts';
import type { Forces } from './forces.ts';
import { type Checked, margin, notChecked } from './margin.ts';

type Side = 'head' | 'nut';

/** How a washer spreads the force, mm of diameter a mm of thickness. */
const WASHER_SPREAD = 1.6;

/** Ring that head or nut press on the clamped part; a washer spreads them as far as it reaches. */
function ringMm2({ request, compliance }: CheckedJoint, side: Side): number {
  const faceMm = (side === 'nut' ? request.nutBearingOuterMm : undefined) ?? compliance.bearingOuterMm;
  const washers = request.washers.filter(({ under }) => under === side);
  const outerMm = washers.reduce(
    (widthMm, { thicknessMm, outerDiameterMm }) => Math.min(widthMm + WASHER_SPREAD * thicknessMm, outerDiameterMm),
    faceMm,
  );
  const layer = side === 'head' ? request.layers[0] : request.layers.at(-1);
  const reachMm = Math.min(outerMm, layer?.outerDiameterMm ?? Infinity);
  const holeMm = layer?.holeMm ?? compliance.holeMm;
  return (Math.PI / 4) * (reachMm ** 2 - holeMm ** 2);
}

const FIELDS = {
  head: { limit: 'headPressureLimitMPa', grade: 'headPartGrade', check: 'pressure-under-head' },
  nut: { limit: 'nutPressureLimitMPa', grade: 'nutPartGrade', check: 'pressure-under-nut' },
} as const;

/**
 * Pressure under head and nut.
 *
 * @returns refused when a grade is not known
 */
export function pressureMargins(checked: CheckedJoint, forces: Forces): Result<readonly Checked[]> {
  const sides: readonly Side[] = checked.request.jointType === 'tapped' ? ['head'] : ['head', 'nut'];
  const margins: Checked[] = [];
  for (const side of sides) {
    const one = pressure(checked, forces, side);
    if (!one.ok) return one;
    margins.push(one.value);
  }
  return ok(margins);
}

function pressure(checked: CheckedJoint, { assembly, boltMaxN }: Forces, side: Side): Result<Checked> {
  const { limit, grade, check } = FIELDS[side];
  const bears = limitOf(checked.request[limit], checked.request[grade], grade);
  if (!bears.ok) return bears;
  if (bears.value === undefined) return ok(notChecked(check, grade, remark(`${side}-bears-untold`)));
  return ok(
    margin({
      check,
      actual: Math.max(assembly.greatestN, boltMaxN) / ringMm2(checked, side),
      allowed: bears.value.limitMPa,
      unit: 'MPa',
      clause: 'VDI 2230-1:2015, R10',
      note: bears.value.note,
    }),
  );
}

function limitOf(
  limitMPa: number | undefined,
  grade: string | undefined,
  field: string,
): Result<{ readonly limitMPa: number; readonly note: Remark } | undefined> {
  if (limitMPa !== undefined) return ok({ limitMPa, note: remark('note-limit-given') });
  if (grade === undefined) return ok(undefined);
  const row = BEARING_PRESSURES.find(({ name }) => name.toLowerCase() === grade.trim().toLowerCase());
  if (row !== undefined)
    return ok({ limitMPa: row.limitMPa, note: remark('note-limit-of-grade', { grade: row.name, had: row.had }) });
  const known = BEARING_PRESSURES.map(({ name }) => name).join(', ');
  return invalid(
    field,
    `“${grade.trim()}” is no material with a limit of pressure here.`,
    `one of ${known}; or give the limit`,
  );
}
