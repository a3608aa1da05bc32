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
}

/** The open ports. A wrench serves one job at a time: the one it was last taken for. */
export interface WrenchPorts {
  /** Opens and closes ports so that they fit the tools of this job, after `by` took one for these joints. */
  readonly follow: (state: JobState, by: Person, jointRefs: readonly string[]) => void;
  /** Somebody works at this joint now: pulls of the wrench taken for it belong there. */
  readonly attend: (jobId: string, jointRef: string) => void;
  readonly close: () => Promise<void>;
}

interface OpenPort {
  taken: TakenWrench;
  /** What the wrench said is dealt with in its order. */
  heard: Promise<void>;
  readonly port: SerialWrench;
}

/** @param hear told of every event with the wrench as it is taken at that moment; must not throw */
export function wrenchPorts(hear: (taken: TakenWrench, event: SerialEvent) => Promise<void>): WrenchPorts {
  const open = new Map<string, OpenPort>();

  const opened = (path: string, taken: TakenWrench): OpenPort => {
    const entry: OpenPort = {
      taken,
      heard: Promise.resolve(),
      port: openSerial(path, (event) => {
        const { taken: then } = entry;
        entry.heard = entry.heard.then(() => hear(then, event));
      }),
    };
    return entry;
  };
  const take = (path: string, taken: TakenWrench): void => {
    const known = open.get(path);
    if (known) known.taken = taken;
    else open.set(path, opened(path, taken));
  };
  const release = async (path: string, entry: OpenPort): Promise<void> => {
    open.delete(path);
    await entry.port.close();
    await entry.heard;
  };

  return {
    follow: (state, by, jointRefs) => {
      const tools = serialTools(state);
      for (const [path, entry] of open) {
        if (entry.taken.jobId === state.jobId && !tools.has(path)) void release(path, entry);
      }
      for (const [path, tool] of tools) {
        const jointRef = tool.jointRefs.find((ref) => jointRefs.includes(ref));
        if (jointRef !== undefined) take(path, { ...tool, jobId: state.jobId, jointRef, by });
      }
    },
    attend: (jobId, jointRef) => {
      for (const entry of open.values()) {
        const { taken } = entry;
        if (taken.jobId === jobId && taken.jointRefs.includes(jointRef)) entry.taken = { ...taken, jointRef };
      }
    },
    close: async () => {
      await Promise.all([...open].map(([path, entry]) => release(path, entry)));
    },
  };
}

/** Wrenches on serial ports that are the tool of a joint now, by path. A closed job holds none. */
export function serialTools(state: JobState): ReadonlyMap<string, Pick<TakenWrench, 'wrench' | 'jointRefs'>> {
  const tools = new Map<string, Pick<TakenWrench, 'wrench' | 'jointRefs'>>();
  for (const { ref, tools: taken } of state.status === 'closed' ? [] : state.joints) {
    const wrench = taken.at(-1)?.wrench;
    if (wrench?.connection.kind !== 'serial') continue;
    const { path } = wrench.connection;
    tools.set(path, { wrench, jointRefs: [...(tools.get(path)?.jointRefs ?? []), ref] });
  }
  return tools;
}
