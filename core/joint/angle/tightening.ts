import { invalid, ok, type Result } from '../../failure/failure.ts';
import { readThread } from '../../fastener/read-thread.ts';
import type { Thread } from '../../fastener/thread.ts';
import type { Friction } from '../torque/thread-and-bearing.ts';
import { boltLaw } from './bolt-law.ts';
import type { TighteningAngleRequest } from './request.ts';
import { springsOf, type TurnedSprings } from './springs-of.ts';
import { type BoltStrength, strengthOf } from './strength-of.ts';
import type { Snug } from './torque-window.ts';
import { preloadAtTorqueN, type TurnedJoint } from './turned-joint.ts';

/** All that is known of a tightening before its target is looked at. */
export interface Tightening {
  readonly thread: Thread;
  readonly springs: TurnedSprings;
  readonly strength: BoltStrength | undefined;
  readonly joint: TurnedJoint;
  /** Absent where no torque is asked for. */
  readonly friction: Friction | undefined;
  readonly snug: Snug;
  readonly snugPreloadN: number;
}

/**
 * Reads what a tightening is about.
 *
 * @returns refused with the field that is missing or contradicts another
 */
export function tighteningOf(request: TighteningAngleRequest): Result<Tightening> {
  const thread = readThread(request.thread);
  if (!thread.ok) return thread;
  const strength = strengthOf(request, thread.value);
  if (!strength.ok) return strength;
  const springs = springsOf(request, thread.value);
  if (!springs.ok) return springs;
  const joint = jointAs(request, springs.value, strength.value);
  const friction = frictionOf(request);
  if (!friction.ok) return friction;
  const snug = snugOf(request);
  if (!snug.ok) return snug;
  if ('torqueNm' in snug.value && friction.value === undefined)
    return invalid('threadFriction', 'It is missing: without friction a torque tells no preload.', 'above 0 to 1');
  const snugPreloadN =
    'preloadN' in snug.value ? snug.value.preloadN : preloadAt(joint, friction.value, snug.value.torqueNm);
  return ok({
    thread: thread.value,
    springs: springs.value,
    strength: strength.value,
    joint,
    friction: friction.value,
    snug: snug.value,
    snugPreloadN,
  });
}

const preloadAt = (joint: TurnedJoint, friction: Friction | undefined, torqueNm: number): number =>
  friction === undefined ? 0 : preloadAtTorqueN(joint, friction, torqueNm);

function jointAs(
  { boltLaw: kind, uniformStrain, prevailingTorqueNm }: TighteningAngleRequest,
  { boltMmPerN, partsMmPerN, yielding, geometry }: TurnedSprings,
  strength: BoltStrength | undefined,
): TurnedJoint {
  return {
    geometry,
    prevailingNm: prevailingTorqueNm,
    elasticMmPerN: boltMmPerN + partsMmPerN,
    sections: yielding,
    strength,
    law: strength === undefined ? undefined : boltLaw(kind, strength, uniformStrain),
  };
}

function frictionOf({ threadFriction, bearingFriction }: TighteningAngleRequest): Result<Friction | undefined> {
  if (threadFriction === undefined && bearingFriction === undefined) return ok(undefined);
  if (threadFriction === undefined)
    return invalid('threadFriction', 'It is missing beside that of the bearing face.', 'above 0 to 1');
  if (bearingFriction === undefined)
    return invalid('bearingFriction', 'It is missing beside that of the thread.', 'above 0 to 1');
  return ok({ thread: threadFriction, bearing: bearingFriction });
}

function snugOf({ snugTorqueNm, snugPreloadN }: TighteningAngleRequest): Result<Snug> {
  if (snugTorqueNm === undefined) return ok({ preloadN: snugPreloadN ?? 0 });
  if (snugPreloadN === undefined) return ok({ torqueNm: snugTorqueNm });
  return invalid('snugPreloadN', 'Snug is told by its torque already.', 'left out, or the torque left out');
}
