import type { ToldPull } from '@clampwright/core/line';
import type { IncomingPull } from '@clampwright/core/record';
import { type Deps, newId } from '../deps.ts';
import type { TakenWrench } from './ports.ts';

/** Clocks of devices differ by so much from ours. */
const CLOCK_TOLERANCE_MS = 5 * 60_000;

/**
 * What speaks against placing a pull where its wrench is in hand now: it was made before the wrench was taken, so it
 * belongs to earlier work. It is refused, not guessed where to, and its sender keeps it.
 *
 * @param name what told it
 */
export function madeBefore({ since }: Pick<TakenWrench, 'since'>, { takenAt }: ToldPull, name: string) {
  if (takenAt === undefined || Date.parse(takenAt) >= Date.parse(since) - CLOCK_TOLERANCE_MS) return undefined;
  return {
    kind: 'conflict',
    message: `A pull of ${name} was made at ${takenAt}, before its wrench was taken for this work at ${since}: it belongs to earlier work. Record it there by hand; if it is of now, set the clock of the device.`,
    current: null,
  } as const;
}

/** A pull that a device told, as the door wants it: what the device did not say is put in. */
export function incomingFrom(
  deps: Pick<Deps, 'now' | 'random'>,
  { wrench, jointRef }: Pick<TakenWrench, 'wrench' | 'jointRef'>,
  told: ToldPull,
  kind: IncomingPull['source']['kind'],
): IncomingPull {
  const { torque, angle, position, fastestDegPerS, trace, from } = told;
  const shown = ({ text, unit }: ToldPull['torque']) => ({ text, unit });
  return {
    kind: 'record-pull',
    id: told.id ?? newId(deps),
    jointRef,
    ...(position === undefined ? {} : { position }),
    wrenchId: wrench.id,
    source: { kind, detail: from[0] ?? wrench.serial },
    takenAt: told.takenAt ?? deps.now().toISOString(),
    shown: { torque: shown(torque), ...(angle ? { angle: shown(angle) } : {}) },
    shownTorqueNm: torque.value,
    ...(angle ? { shownAngleDeg: angle.value } : {}),
    ...(fastestDegPerS === undefined ? {} : { fastestDegPerS }),
    ...(trace ? { trace } : {}),
  };
}
