import { hash } from 'node:crypto';
import { uuidV8 } from '@clampwright/core/record';
import type { FileContext } from './context.ts';
import type { Place } from './place.ts';

/** What makes a pull of a file the same pull when the file is read again. */
export interface Given {
  readonly place: Place;
  /** Time as the file writes it; undefined: it writes none, and the line stands for it. */
  readonly time: string | undefined;
  readonly torque: string;
  readonly angle: string | undefined;
  readonly line: number;
  /** The rest that tells a curve from another one. */
  readonly curve?: string;
}

/** Identity of a pull from what its row says: the same row read twice is the same pull. */
export function identityOf({ jobId }: FileContext, { place, time, torque, angle, line, curve }: Given): string {
  const { jointRef, position, stage, round } = place;
  const text = JSON.stringify([
    jobId,
    jointRef,
    position,
    stage,
    round,
    time,
    torque,
    angle,
    time === undefined ? line : null,
    curve,
  ]);
  return uuidV8(hash('sha256', text));
}
