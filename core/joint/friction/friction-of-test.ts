import { invalid, ok, type Result } from '../../failure/failure.ts';
import { meanBearingDiameterMm, type ThreadAndBearing, torqueArms } from '../torque/thread-and-bearing.ts';

/** One tightening on a test rig, read at one preload. */
export interface TorqueTensionTest {
  readonly torqueNm: number;
  /** Torque that reaches the shank, where the rig measures it. */
  readonly threadTorqueNm?: number | undefined;
  readonly preloadN: number;
}

export interface FrictionFound {
  /** One coefficient that would give the whole torque. */
  readonly total: number;
  readonly thread?: number;
  readonly bearing?: number;
  readonly nutFactor: number;
}

/**
 * Friction from torque and preload.
 *
 * @param path of the test in the input, such as `tests[2].`
 * @returns refused when the torque does not even turn the pitch, or friction would be above 1: a slip of unit
 * @source ISO 16047:2005: μ_tot = (T/F − P/(2π))/(0.577·d2 + 0.5·D_b), μ_th = (T_th/F − P/(2π))/(0.577·d2),
 *         μ_b = (T − T_th)/(0.5·D_b·F), K = T/(F·d)
 */
export function frictionOfTest(
  { torqueNm, threadTorqueNm, preloadN }: TorqueTensionTest,
  geometry: ThreadAndBearing,
  path = '',
): Result<FrictionFound> {
  if (threadTorqueNm !== undefined && threadTorqueNm >= torqueNm) {
    const message = 'The thread cannot take the whole torque or more: nothing is left for the bearing face.';
    return invalid(`${path}threadTorqueNm`, message, `less than ${torqueNm} N·m`);
  }
  const { pitchMm, threadMm, bearingMm } = torqueArms(geometry, { thread: 1, bearing: 1 });
  const armMm = (1000 * torqueNm) / preloadN;
  const total = (armMm - pitchMm) / (threadMm + bearingMm);
  const doubt = outside(total, `${path}torqueNm`, pitchMm * preloadN);
  if (doubt) return doubt;
  const nutFactor = armMm / geometry.majorDiameterMm;
  if (threadTorqueNm === undefined) return ok({ total, nutFactor });
  const thread = ((1000 * threadTorqueNm) / preloadN - pitchMm) / threadMm;
  const threadDoubt = outside(thread, `${path}threadTorqueNm`, pitchMm * preloadN);
  if (threadDoubt) return threadDoubt;
  const bearing = (2000 * (torqueNm - threadTorqueNm)) / (meanBearingDiameterMm(geometry) * preloadN);
  return ok({ total, thread, bearing, nutFactor });
}

function outside(friction: number, field: string, pitchTorqueNmm: number) {
  if (friction > 0 && friction <= 1) return undefined;
  const leastNm = (pitchTorqueNmm / 1000).toPrecision(4);
  const message =
    friction > 1
      ? 'Torque and preload come to a friction above 1. Look at their units.'
      : 'The torque is no more than what the pitch takes without friction. Look at the units of torque and preload.';
  return invalid(field, message, `more than ${leastNm} N·m, such that friction lies between 0 and 1`);
}
