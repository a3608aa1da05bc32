import { invalid, ok, type Result } from '../../failure/failure.ts';
import { fastener } from '../../fastener/fastener.ts';
import type { ThreadTold } from '../../fastener/own-thread.ts';
import { strongestClass } from '../../fastener/property-class.ts';
import { showNumber } from '../../quantity/show-number.ts';
import { shankStress } from '../torque/shank-stress.ts';
import { type ThreadAndBearing, torqueArms } from '../torque/thread-and-bearing.ts';
import { type TightenedInput, tightened } from '../torque/tightened.ts';
import { preloadForTorque } from '../torque/torque-for-preload.ts';

/** A fastener against whose strength a torque is judged. */
export interface JudgedFastener {
  readonly thread: string;
  /** As it was told, to be looked up again. */
  readonly told: ThreadTold;
  /** Property class, or what stands in for it. */
  readonly className: string;
  /** `className` is a property class, not an own material. */
  readonly isClass: boolean;
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

export interface JudgedInput extends TightenedInput {
  /** In place of the class's own. */
  readonly tensileStrengthMPa?: number | undefined;
  /** What the material is called where it has no class. */
  readonly materialName?: string | undefined;
}

/** Looks the fastener up; where no head is known a usual one stands in. */
export function judgedFastener(input: JudgedInput): Result<JudgedFastener> {
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
  const strongest = strongestClass(data.system, majorDiameterMm);
  const tensileMPa = input.tensileStrengthMPa ?? data.tensileStrengthMPa;
  if (tensileMPa !== undefined && yieldMPa !== undefined && tensileMPa < yieldMPa) {
    const message = `A tensile strength of ${tensileMPa} MPa lies below the yield strength of ${yieldMPa} MPa.`;
    return invalid('tensileStrengthMPa', message, `at least ${yieldMPa} MPa`);
  }
  return ok({
    thread: data.thread,
    told: input.thread,
    className:
      input.materialName ?? data.propertyClass ?? (yieldMPa === undefined ? strongest.name : ownStrength(yieldMPa)),
    isClass: data.propertyClass !== undefined && input.proofStressMPa === undefined,
    isAssumed: yieldMPa === undefined,
    geometry,
    yieldMPa: yieldMPa ?? strongest.yieldStrengthMPa,
    tensileMPa: tensileMPa ?? Math.max(strongest.tensileStrengthMPa, yieldMPa ?? 0),
  });
}

const ownStrength = (yieldMPa: number): string =>
  `of ${showNumber(yieldMPa, 'en', { significant: 3 })} MPa yield strength`;

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
