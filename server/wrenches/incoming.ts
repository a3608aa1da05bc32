import type { ToldPull } from '@clampwright/core/line';
import type { IncomingPull } from '@clampwright/core/record';
import { type Deps, newId } from '../deps.ts';
import type { TakenWrench } from './ports.ts';

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
