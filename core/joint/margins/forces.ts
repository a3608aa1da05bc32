import { ok, type Result } from '../../failure/failure.ts';
import { type AssemblyPreload, assemblyPreload } from './assembly-preload.ts';
import type { CheckedJoint } from './checked-joint.ts';
import { embeddingLossN, embeddingUm, surfacesOf, temperatureGainN } from './losses.ts';

/** Forces in the joint, N. */
export interface Forces {
  readonly assembly: AssemblyPreload;
  readonly embeddingUm: number;
  readonly embeddingLossN: number;
  /** Above 0 where warmth tightens the joint. */
  readonly temperatureGainN: number;
  /** F_V,min and F_V,max: preload in service. */
  readonly preloadMinN: number;
  readonly preloadMaxN: number;
  /** F_PA: what the axial load takes off the clamp force. */
  readonly unloadedN: number;
  /** F_KR,min: clamp force left; below 0 where the joint opens. */
  readonly clampMinN: number;
  /** F_S,max: the bolt's greatest force. */
  readonly boltMaxN: number;
}

/**
 * Preload after scatter, embedding and warmth, and what an axial load makes of it.
 *
 * @source VDI 2230-1:2015, R1 to R6: F_V,min = F_M,max/α_A − F_Z − ΔF_Vth, F_KR = F_V − (1 − Φ)·F_A, F_S = F_V + Φ·F_A
 */
export function forcesIn(checked: CheckedJoint): Result<Forces> {
  const { request, turned, compliance } = checked;
  const assembly = assemblyPreload(request, turned);
  if (!assembly.ok) return assembly;
  const settlingUm = request.embeddingUm ?? estimatedUm(checked);
  const embeddingN = embeddingLossN(settlingUm, turned.elasticMmPerN);
  const warmthN = warmthGainN(checked);
  const { leastN, greatestN } = assembly.value;
  const preloadMinN = leastN - embeddingN + Math.min(0, warmthN);
  const preloadMaxN = greatestN + Math.max(0, warmthN);
  const unloadedN = (1 - compliance.loadFactor) * request.axialLoadN;
  return ok({
    assembly: assembly.value,
    embeddingUm: settlingUm,
    embeddingLossN: embeddingN,
    temperatureGainN: warmthN,
    preloadMinN,
    preloadMaxN,
    unloadedN,
    clampMinN: preloadMinN - unloadedN,
    boltMaxN: Math.max(preloadMaxN + compliance.loadFactor * request.axialLoadN, request.axialLoadN),
  });
}

const estimatedUm = ({ request }: CheckedJoint): number => {
  const surfaces = surfacesOf(request, request.layers.length + request.washers.length);
  return embeddingUm(surfaces, request.roughnessUm, request.shearLoadN > 0);
};

/** Washers are taken as steel. */
function warmthGainN({ request, compliance, turned, layerExpansionsPerK, boltExpansionPerK }: CheckedJoint): number {
  const { boltRiseK, partsRiseK } = request;
  const parts = request.layers.map(({ thicknessMm }, index) => ({
    lengthMm: thicknessMm,
    expansionPerK: layerExpansionsPerK[index] ?? 0,
    riseK: partsRiseK,
  }));
  const washers = request.washers.map(({ thicknessMm }) => ({
    lengthMm: thicknessMm,
    expansionPerK: boltExpansionPerK,
    riseK: partsRiseK,
  }));
  const bolt = { lengthMm: compliance.gripMm, expansionPerK: boltExpansionPerK, riseK: boltRiseK };
  return temperatureGainN(bolt, [...parts, ...washers], turned.elasticMmPerN);
}
