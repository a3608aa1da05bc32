import { aboutMean } from '../about-centre.ts';
import type { Place } from '../layout.ts';
import { tiltGapMm } from '../orders/quality.ts';
import { modelled } from './model.ts';
import type { RingModel } from './model-schema.ts';
import type { InteractionSource } from './source.ts';
import { matrixOf, timesVector } from './square-matrix.ts';

/** Why forces tell no gap: the compliance is known up to its scale only, or together with the bolts' own. */
export const NO_GAP = ['up-to-scale', 'with-bolts'] as const;
export type NoGap = (typeof NO_GAP)[number];

/** How much farther a joint is closed in one place than in another, mm, or why it cannot be told. */
export type ImpliedGap = { readonly gapMm: number } | { readonly whyNoGap: NoGap };

/** What is so small beside the moments of the single forces is rounding. */
const BALANCED = 1e-12;

/** Moment of clamp forces about the middle of all positions, along both axes, N·mm; nothing where they are balanced. */
export function momentNmm(places: readonly Place[], forcesN: ArrayLike<number>): readonly [number, number] {
  let [x, y, whole] = [0, 0, 0];
  for (const [index, [xMm, yMm]] of aboutMean(places).entries()) {
    const forceN = forcesN[index] ?? 0;
    x += forceN * xMm;
    y += forceN * yMm;
    whole += Math.abs(forceN) * Math.hypot(xMm, yMm);
  }
  return Math.hypot(x, y) > BALANCED * whole ? [x, y] : [0, 0];
}

/**
 * The gap that forces imply. Of a pair of flanges: both taken as stiff, tilted by the moment of the forces on a gasket
 * that is even all round. Of a cover or a bar: the closing that its model gives at the bolts, the greatest less the least,
 * bending included. Gasket and bed as they are first pressed.
 */
export function impliedGap(
  { model, complianceMmPerN }: InteractionSource,
  places: readonly Place[],
  forcesN: ArrayLike<number>,
): ImpliedGap {
  if (complianceMmPerN) return { whyNoGap: 'with-bolts' };
  if (!model || model.kind === 'neighbours') return { whyNoGap: 'up-to-scale' };
  if (model.kind === 'ring') {
    return { gapMm: tiltGapMm(places, momentNmm(places, forcesN), bedUnderEach(model)) };
  }
  const joint = modelled(model);
  if (!joint.ok) return { whyNoGap: 'up-to-scale' };
  const { size, values } = joint.value.first;
  const joined = matrixOf(size, (i, j) => values[i * size + j]! - (i === j ? 1 / model.boltNPerMm : 0));
  const closingMm = timesVector(joined, forcesN);
  return { gapMm: Math.max(...closingMm) - Math.min(...closingMm) };
}

/** Stiffness of the gasket under each position, N/mm. */
function bedUnderEach({ gasketOuterMm, gasketInnerMm, gasketMPa, gasketThicknessMm, count }: RingModel): number {
  const areaMm2 = (Math.PI / 4) * (gasketOuterMm ** 2 - gasketInnerMm ** 2);
  return (gasketMPa * areaMm2) / gasketThicknessMm / count;
}
