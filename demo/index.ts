import type { JointRevision } from '@clampwright/core/joint';
import type { Asset, PersonRef } from '@clampwright/core/record';
import type { Adapter, Extension, Wrench } from '@clampwright/core/wrench';
import { DEMO_ASSETS } from './assets.ts';
import { DEMO_JOINTS, demoJobs } from './jobs.ts';
import { DEMO_PEOPLE } from './people.ts';
import type { PlayedJob } from './played-job.ts';
import { DEMO_ADAPTERS, DEMO_EXTENSIONS, demoWrenches } from './toolbox.ts';

/** Everything of the invented workshop, as data; whoever has a store puts it in. */
export interface Scenario {
  readonly people: readonly PersonRef[];
  readonly assets: readonly Asset[];
  readonly joints: readonly JointRevision[];
  readonly wrenches: readonly Wrench[];
  readonly adapters: readonly Adapter[];
  readonly extensions: readonly Extension[];
  readonly jobs: readonly Pick<PlayedJob, 'sheet' | 'entries' | 'traces' | 'state'>[];
}

/**
 * The invented workshop of a mountain ropeway, as it stands at a moment: calibrations due around it, one job
 * finished some days before, one in hand, two to begin.
 */
export function scenarioAt(now: Date): Scenario {
  const wrenches = demoWrenches(now);
  return {
    people: DEMO_PEOPLE,
    assets: DEMO_ASSETS,
    joints: DEMO_JOINTS,
    wrenches,
    adapters: DEMO_ADAPTERS,
    extensions: DEMO_EXTENSIONS,
    jobs: demoJobs(now, wrenches),
  };
}

export { DEMO_PIN } from './people.ts';
