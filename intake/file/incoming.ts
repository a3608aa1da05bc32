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
  const { jointRef, position, stage, round, wrenchId } = read.place;
  return {
    kind: 'record-pull',
    id: read.id,
    jointRef,
    ...(position === undefined ? {} : { position }),
    ...(stage === undefined ? {} : { stage }),
    ...(round === undefined ? {} : { round }),
    ...(wrenchId === undefined ? {} : { wrenchId }),
    source: {
      kind: 'file',
      detail: fileName === undefined ? `line ${read.line}` : `${fileName.slice(0, 250)}, line ${read.line}`,
    },
    takenAt: read.timeMs === undefined ? readAt : new Date(Math.round(read.timeMs)).toISOString(),
    shown: { torque: shown(read.torque), ...(read.angle ? { angle: shown(read.angle) } : {}) },
    shownTorqueNm: read.torqueNm,
    ...(read.angleDeg === undefined ? {} : { shownAngleDeg: read.angleDeg }),
    ...read.curve,
  };
}
