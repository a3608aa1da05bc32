import type { Device } from '@clampwright/core/device';
import type { ToldPull } from '@clampwright/core/line';
import { problemOf } from '../api/problem.ts';
import type { Deps } from '../deps.ts';
import type { Standing } from './standing.ts';
import { type Taken, takePulls } from './take.ts';

/** Pulls of one device that wait for the door; while one batch is stored, the next one gathers. */
export interface Inbox {
  /** Resolves with what became of the pull. */
  readonly put: (pull: ToldPull) => Promise<Taken>;
  /** Everything that was put in is dealt with. */
  readonly empty: () => Promise<void>;
}

/** The source is held from so many waiting pulls on, and let go below so many. */
const HOLD_FROM = 2000;
const RESUME_BELOW = 500;
const MOST_TOGETHER = 500;

interface Waiting {
  readonly pull: ToldPull;
  readonly done: (taken: Taken) => void;
}

/** @param hold called with true when the source is to wait, with false when it may go on */
export function inboxOf(deps: Deps, device: Device, standing: Standing, hold: (isHeld: boolean) => void): Inbox {
  const waiting: Waiting[] = [];
  let working: Promise<void> | undefined;
  let isHeld = false;

  const work = async (): Promise<void> => {
    while (waiting.length > 0) {
      const batch = waiting.splice(0, MOST_TOGETHER);
      const taken = await takeSafely(
        deps,
        device,
        batch.map(({ pull }) => pull),
      );
      batch.forEach(({ done }, i) => done(counted(standing, taken[i] ?? BROKEN)));
      if (isHeld && waiting.length < RESUME_BELOW) {
        isHeld = false;
        hold(false);
      }
    }
    working = undefined;
  };

  return {
    put: (pull) =>
      new Promise((done) => {
        waiting.push({ pull, done });
        if (!isHeld && waiting.length >= HOLD_FROM) {
          isHeld = true;
          hold(true);
        }
        working ??= work();
      }),
    empty: async () => {
      await working;
    },
  };
}

const BROKEN: Taken = {
  state: 'refused',
  failure: { kind: 'broken', message: 'Something broke here. Type the pull in by hand.' },
};

async function takeSafely(deps: Deps, device: Device, pulls: readonly ToldPull[]): Promise<readonly Taken[]> {
  try {
    return await takePulls(deps, device, pulls);
  } catch (error) {
    deps.logger.error({ err: error, device: device.name }, 'pulls broke');
    return [];
  }
}

/** Counts what became of a pull where the screen looks for it. */
export function counted(standing: Standing, taken: Taken): Taken {
  if (taken.state === 'compared') return taken;
  standing.count(taken.state === 'added' ? 'taken' : taken.state);
  if (taken.state === 'refused') standing.fault({ kind: 'pull', message: problemOf(taken.failure).detail });
  return taken;
}
