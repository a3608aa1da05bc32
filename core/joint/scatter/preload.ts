import { invalid, ok, type Result } from '../../failure/failure.ts';
import { remark } from '../../language/mechanics/remark.ts';
import type { Interval } from '../../statistics/order-statistics.ts';
import type { StepShown } from '../step-shown.ts';
import { classDoubts, frictionDoubts, utilizationDoubts } from '../torque/doubts.ts';
import { type FrictionTold, frictionTold } from '../torque/friction-told.ts';
import { type Edition, type ShankStress, shankStress } from '../torque/shank-stress.ts';
import type { Friction, ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import { type Tightened, type TightenedInput, tightened } from '../torque/tightened.ts';
import { nutFactorOf, preloadForTorque, type TorqueShares, torqueForPreload } from '../torque/torque-for-preload.ts';
import type { Warning } from '../warning.ts';
import { type Agreement, agreementOf } from './agreement.ts';
import { byDrawing, type DrawnPreload } from './by-drawing.ts';
import { byPropagation, type Contribution, type PropagatedPreload } from './by-propagation.ts';
import { type PreloadModel, type PreloadTold, preloadModel } from './preload-quantities.ts';
import { preloadSteps } from './preload-steps.ts';
import { valueOf } from './told.ts';

export interface PreloadInput extends Omit<TightenedInput, 'bearingOuterMm' | 'holeMm'>, PreloadTold {
  /** Thread and bearing face share one lubricant: their friction rises and falls together. */
  readonly sameLubricant: boolean;
  /** Window of the preload; the shares outside of it are told. */
  readonly lowerPreloadN?: number | undefined;
  readonly upperPreloadN?: number | undefined;
  /** 0 leaves the drawing out. */
  readonly draws: number;
  readonly seed: number;
  /** Digits of the uncertainty that mean something; they decide when the two ways disagree. */
  readonly significantDigits: 1 | 2;
  readonly edition: Edition;
}

export interface Preload extends ShankStress {
  readonly preloadN: number;
  readonly standardUncertaintyN: number;
  readonly interval95N: Interval;
  readonly probabilityBelowN?: number;
  readonly probabilityAboveN?: number;
  readonly contributions: readonly Contribution[];
  /** Which of the two the figures above come from. */
  readonly method: 'propagation' | 'monte-carlo';
  readonly propagation: PropagatedPreload;
  readonly monteCarlo?: DrawnPreload;
  readonly agreement?: Agreement;
  readonly nutFactor: number;
  readonly shares: TorqueShares['shares'];
  readonly utilization?: number;
  readonly warnings: readonly Warning[];
  readonly steps: readonly StepShown[];
}

/**
 * Preload that a torque brings, with its uncertainty by the law of propagation and by drawing.
 *
 * @returns the figures of the law of propagation, unless the drawing shows that it does not hold: then those of the
 *          drawing
 * @source ISO 16047:2005; JCGM 100:2008, clause 5; JCGM 101:2008, clauses 7 and 8
 */
export function preload(input: PreloadInput): Result<Preload> {
  const fastener = tightened({
    ...input,
    bearingOuterMm: input.bearingOuterMm === undefined ? undefined : valueOf(input.bearingOuterMm),
    holeMm: input.holeMm === undefined ? undefined : valueOf(input.holeMm),
  });
  if (!fastener.ok) return fastener;
  const geometry = geometryOf(input, fastener.value.geometry);
  const friction = frictionTold(frictionValues(input), geometry);
  if (!friction.ok) return friction;
  const model = preloadModel(input, geometry);
  if (!model.ok) return model;
  const together = togetherOf(input, model.value);
  if (!together.ok) return together;
  return ok(worked(input, { ...fastener.value, geometry }, friction.value, model.value, together.value));
}

const geometryOf = ({ pitchDiameterMm }: PreloadInput, geometry: ThreadAndBearing): ThreadAndBearing =>
  pitchDiameterMm === undefined ? geometry : { ...geometry, pitchDiameterMm: valueOf(pitchDiameterMm) };

const frictionValues = ({ threadFriction, bearingFriction, nutFactor }: PreloadInput): FrictionTold => ({
  threadFriction: threadFriction === undefined ? undefined : valueOf(threadFriction),
  bearingFriction: bearingFriction === undefined ? undefined : valueOf(bearingFriction),
  nutFactor: nutFactor === undefined ? undefined : valueOf(nutFactor),
});

/** Columns that are drawn together. */
export type Together = readonly (readonly [leader: number, follower: number])[];

function togetherOf({ sameLubricant }: PreloadInput, { names, quantities }: PreloadModel): Result<Together> {
  const pair = [names.indexOf('threadFriction'), names.indexOf('bearingFriction')] as const;
  const [thread, bearing] = pair.map((index) => quantities[index]);
  if (!sameLubricant || thread === undefined || bearing === undefined) return ok([]);
  if (thread.standardUncertainty === 0 || bearing.standardUncertainty === 0) return ok([]);
  if (thread.distribution === bearing.distribution) return ok([pair]);
  const message = 'One lubricant on thread and bearing face has one distribution.';
  return invalid('bearingFriction.distribution', message, thread.distribution);
}

function worked(
  input: PreloadInput,
  { data, geometry, yieldMPa }: Tightened,
  friction: Friction,
  model: PreloadModel,
  together: Together,
): Preload {
  const clampingNm = valueOf(input.torqueNm) - valueOf(input.prevailingTorqueNm);
  const preloadN = preloadForTorque(clampingNm, geometry, friction);
  const { shares } = torqueForPreload(preloadN, geometry, friction);
  const shankTorqueNm = valueOf(input.torqueNm) - shares.bearing * clampingNm;
  const stress = shankStress(preloadN, shankTorqueNm, geometry, input.edition);
  const utilization = yieldMPa === undefined ? undefined : stress.vonMisesMPa / yieldMPa;
  const { contributions, ...propagation } = byPropagation(input, preloadN, model, together);
  const drawn = input.draws === 0 ? undefined : byDrawing(input, model, together);
  const agreement = drawn && agreementOf(propagation, drawn, input.significantDigits);
  const told = drawn && agreement?.agree === false ? drawn : propagation;
  const { tensileLoadN = Infinity } = data;
  return {
    preloadN,
    standardUncertaintyN: told.standardUncertaintyN,
    interval95N: told.interval95N,
    ...(told.probabilityBelowN === undefined ? {} : { probabilityBelowN: told.probabilityBelowN }),
    ...(told.probabilityAboveN === undefined ? {} : { probabilityAboveN: told.probabilityAboveN }),
    contributions,
    method: told === propagation ? 'propagation' : 'monte-carlo',
    propagation,
    ...(drawn === undefined ? {} : { monteCarlo: drawn }),
    ...(agreement === undefined ? {} : { agreement }),
    nutFactor: nutFactorOf(geometry, friction),
    shares,
    ...stress,
    ...(utilization === undefined ? {} : { utilization }),
    warnings: [
      ...classDoubts(data),
      ...(input.nutFactor === undefined
        ? [...frictionDoubts('threadFriction', friction.thread), ...frictionDoubts('bearingFriction', friction.bearing)]
        : frictionDoubts('nutFactor', friction.thread)),
      ...breakingDoubts(preloadN, tensileLoadN),
      ...(preloadN > tensileLoadN ? [] : utilizationDoubts(utilization, 'torqueNm')),
    ],
    steps: preloadSteps({
      told: input,
      geometry,
      friction,
      preloadN,
      stress,
      standardUncertaintyN: propagation.standardUncertaintyN,
      contributions,
    }),
  };
}

function breakingDoubts(preloadN: number, tensileLoadN: number): readonly Warning[] {
  if (preloadN <= tensileLoadN) return [];
  return [{ field: 'torqueNm', ...remark('breaks-before', { tensileLoadN }) }];
}
