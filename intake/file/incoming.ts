import type { IncomingPull, Trace } from '@clampwright/core/record';
import type { FileContext } from './context.ts';
import type { Figure } from './figures.ts';
import type { Place } from './place.ts';

/** What was read of one pull of a file. */
export interface ReadPull {
  readonly id: string;
  readonly line: number;
  readonly place: Place;
  /** UTC milliseconds; undefined: the file does not say. */
  readonly timeMs: number | undefined;
  readonly torque: Pick<Figure, 'text' | 'unitText'>;
  readonly torqueNm: number;
  readonly angle: Pick<Figure, 'text' | 'unitText'> | undefined;
  readonly angleDeg: number | undefined;
  readonly curve?: { readonly trace: Trace; readonly fastestDegPerS: number };
}

const shown = ({ text, unitText }: Pick<Figure, 'text' | 'unitText'>) => ({ text, unit: unitText });

/** The pull as `record-pull` wants it. */
export function incomingPull({ readAt, fileName }: FileContext, read: ReadPull): IncomingPull {
  const { place, line, timeMs, torque, torqueNm, angle, angleDeg, curve } = read;
  const pull: IncomingPull = {
    kind: 'record-pull',
    id: read.id,
    jointRef: place.jointRef,
    source: {
      kind: 'file',
      detail: fileName === undefined ? `line ${line}` : `${fileName.slice(0, 250)}, line ${line}`,
    },
    takenAt: timeMs === undefined ? readAt : new Date(Math.round(timeMs)).toISOString(),
    shown: angle ? { torque: shown(torque), angle: shown(angle) } : { torque: shown(torque) },
    shownTorqueNm: torqueNm,
  };
  if (place.position !== undefined) pull.position = place.position;
  if (place.stage !== undefined) pull.stage = place.stage;
  if (place.round !== undefined) pull.round = place.round;
  if (place.wrenchId !== undefined) pull.wrenchId = place.wrenchId;
  if (angleDeg !== undefined) pull.shownAngleDeg = angleDeg;
  return curve ? { ...pull, ...curve } : pull;
}
