import { invalid, ok, type Result } from '../failure/failure.ts';

export type ToolType = 'I' | 'II';

/** A class of hand torque tool with what the standard asks of it. */
export interface ToolClass {
  readonly type: ToolType;
  readonly class: string;
  readonly what: string;
  /** Permissible relative deviation, percent: at a greatest torque of up to 10 N·m, and above. */
  readonly permissiblePercent: readonly [upTo10Nm: number, above10Nm: number];
  /** Set by the maker to one torque: there is one point to calibrate. */
  readonly isFixed?: boolean;
}

// ISO 6789-1:2017, clause 4 (classes) and 5.1.5 (permissible deviations). From memory, the deviations of class E of
// type I and of class E of type II least sure.
export const TOOL_CLASSES: readonly ToolClass[] = [
  { type: 'I', class: 'A', what: 'wrench, torsion or flexion bar', permissiblePercent: [6, 6] },
  { type: 'I', class: 'B', what: 'wrench, rigid housing, with scale, dial or display', permissiblePercent: [6, 4] },
  { type: 'I', class: 'C', what: 'wrench, rigid housing, electronic measurement', permissiblePercent: [6, 4] },
  { type: 'I', class: 'D', what: 'screwdriver, with scale, dial or display', permissiblePercent: [6, 6] },
  { type: 'I', class: 'E', what: 'screwdriver, electronic measurement', permissiblePercent: [6, 4] },
  { type: 'II', class: 'A', what: 'wrench, adjustable, graduated or with display', permissiblePercent: [6, 4] },
  { type: 'II', class: 'B', what: 'wrench, fixed adjustment', permissiblePercent: [6, 4], isFixed: true },
  { type: 'II', class: 'C', what: 'wrench, adjustable, not graduated', permissiblePercent: [6, 4] },
  { type: 'II', class: 'D', what: 'screwdriver, adjustable, graduated or with display', permissiblePercent: [6, 6] },
  { type: 'II', class: 'E', what: 'screwdriver, fixed adjustment', permissiblePercent: [6, 6], isFixed: true },
  { type: 'II', class: 'F', what: 'screwdriver, adjustable, not graduated', permissiblePercent: [6, 6] },
  { type: 'II', class: 'G', what: 'wrench, flexion bar, adjustable, graduated', permissiblePercent: [6, 6] },
];

/** @returns refused with field `class` where the type has no such class */
export function toolClass(type: ToolType, name: string): Result<ToolClass> {
  const letter = name.trim().toUpperCase();
  const found = TOOL_CLASSES.find((candidate) => candidate.type === type && candidate.class === letter);
  if (found) return ok(found);
  const known = TOOL_CLASSES.filter((candidate) => candidate.type === type).map((candidate) => candidate.class);
  return invalid('class', `type ${type} has no class “${name}”`, `one of ${known.join(', ')}`);
}

/**
 * How far a wrench may deviate, percent of the reference value, on either side.
 *
 * @param maxTorqueNm greatest torque of the wrench
 * @source ISO 6789-1:2017, 5.1.5 (from memory)
 */
export const permissibleDeviationPercent = ({ permissiblePercent }: ToolClass, maxTorqueNm: number): number =>
  permissiblePercent[maxTorqueNm <= 10 ? 0 : 1];
