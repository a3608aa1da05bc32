import { invalid, ok, type Result } from '../../failure/failure.ts';
import { remark } from '../../language/mechanics/remark.ts';
import { betaOf, freeBeam } from './beam-on-bed.ts';
import type { StripModel } from './model-schema.ts';
import { firmBed, LINEAR, type Modelled, PRESSED, pressedTwice, unloadingFault } from './modelled.ts';
import { matrixOf } from './square-matrix.ts';

/** A bar with free ends on its bed. Refused with the dimension that cannot be. */
export function stripJoint(model: StripModel): Result<Modelled> {
  const { count, spacingMm, endMm, widthMm, heightMm, modulusMPa, bedNPerMm3, bedUnloadingNPerMm3, boltNPerMm } = model;
  const odd = unloadingFault(bedNPerMm3, bedUnloadingNPerMm3);
  if (odd) return odd;
  const lengthMm = (count - 1) * spacingMm + 2 * endMm;
  if (lengthMm === 0)
    return invalid('model.endMm', 'One bolt at the end of no strip.', 'more than 0 for a single bolt');
  const beamOn = (bed: number) => ({
    bendingNmm2: (modulusMPa * widthMm * heightMm ** 3) / 12,
    bedNPerMm2: bed * widthMm,
  });
  const joint = pressedTwice(bedNPerMm3, bedUnloadingNPerMm3, boltNPerMm, (bed) => {
    const at = Array.from({ length: count }, (_, index) => endMm + index * spacingMm);
    const under = at.map((loadMm) => freeBeam(beamOn(bed), lengthMm, loadMm));
    return ok(matrixOf(count, (i, j) => (under[j]!(at[i]!) + under[i]!(at[j]!)) / 2));
  });
  if (!joint.ok) return joint;
  return ok({
    ...joint.value,
    assumptions: [
      remark('strip-beam'),
      ...firmBed(1 / betaOf(beamOn(bedUnloadingNPerMm3 ?? bedNPerMm3)), heightMm),
      LINEAR,
      ...(bedUnloadingNPerMm3 === undefined ? [] : [PRESSED]),
    ],
  });
}
