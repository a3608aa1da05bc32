import type { JobState } from '@clampwright/core/record';
import type { Wrench } from '@clampwright/core/wrench';
import { openSerial, type SerialEvent, type SerialWrench } from '@clampwright/intake/serial';
import type { Person } from '../api/contract.ts';

/** A wrench on a serial port, taken for joints of a job. */
export interface TakenWrench {
  readonly wrench: Wrench;
  readonly jobId: string;
  readonly jointRefs: readonly string[];
  /** The joint its pulls belong to: the one it was last taken for, or whose screen was opened since. */
  readonly jointRef: string;
  /** Who took it: its pulls are theirs until somebody else takes it. */
  readonly by: Person;
  /** When it was taken last. */
  readonly since: string;
}

/** The taking of a wrench that ports and hands follow. */
export interface Taking {
  readonly by: Person;
  readonly jointRefs: readonly string[];
  readonly at: string;
}

/** The open ports. A wrench serves one job at a time: the one it was last taken for. */
export interface WrenchPorts {
  /** Opens and closes ports so that they fit the tools of this job, after one was taken. */
  readonly follow: (state: JobState, taking: Taking) => void;
  /** Somebody works at this joint now: pulls of the wrench taken for it belong there. */
  readonly attend: (jobId: string, jointRef: string) => void;
  /** A wrench as it is taken at this moment, whatever way its pulls come. */
  readonly inHand: (wrenchId: string) => TakenWrench | undefined;
  /** The same by serial number: the first of these that is taken. */
  readonly inHands: (serials: readonly string[]) => TakenWrench | undefined;
  /**
   * Keeps the port of a wrench open while it is calibrated, also when no job has taken it.
   *
   * @returns the way to end that; nothing is opened for a wrench that is on no port
   */
  readonly lend: (wrench: Wrench) => () => void;
  readonly close: () => Promise<void>;
}

interface OpenPort {
  readonly wrench: Wrench;
  /** Undefined while only a calibration listens. */
  taken: TakenWrench | undefined;
  /** Screens at which it is calibrated. */
  benches: number;
  /** What the wrench said is dealt with in its order. */
  heard: Promise<void>;
  readonly port: SerialWrench;
}

/** @param hear told of every event with the wrench as it is taken at that moment, if it is; must not throw */
export function wrenchPorts(
  hear: (wrench: Wrench, taken: TakenWrench | undefined, event: SerialEvent) => Promise<void>,
): WrenchPorts {
  const open = new Map<string, OpenPort>();
  const hands = new Map<string, TakenWrench>();

  const openedAt = (path: string, wrench: Wrench): OpenPort => {
    const known = open.get(path);
    if (known) return known;
    const entry: OpenPort = {
      wrench,
      taken: undefined,
      benches: 0,
      heard: Promise.resolve(),
      port: openSerial(path, (event) => {
        const { taken: then } = entry;
        entry.heard = entry.heard.then(() => hear(then?.wrench ?? wrench, then, event));
      }),
    };
    open.set(path, entry);
    return entry;
  };
  const take = (path: string, taken: TakenWrench): void => {
    openedAt(path, taken.wrench).taken = taken;
  };
  const releaseUnused = (path: string, entry: OpenPort): void => {
    if (!entry.taken && entry.benches === 0) void release(path, entry);
  };
  const release = async (path: string, entry: OpenPort): Promise<void> => {
    open.delete(path);
    await entry.port.close();
    await entry.heard;
  };

  return {
    inHand: (wrenchId) => hands.get(wrenchId),
    inHands: (serials) => [...hands.values()].find(({ wrench }) => serials.includes(wrench.serial)),
    follow: (state, taking) => {
      const { by, jointRefs, at } = taking;
      followHands(hands, state, taking);
      const tools = serialTools(state);
      for (const [path, entry] of open) {
        if (entry.taken?.jobId !== state.jobId || tools.has(path)) continue;
        entry.taken = undefined;
        releaseUnused(path, entry);
      }
      for (const [path, tool] of tools) {
        const jointRef = tool.jointRefs.find((ref) => jointRefs.includes(ref));
        if (jointRef !== undefined) take(path, { ...tool, jobId: state.jobId, jointRef, by, since: at });
      }
    },
    attend: (jobId, jointRef) => {
      for (const [wrenchId, taken] of hands) {
        if (taken.jobId === jobId && taken.jointRefs.includes(jointRef)) hands.set(wrenchId, { ...taken, jointRef });
      }
      for (const entry of open.values()) {
        const { taken } = entry;
        if (taken?.jobId === jobId && taken.jointRefs.includes(jointRef)) entry.taken = { ...taken, jointRef };
      }
    },
    lend: (wrench) => {
      if (wrench.connection.kind !== 'serial') return () => undefined;
      const { path } = wrench.connection;
      const entry = openedAt(path, wrench);
      entry.benches += 1;
      return () => {
        entry.benches -= 1;
        releaseUnused(path, entry);
      };
    },
    close: async () => {
      await Promise.all([...open].map(([path, entry]) => release(path, entry)));
    },
  };
}

type Held = Pick<TakenWrench, 'wrench' | 'jointRefs'>;

/** Keeps in whose hands the wrenches of a job are, after one was taken. */
function followHands(hands: Map<string, TakenWrench>, state: JobState, { by, jointRefs, at }: Taking): void {
  const tools = toolsBy(state, ({ id }) => id);
  for (const [wrenchId, { jobId }] of hands) {
    if (jobId === state.jobId && !tools.has(wrenchId)) hands.delete(wrenchId);
  }
  for (const [wrenchId, tool] of tools) {
    const jointRef = tool.jointRefs.find((ref) => jointRefs.includes(ref));
    if (jointRef !== undefined) hands.set(wrenchId, { ...tool, jobId: state.jobId, jointRef, by, since: at });
  }
}

/** Wrenches on serial ports that are the tool of a joint now, by path. */
export const serialTools = (state: JobState): ReadonlyMap<string, Held> =>
  toolsBy(state, ({ connection }) => (connection.kind === 'serial' ? connection.path : undefined));

/** Wrenches that are the tool of a joint now, by what `key` gives of them. A closed job holds none. */
export function toolsBy(state: JobState, key: (wrench: Wrench) => string | undefined): ReadonlyMap<string, Held> {
  const tools = new Map<string, Held>();
  for (const { ref, tools: taken } of state.status === 'closed' ? [] : state.joints) {
    const wrench = taken.at(-1)?.wrench;
    const at = wrench && key(wrench);
    if (wrench && at !== undefined) tools.set(at, { wrench, jointRefs: [...(tools.get(at)?.jointRefs ?? []), ref] });
  }
  return tools;
}
