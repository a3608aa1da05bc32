import { invalid, ok, type Result } from '../../failure/failure.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { places, samePlace } from '../places.ts';
import { freeBeam } from './beam-on-bed.ts';
import type { InteractionModel, NeighbourModel, PlateModel, RingModel, StripModel } from './model-schema.ts';
import { plateClosing, plateFigures } from './plate-on-bed.ts';
import { circulant, ringClosing, torsionConstant } from './ring-model.ts';
import type { GivingWay } from './simulate.ts';
import { asCompliance, matrixOf, type SquareMatrix } from './square-matrix.ts';

/** A compliance worked out, and what was taken for granted. */
export interface Modelled extends GivingWay {
  readonly assumptions: readonly Remark[];
}

/** Compliance of a joint from its dimensions. Refused with the dimension that cannot be. */
export function modelled(model: InteractionModel): Result<Modelled> {
  switch (model.kind) {
    case 'ring':
      return ofRing(model);
    case 'plate':
      return ofPlate(model);
    case 'strip':
      return ofStrip(model);
    case 'neighbours':
      return ofNeighbours(model);
  }
}

const LINEAR = remark('linear');
const PRESSED = remark('pressed-first');

const withBolts = (closing: SquareMatrix, boltNPerMm: number): SquareMatrix =>
  matrixOf(closing.size, (i, j) => closing.values[i * closing.size + j]! + (i === j ? 1 / boltNPerMm : 0));

/** A joint on its gasket or bed as it is pressed first and, where that is told, as it is once pressed. */
function pressedTwice(
  bed: number,
  bedUnloading: number | undefined,
  boltNPerMm: number,
  closing: (bed: number) => SquareMatrix,
): Result<GivingWay> {
  const first = reckonable(withBolts(closing(bed), boltNPerMm));
  if (!first.ok || bedUnloading === undefined) return first.ok ? ok({ first: first.value }) : first;
  const later = reckonable(withBolts(closing(bedUnloading), boltNPerMm));
  return later.ok ? ok({ first: first.value, later: later.value }) : later;
}

function reckonable(compliance: SquareMatrix): Result<SquareMatrix> {
  const read = asCompliance(compliance, 'model');
  if (read.ok) return read;
  const message = 'These dimensions and stiffnesses lie too far apart to be reckoned with.';
  return invalid('model', message, 'dimensions and stiffnesses of a real joint');
}

function ofRing(model: RingModel): Result<Modelled> {
  const odd = ringFault(model);
  if (odd) return odd;
  const { gasketMPa, gasketUnloadingMPa, boltNPerMm } = model;
  const joint = pressedTwice(gasketMPa, gasketUnloadingMPa, boltNPerMm, (modulusMPa) => ringMatrix(model, modulusMPa));
  if (!joint.ok) return joint;
  return ok({
    ...joint.value,
    assumptions: [
      remark('ring-flanges'),
      remark('gasket-pulls'),
      remark('bolts-upright'),
      ...(model.hubN === 0 ? [remark('no-hub')] : []),
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
  if (gasketUnloadingMPa !== undefined && gasketUnloadingMPa < gasketMPa) {
    const message = 'A gasket is at least as stiff when it is let go as when it is pressed first.';
    return invalid('model.gasketUnloadingMPa', message, `at least ${gasketMPa} MPa`);
  }
  return undefined;
}

/** Both flanges, each on half of the gasket's thickness. */
function ringMatrix(model: RingModel, gasketMPa: number): SquareMatrix {
  const { outerMm, innerMm, heightMm, gasketOuterMm, gasketInnerMm, gasketThicknessMm, modulusMPa, poisson } = model;
  const radiusMm = (outerMm + innerMm) / 4;
  const widthMm = (outerMm - innerMm) / 2;
  const gasketRadiusMm = (gasketOuterMm + gasketInnerMm) / 4;
  const gasketWidthMm = (gasketOuterMm - gasketInnerMm) / 2;
  const shearMPa = modulusMPa / (2 * (1 + poisson));
  const closing = ringClosing(
    {
      radiusMm,
      bendingNmm2: (modulusMPa * widthMm * heightMm ** 3) / 12,
      torsionNmm2: shearMPa * torsionConstant(widthMm, heightMm),
      bedNPerMm2: ((2 * gasketMPa * gasketWidthMm) / gasketThicknessMm) * (gasketRadiusMm / radiusMm),
      gasketInsideMm: radiusMm - gasketRadiusMm,
      boltsOutsideMm: model.boltCircleMm / 2 - radiusMm,
      hubN: model.hubN,
    },
    model.count,
  );
  return circulant(closing.map((one) => 2 * one));
}

/** The larger of the first stiffness and that of unloading, where it is told; refused when it is the softer one. */
function unloadingFault(first: number, unloading: number | undefined) {
  if (unloading === undefined || unloading >= first) return undefined;
  const message = 'A bed is at least as stiff when it is let go as when it is pressed first.';
  return invalid('model.bedUnloadingNPerMm3', message, `at least ${first} N/mm³`);
}

function ofPlate(model: PlateModel): Result<Modelled> {
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
  const joint = pressedTwice(bedNPerMm3, bedUnloadingNPerMm3, boltNPerMm, (bed) => {
    const closing = plateClosing({ ...model, bedNPerMm3: bed });
    return matrixOf(all.length, (i, j) => closing(Math.hypot(all[i]!.xMm - all[j]!.xMm, all[i]!.yMm - all[j]!.yMm)));
  });
  if (!joint.ok) return joint;
  const { lengthMm } = plateFigures(model);
  return ok({
    ...joint.value,
    assumptions: [
      remark('plate-cover', { lengthMm: Number(lengthMm.toPrecision(4)) }),
      remark('plate-bed'),
      LINEAR,
      ...(bedUnloadingNPerMm3 === undefined ? [] : [PRESSED]),
    ],
  });
}

function ofStrip(model: StripModel): Result<Modelled> {
  const { count, spacingMm, endMm, widthMm, heightMm, modulusMPa, bedNPerMm3, bedUnloadingNPerMm3, boltNPerMm } = model;
  const odd = unloadingFault(bedNPerMm3, bedUnloadingNPerMm3);
  if (odd) return odd;
  const lengthMm = (count - 1) * spacingMm + 2 * endMm;
  if (lengthMm === 0)
    return invalid('model.endMm', 'One bolt at the end of no strip.', 'more than 0 for a single bolt');
  const joint = pressedTwice(bedNPerMm3, bedUnloadingNPerMm3, boltNPerMm, (bed) => {
    const beam = { bendingNmm2: (modulusMPa * widthMm * heightMm ** 3) / 12, bedNPerMm2: bed * widthMm };
    const at = Array.from({ length: count }, (_, index) => endMm + index * spacingMm);
    const under = at.map((loadMm) => freeBeam(beam, lengthMm, loadMm));
    return matrixOf(count, (i, j) => (under[j]!(at[i]!) + under[i]!(at[j]!)) / 2);
  });
  if (!joint.ok) return joint;
  return ok({
    ...joint.value,
    assumptions: [remark('strip-beam'), LINEAR, ...(bedUnloadingNPerMm3 === undefined ? [] : [PRESSED])],
  });
}

/** Compliance over that of one bolt: 1, then the neighbour's, then less by the decay with each step. */
export const neighbourCompliance = ({
  arrangement,
  count,
  neighbour,
  decay,
}: Omit<NeighbourModel, 'kind'>): SquareMatrix =>
  matrixOf(count, (i, j) => {
    const apart = Math.abs(i - j);
    const steps = arrangement === 'circle' ? Math.min(apart, count - apart) : apart;
    return steps === 0 ? 1 : neighbour * decay ** (steps - 1);
  });

function ofNeighbours(model: NeighbourModel): Result<Modelled> {
  const matrix = asCompliance(neighbourCompliance(model), 'model.neighbour');
  if (!matrix.ok) {
    const message = 'No elastic joint has neighbours that take part so much.';
    return invalid('model.neighbour', message, 'nearer to 0, or a decay nearer to 0');
  }
  return ok({
    first: matrix.value,
    assumptions: [remark('bolts-alike'), LINEAR],
  });
}
