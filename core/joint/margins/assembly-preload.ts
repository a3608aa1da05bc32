import { invalid, ok, type Result } from '../../failure/failure.ts';
import { TIGHTENING_FACTORS } from '../../fastener/tightening-methods.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { preloadAtTorqueN, type TurnedJoint } from '../angle/turned-joint.ts';
import type { Friction } from '../torque/thread-and-bearing.ts';
import type { JointCheckRequest } from './request.ts';

/** What a way of tightening makes of a target. */
export interface AssemblyPreload {
  readonly leastN: number;
  readonly greatestN: number;
  readonly factor: number;
  readonly assumptions: readonly Remark[];
}

/**
 * Least and greatest preload about a mean, or below a greatest.
 *
 * @param factor α_A = F_max/F_min, 1 or more
 * @source VDI 2230-1:2015, R1: α_A = (1 + s)/(1 − s) for a scatter of ± s about the mean
 */
export function scattered(
  preloadN: number,
  preloadIs: JointCheckRequest['preloadIs'],
  factor: number,
): { readonly leastN: number; readonly greatestN: number } {
  if (preloadIs === 'greatest') return { leastN: preloadN / factor, greatestN: preloadN };
  return { leastN: (2 * preloadN) / (1 + factor), greatestN: (2 * preloadN * factor) / (1 + factor) };
}

/** @returns refused when neither preload nor torque, or both, or no factor was told */
export function assemblyPreload(request: JointCheckRequest, joint: TurnedJoint): Result<AssemblyPreload> {
  const factor = factorOf(request);
  if (!factor.ok) return factor;
  const target = targetN(request, joint);
  if (!target.ok) return target;
  const preloadIs = request.torqueNm === undefined ? request.preloadIs : 'mean';
  const { value, assumptions } = factor.value;
  return ok({ ...scattered(target.value, preloadIs, value), factor: value, assumptions });
}

function targetN(
  { preloadN, torqueNm, threadFriction, bearingFriction }: JointCheckRequest,
  joint: TurnedJoint,
): Result<number> {
  if (preloadN !== undefined && torqueNm !== undefined)
    return invalid('torqueNm', 'The preload is told already.', 'left out, or the preload left out');
  if (preloadN !== undefined) return ok(preloadN);
  if (torqueNm === undefined) return invalid('preloadN', 'It is missing.', 'a preload, or a torque with its friction');
  if (threadFriction === undefined) return unknownFriction('threadFriction');
  if (bearingFriction === undefined) return unknownFriction('bearingFriction');
  const friction: Friction = { thread: threadFriction, bearing: bearingFriction };
  return ok(preloadAtTorqueN(joint, friction, torqueNm));
}

const unknownFriction = (field: string) =>
  invalid(field, 'It is missing: without friction a torque tells no preload.', 'above 0 to 1');

interface Factor {
  readonly value: number;
  readonly assumptions: readonly Remark[];
}

function factorOf({ tighteningFactor, tighteningMethod }: JointCheckRequest): Result<Factor> {
  if (tighteningFactor !== undefined) return ok({ value: tighteningFactor, assumptions: [] });
  const methods = TIGHTENING_FACTORS.map(({ method }) => method).join('; ');
  if (tighteningMethod === undefined)
    return invalid('tighteningFactor', 'It is missing.', `a factor of 1 or more, or a method: ${methods}`);
  const name = tighteningMethod.trim().toLowerCase();
  const row = TIGHTENING_FACTORS.find(({ method }) => method.toLowerCase() === name);
  if (row === undefined)
    return invalid(
      'tighteningMethod',
      `“${tighteningMethod}” is no way of tightening known here.`,
      `one of: ${methods}`,
    );
  const assumption = remark('factor-of-method', { factor: row.highest, method: row.method, had: row.had });
  return ok({ value: row.highest, assumptions: [assumption] });
}
