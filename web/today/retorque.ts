import type { Today } from '@clampwright/server/contract';

export type Retorque = Today['retorques'][number];

const DAY_MS = 86_400_000;

/** Days after a closing are known to be past; hours of running and kilometres only the asset knows. */
export const isPast = (due: Retorque, nowMs: number): boolean =>
  due.unit === 'd' && Date.parse(due.closedAt) + due.after * DAY_MS <= nowMs;

/** Joints that want the same. */
export interface Alike {
  readonly due: Retorque;
  readonly joints: number;
}

const isSame = (a: Retorque, b: Retorque): boolean =>
  a.jobId === b.jobId && a.after === b.after && a.unit === b.unit && a.note === b.note;

/** Joints of one job that want the same, such as the wheels of a vehicle, stand together. */
export const alike = (retorques: readonly Retorque[]): readonly Alike[] =>
  retorques
    .filter((due, index) => retorques.findIndex((other) => isSame(other, due)) === index)
    .map((due) => ({ due, joints: retorques.filter((other) => isSame(other, due)).length }));
