import { invalid, ok, type Result } from '../../failure/failure.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { betaOf } from './beam-on-bed.ts';
import type { RingModel } from './model-schema.ts';
import { firmBed, LINEAR, type Modelled, PRESSED, pressedTwice } from './modelled.ts';
import { pipeHoldN, pipeRadiusMm } from './pipe-hold.ts';
import { circulant, type Ring, ringClosing, torsionConstant } from './ring-model.ts';
import type { SquareMatrix } from './square-matrix.ts';

/** A pair of equal flanges. Refused with the dimension that cannot be. */
export function ringJoint(model: RingModel): Result<Modelled> {
  const odd = ringFault(model);
  if (odd) return odd;
  const { gasketMPa, gasketUnloadingMPa, boltNPerMm } = model;
  const joint = pressedTwice(gasketMPa, gasketUnloadingMPa, boltNPerMm, (bed) => ok(ringMatrix(model, bed)));
  if (!joint.ok) return joint;
  return ok({
    ...joint.value,
    assumptions: [
      remark('ring-flanges'),
      remark('gasket-pulls'),
      remark('bolts-upright'),
      ...heldBy(model),
      ...firmBed(1 / betaOf(ringOf(model, gasketUnloadingMPa ?? gasketMPa)), model.heightMm),
      LINEAR,
      ...(gasketUnloadingMPa === undefined ? [] : [PRESSED]),
    ],
  });
}

function ringFault({
  boltCircleMm,
  outerMm,
  innerMm,
  gasketOuterMm,
  gasketInnerMm,
  gasketUnloadingMPa,
  gasketMPa,
  pipeWallMm,
}: RingModel) {
  if (innerMm >= outerMm)
    return invalid('model.innerMm', `A bore of ${innerMm} mm leaves no ring.`, `less than ${outerMm} mm`);
  if (boltCircleMm <= innerMm || boltCircleMm >= outerMm) {
    const message = `The bolt circle of ${boltCircleMm} mm does not lie on the ring.`;
    return invalid('model.boltCircleMm', message, `between ${innerMm} and ${outerMm} mm`);
  }
  if (gasketInnerMm >= gasketOuterMm) {
    const message = `A gasket from ${gasketInnerMm} to ${gasketOuterMm} mm has no face.`;
    return invalid('model.gasketInnerMm', message, `less than ${gasketOuterMm} mm`);
  }
  if (gasketOuterMm <= innerMm) {
    return invalid('model.gasketOuterMm', 'The gasket lies in the bore.', `more than ${innerMm} mm`);
  }
  if (gasketOuterMm > outerMm) {
    return invalid('model.gasketOuterMm', 'The gasket reaches past the flange.', `at most ${outerMm} mm`);
  }
  if (pipeWallMm !== undefined && innerMm + 2 * pipeWallMm >= outerMm) {
    return invalid('model.pipeWallMm', 'The pipe is as wide as the flange.', `less than ${(outerMm - innerMm) / 2} mm`);
  }
  if (gasketUnloadingMPa !== undefined && gasketUnloadingMPa < gasketMPa) {
    const message = 'A gasket is at least as stiff when it is let go as when it is pressed first.';
    return invalid('model.gasketUnloadingMPa', message, `at least ${gasketMPa} MPa`);
  }
  return undefined;
}

/** Both flanges. */
const ringMatrix = (model: RingModel, gasketMPa: number): SquareMatrix =>
  circulant(ringClosing(ringOf(model, gasketMPa), model.count).map((one) => 2 * one));

/** Of the pipe, all round: moment for each radian of the circle and of twist, N·mm. */
function pipeHoldOf({ innerMm: boreMm, pipeWallMm: wallMm, modulusMPa, poisson }: RingModel): number {
  if (wallMm === undefined) return 0;
  return pipeHoldN({ boreMm, wallMm, modulusMPa, poisson }) * pipeRadiusMm({ boreMm, wallMm });
}

function heldBy({ hubN, pipeWallMm }: RingModel): readonly Remark[] {
  if (pipeWallMm !== undefined) return [remark('pipe-holds')];
  return hubN === 0 ? [remark('no-hub')] : [];
}

/** One flange on half of the gasket's thickness. */
function ringOf(model: RingModel, gasketMPa: number): Ring {
  const { outerMm, innerMm, heightMm, gasketOuterMm, gasketInnerMm, gasketThicknessMm, modulusMPa, poisson } = model;
  const radiusMm = (outerMm + innerMm) / 4;
  const widthMm = (outerMm - innerMm) / 2;
  const gasketRadiusMm = (gasketOuterMm + gasketInnerMm) / 4;
  const gasketWidthMm = (gasketOuterMm - gasketInnerMm) / 2;
  const shearMPa = modulusMPa / (2 * (1 + poisson));
  return {
    radiusMm,
    bendingNmm2: (modulusMPa * widthMm * heightMm ** 3) / 12,
    torsionNmm2: shearMPa * torsionConstant(widthMm, heightMm),
    bedNPerMm2: ((2 * gasketMPa * gasketWidthMm) / gasketThicknessMm) * (gasketRadiusMm / radiusMm),
    gasketWidthMm,
    gasketInsideMm: radiusMm - gasketRadiusMm,
    boltsOutsideMm: model.boltCircleMm / 2 - radiusMm,
    hubN: model.hubN + pipeHoldOf(model) / radiusMm,
  };
}
