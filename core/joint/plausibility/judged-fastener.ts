import { ok, type Result } from '../../failure/failure.ts';
import { fastener } from '../../fastener/fastener.ts';
import { PROPERTY_CLASSES } from '../../fastener/property-class.ts';
import { shankStress } from '../torque/shank-stress.ts';
import { type ThreadAndBearing, torqueArms } from '../torque/thread-and-bearing.ts';
import { type TightenedInput, tightened } from '../torque/tightened.ts';
import { preloadForTorque } from '../torque/torque-for-preload.ts';

/** A fastener against whose strength a torque is judged. */
export interface JudgedFastener {
  readonly thread: string;
  readonly className: string;
  /** No class was told: the strongest of the size stands in, so that only what breaks all of them is told. */
  readonly isAssumed: boolean;
  readonly geometry: ThreadAndBearing;
  readonly yieldMPa: number;
  readonly tensileMPa: number;
}

/** What a torque does at one friction. */
export interface Used {
  readonly preloadN: number;
  /** Equivalent stress in the shank over yield strength. */
  readonly utilization: number;
}

/** Bearing face and hole over thread where the tables have none (common practice). */
const USUAL_FACE = 1.5;
const USUAL_HOLE = 1.1;

/** Looks the fastener up; where no head is known a usual one stands in. */
export function judgedFastener(input: TightenedInput): Result<JudgedFastener> {
  const named = fastener(input.thread, input.propertyClass);
  if (!named.ok) return named;
  const { majorDiameterMm } = named.value;
  const found = tightened(input);
  const known =
    found.ok || input.bearingOuterMm !== undefined || input.holeMm !== undefined
      ? found
      : tightened({ ...input, bearingOuterMm: USUAL_FACE * majorDiameterMm, holeMm: USUAL_HOLE * majorDiameterMm });
  if (!known.ok) return known;
  const { data, geometry, yieldMPa } = known.value;
  const strongest = strongestOf(data.system, majorDiameterMm);
  return ok({
    thread: data.thread,
    className: data.propertyClass ?? strongest.name,
    isAssumed: yieldMPa === undefined,
    geometry,
    yieldMPa: yieldMPa ?? strongest.yieldStrengthMPa,
    tensileMPa: data.tensileStrengthMPa ?? Math.max(strongest.tensileStrengthMPa, yieldMPa ?? 0),
  });
}

function strongestOf(system: 'ISO metric' | 'Unified', majorDiameterMm: number) {
  const having = PROPERTY_CLASSES.filter(
    (row) => row.system === system && majorDiameterMm > row.aboveMm && majorDiameterMm <= row.upToMm,
  );
  const [strongest] = having.toSorted((a, b) => b.tensileStrengthMPa - a.tensileStrengthMPa);
  if (!strongest) throw new Error(`no property class at ${majorDiameterMm} mm`);
  return strongest;
}

/**
 * Preload and utilization that a clamping torque brings at one friction of thread and bearing face.
 *
 * @source ISO 16047:2005 and VDI 2230-1:2015, R7
 */
export function usedAt(torqueNm: number, friction: number, { geometry, yieldMPa }: JudgedFastener): Used {
  const both = { thread: friction, bearing: friction };
  const preloadN = preloadForTorque(torqueNm, geometry, both);
  const { pitchMm, threadMm } = torqueArms(geometry, both);
  const { vonMisesMPa } = shankStress(preloadN, (preloadN * (pitchMm + threadMm)) / 1000, geometry);
  return { preloadN, utilization: vonMisesMPa / yieldMPa };
}

/** Torque that uses so much of the yield strength; utilization is proportional to torque. */
export const torqueUsing = (utilization: number, friction: number, judged: JudgedFastener): number =>
  utilization / usedAt(1, friction, judged).utilization;
