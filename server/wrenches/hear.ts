import type { ToldPull } from '@clampwright/core/line';
import type { Wrench } from '@clampwright/core/wrench';
import type { SerialEvent } from '@clampwright/intake/serial';
import type { LiveEvent } from '../api/contract.ts';
import { problemOf } from '../api/problem.ts';
import type { Deps } from '../deps.ts';
import { enter } from '../door.ts';
import { tellReading } from './bench.ts';
import { incomingFrom, madeBefore } from './incoming.ts';
import type { TakenWrench } from './ports.ts';
import { torqueEvery } from './torque-every.ts';

type WrenchState = Extract<LiveEvent, { kind: 'wrench' }>['state'];

/** Hears one wrench: what it says goes to those who look at the job, and each pull through the door. */
export function hearing(
  deps: Deps,
): (wrench: Wrench, taken: TakenWrench | undefined, event: SerialEvent) => Promise<void> {
  const dueBy = new Map<string, ReturnType<typeof torqueEvery>>();

  const torqueIsDue = (wrenchId: string, pull: number, elapsedS: number): boolean => {
    const isDue = dueBy.get(wrenchId) ?? torqueEvery();
    dueBy.set(wrenchId, isDue);
    return isDue(pull, elapsedS);
  };

  return async (wrench, taken, event) => {
    if (event.kind === 'pull' && deps.readings.isHeard(wrench.id))
      return tellReading(deps, wrench.id, taken, event.pull);
    if (!taken) return undefined;
    switch (event.kind) {
      case 'connected':
        return tell(deps, taken, 'connected', '');
      case 'lost':
        return tell(deps, taken, 'lost', event.detail);
      case 'unreadable':
        return tell(deps, taken, 'unreadable-line', event.raw);
      case 'sample':
        if (!torqueIsDue(taken.wrench.id, event.pull, event.elapsedS)) return undefined;
        return deps.listeners.tell(taken.jobId, {
          kind: 'torque',
          jointRef: taken.jointRef,
          torqueNm: event.torqueNm,
          angleDeg: event.angleDeg ?? 0,
        });
      case 'pull':
        return takePull(deps, taken, event.pull);
    }
  };
}

function tell({ listeners, logger }: Deps, { jobId, wrench }: TakenWrench, state: WrenchState, detail: string): void {
  logger[state === 'connected' ? 'info' : 'warn']({ jobId, wrench: wrench.serial, state, detail }, 'wrench');
  listeners.tell(jobId, { kind: 'wrench', wrenchId: wrench.id, state, detail });
}

async function takePull(deps: Deps, taken: TakenWrench, pull: ToldPull): Promise<void> {
  const [serial] = pull.from;
  if (serial !== undefined && serial !== taken.wrench.serial) {
    const message = `The wrench on this port is ${serial}, not ${taken.wrench.serial}. Take the wrench that is really there.`;
    return refusePull(deps, taken, pull, message);
  }
  const early = madeBefore(taken, pull, taken.wrench.name);
  if (early) return refusePull(deps, taken, pull, early.message);
  try {
    const entered = await enter(deps, taken.jobId, incomingFrom(deps, taken, pull, 'serial'), { by: taken.by });
    if (!entered.ok) refusePull(deps, taken, pull, problemOf(entered.failure).detail);
  } catch (error) {
    deps.logger.error({ err: error }, 'pull broke');
    refusePull(deps, taken, pull, 'Something broke here. Type the pull in by hand.');
  }
}

/** The figures stand in the log too, so that a pull nobody saw being refused can still be found. */
function refusePull(deps: Deps, taken: TakenWrench, { trace: _trace, ...pull }: ToldPull, message: string): void {
  deps.logger.warn({ jobId: taken.jobId, pull }, 'pull refused');
  tell(deps, taken, 'pull-refused', message);
}
