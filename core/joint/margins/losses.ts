import { EMBEDDINGS } from '../../fastener/tightening-methods.ts';
import type { JointCheckRequest } from './request.ts';

/** How many surfaces of a kind lie between head and nut. */
export interface Surfaces {
  readonly threads: number;
  readonly bearings: number;
  readonly interfaces: number;
}

/**
 * Surfaces that settle: threads, faces under head and nut, and where parts meet.
 *
 * @param parts clamped parts and washers
 */
export function surfacesOf(
  { jointType, headForm }: Pick<JointCheckRequest, 'jointType' | 'headForm'>,
  parts: number,
): Surfaces {
  const isTapped = jointType === 'tapped';
  return { threads: headForm === 'stud' ? 2 : 1, bearings: isTapped ? 1 : 2, interfaces: isTapped ? parts : parts - 1 };
}

/**
 * What the surfaces give way after tightening, µm.
 *
 * @param roughnessUm Rz, up to 160
 * @source VDI 2230-1:2015, table 5 (from memory)
 */
export function embeddingUm(surfaces: Surfaces, roughnessUm: number, isSheared: boolean): number {
  const load = isSheared ? 'shear' : 'axial';
  const row = EMBEDDINGS.find(
    (one) => one.load === load && roughnessUm > one.roughnessAboveUm && roughnessUm <= one.roughnessUpToUm,
  );
  if (row === undefined) throw new RangeError(`no embedding for Rz ${roughnessUm}`);
  const { threads, bearings, interfaces } = surfaces;
  return threads * row.threadUm + bearings * row.bearingUm + interfaces * row.interfaceUm;
}

/**
 * Preload lost by embedding, N.
 *
 * @source VDI 2230-1:2015, R4: F_Z = f_Z/(δ_S + δ_P)
 */
export const embeddingLossN = (embeddingUm: number, jointMmPerN: number): number => embeddingUm / 1000 / jointMmPerN;

/** A length and how much longer it becomes by a kelvin. */
interface Warmed {
  readonly lengthMm: number;
  readonly expansionPerK: number;
  readonly riseK: number;
}

const growthMm = (parts: readonly Warmed[]): number =>
  parts.reduce((sum, { lengthMm, expansionPerK, riseK }) => sum + lengthMm * expansionPerK * riseK, 0);

/**
 * Change of preload by warmth, N; above 0 where the parts grow more than the bolt.
 *
 * @source VDI 2230-1:2015, R4: ΔF_Vth = l_K·(α_S·ΔT_S − α_P·ΔT_P)/(δ_S + δ_P), with the sign turned about; moduli are
 *         taken as at room temperature
 */
export const temperatureGainN = (bolt: Warmed, parts: readonly Warmed[], jointMmPerN: number): number =>
  (growthMm(parts) - growthMm([bolt])) / jointMmPerN;
