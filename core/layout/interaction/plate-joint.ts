import { invalid, ok, type Result } from '../../failure/failure.ts';
import { remark } from '../../language/mechanics/remark.ts';
import { coverClosing } from '../cover/cover.ts';
import { places, samePlace } from '../places.ts';
import type { PlateModel } from './model-schema.ts';
import { firmBed, LINEAR, type Modelled, PRESSED, pressedTwice, unloadingFault } from './modelled.ts';
import { plateFigures } from './plate-on-bed.ts';

/** A cover on its bed. Refused with the dimension or the place that cannot be. */
export function plateJoint(model: PlateModel): Result<Modelled> {
  const { bedNPerMm3, bedUnloadingNPerMm3, boltNPerMm } = model;
  const odd = unloadingFault(bedNPerMm3, bedUnloadingNPerMm3);
  if (odd) return odd;
  const all = places(model.layout);
  const together = samePlace(all);
  if (together) {
    const field = model.layout.kind === 'points' ? `model.layout.points[${together[1] - 1}]` : 'model.layout';
    return invalid(
      field,
      `Bolts ${together[0]} and ${together[1]} stand in one point.`,
      'a place of its own for each bolt',
    );
  }
  const joint = pressedTwice(bedNPerMm3, bedUnloadingNPerMm3, boltNPerMm, (bed) =>
    coverClosing({ ...model, bedNPerMm3: bed }, all),
  );
  if (!joint.ok) return joint;
  const figures = { lengthMm: Number(plateFigures(model).lengthMm.toPrecision(4)) };
  return ok({
    ...joint.value,
    assumptions: [
      model.edgeMm === undefined ? remark('plate-cover', figures) : remark('plate-edges', figures),
      remark('plate-bed'),
      ...firmBed(plateFigures({ ...model, bedNPerMm3: bedUnloadingNPerMm3 ?? bedNPerMm3 }).lengthMm, model.heightMm),
      LINEAR,
      ...(bedUnloadingNPerMm3 === undefined ? [] : [PRESSED]),
    ],
  });
}
