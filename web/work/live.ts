import type { LiveEvent } from '@clampwright/server/contract';

export type LiveTorque = Extract<LiveEvent, { kind: 'torque' }>;
export type LiveWrench = Extract<LiveEvent, { kind: 'wrench' }>;

/** What the live stream of the job tells at this moment. */
export interface Live {
  /** While the wrench is pulled. */
  readonly torque: LiveTorque | undefined;
  /** The latest word of each connected wrench. */
  readonly wrenches: readonly LiveWrench[];
  readonly isLost: boolean;
}

/** The live picture after one more event on the joint at hand. */
export function afterEvent(live: Omit<Live, 'isLost'>, event: LiveEvent, jointRef: string): Omit<Live, 'isLost'> {
  switch (event.kind) {
    case 'torque':
      return event.jointRef === jointRef ? { ...live, torque: event } : live;
    case 'entries':
      // The pull that was shown has become an entry.
      return { ...live, torque: undefined };
    case 'wrench':
      return {
        ...live,
        wrenches: [...live.wrenches.filter(({ wrenchId }) => wrenchId !== event.wrenchId), event],
      };
  }
}
