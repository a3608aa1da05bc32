import { confidenceOf, type Finding } from '../finding.ts';
import type { Evidence } from '../judged-by.ts';

/** Yielded: the slope fell to a share of the elastic one. */
export function yielded({ figures, options, phases, curve }: Evidence): Finding | undefined {
  const { yield: point, slopeNmPerDeg } = figures;
  if (!point || slopeNmPerDeg === undefined || options.intendsYield) return undefined;
  const limit = options.yieldFraction * slopeNmPerDeg;
  const value = lowestAfter(curve.angleDeg, phases.gradient.slope, point.angleDeg);
  return {
    kind: 'yielded',
    confidence: confidenceOf(value, limit),
    atDeg: point.angleDeg,
    quantity: 'slope',
    value,
    limit,
  };
}

function lowestAfter(angleDeg: Float64Array, slope: Float64Array, fromDeg: number): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < slope.length; i++) if (angleDeg[i]! >= fromDeg) lowest = Math.min(lowest, slope[i]!);
  return lowest;
}
