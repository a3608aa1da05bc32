import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { Friction, ThreadAndBearing } from './thread-and-bearing.ts';
import { frictionForNutFactor } from './torque-for-preload.ts';

/** Friction as it is told: both coefficients, or the nut factor alone. */
export interface FrictionTold {
  readonly threadFriction?: number | undefined;
  readonly bearingFriction?: number | undefined;
  /** K of the short form T = K·d·F. */
  readonly nutFactor?: number | undefined;
}

const COEFFICIENT = 'a coefficient of friction above 0, up to 1, or nutFactor instead of both';

/** Reads friction; a nut factor stands for one coefficient on thread and bearing face. */
export function frictionTold(told: FrictionTold, geometry: ThreadAndBearing): Result<Friction> {
  const { threadFriction: thread, bearingFriction: bearing, nutFactor } = told;
  if (nutFactor !== undefined) {
    if (thread !== undefined || bearing !== undefined) {
      return invalid('nutFactor', 'Friction and nut factor are both told.', 'either friction or nutFactor');
    }
    return fromNutFactor(nutFactor, geometry);
  }
  if (thread === undefined) return invalid('threadFriction', 'It is missing.', COEFFICIENT);
  return bearing === undefined ? invalid('bearingFriction', 'It is missing.', COEFFICIENT) : ok({ thread, bearing });
}

function fromNutFactor(nutFactor: number, geometry: ThreadAndBearing): Result<Friction> {
  const both = frictionForNutFactor(nutFactor, geometry);
  if (both > 0 && both <= 1) return ok({ thread: both, bearing: both });
  const leastFactor = geometry.pitchMm / (2 * Math.PI * geometry.majorDiameterMm);
  const message =
    both <= 0
      ? `A nut factor of ${nutFactor} does not even reach what the pitch takes without friction.`
      : `A nut factor of ${nutFactor} means a friction above 1.`;
  return invalid('nutFactor', message, `more than ${leastFactor.toFixed(3)}; 0.1 to 0.3 is usual`);
}
