import type { Device } from '@clampwright/core/device';
import { type Failure, failed, ok, type Result } from '@clampwright/core/failure';
import type { ToldPull } from '@clampwright/core/line';
import type { IncomingPull } from '@clampwright/core/record';
import type { Deps } from '../deps.ts';
import { incomingFrom, madeBefore } from '../wrenches/incoming.ts';
import type { TakenWrench } from '../wrenches/ports.ts';

/** A pull of a device with the place it belongs to. */
export interface PlacedPull {
  readonly taken: TakenWrench;
  readonly pull: IncomingPull;
  /** The device told when it was made; otherwise the time is that of the arrival. */
  readonly isTimed: boolean;
  /** It was made before its wrench was taken: refused, unless it is stored already. */
  readonly early: Failure | undefined;
}

const SOURCES = { serial: 'serial', 'opc-ua': 'opc-ua', http: 'http', folder: 'file' } as const;

/**
 * Where a pull of a device belongs: to the joint for which its wrench was last taken.
 *
 * @returns refused when the wrench is not known or in nobody's hands
 */
export function placePull(deps: Deps, device: Device, told: ToldPull): Result<PlacedPull> {
  const taken = takenFor(deps, device, told);
  if (!taken.ok) return taken;
  const pull = incomingFrom(deps, taken.value, told, SOURCES[device.way.kind]);
  return ok({
    taken: taken.value,
    pull,
    isTimed: told.takenAt !== undefined,
    early: madeBefore(taken.value, told, device.name),
  });
}

function takenFor({ ports }: Deps, { wrenchId, name }: Device, { from }: ToldPull): Result<TakenWrench> {
  const taken = wrenchId === undefined ? ports.inHands(from) : ports.inHand(wrenchId);
  if (taken) return checkSerial(taken, from);
  const which = wrenchId === undefined ? `one with the serial number ${from.join(' or ') || '(none told)'}` : 'it';
  return failed({
    kind: 'conflict',
    message: `A pull of ${name} came, but its wrench is not taken for any open job: take ${which} for a joint, then pull again.`,
    current: null,
  });
}

/** A device of one wrench that names another one has been plugged in somewhere else. */
function checkSerial(taken: TakenWrench, from: readonly string[]): Result<TakenWrench> {
  const { serial } = taken.wrench;
  if (from.length === 0 || from.includes(serial)) return ok(taken);
  return failed({
    kind: 'conflict',
    message: `The pull comes from ${from[0]}, not from ${serial}. Take the wrench that is really there.`,
    current: null,
  });
}
