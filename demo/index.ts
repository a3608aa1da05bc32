import type { JointRevision } from '@clampwright/core/joint';
import type { Asset, PersonRef } from '@clampwright/core/record';
import type {
  Adapter,
  BeforeUseCheck,
  Calibration,
  CalibrationSummary,
  Extension,
  Recall,
  ReferenceStandard,
  Wrench,
} from '@clampwright/core/wrench';
import { DEMO_ASSETS } from './assets.ts';
import { demoChecks } from './care/checks.ts';
import { dayBefore } from './care/days.ts';
import { demoRecall } from './care/recall.ts';
import { demoReferences } from './care/references.ts';
import { DEMO_JOINTS, demoJobs } from './jobs.ts';
import { DEMO_PEOPLE } from './people.ts';
import type { PlayedJob } from './played-job.ts';
import { DEMO_ADAPTERS, DEMO_EXTENSIONS, demoHistory, wrenchesOn } from './toolbox.ts';

/** Everything of the invented workshop, as data; whoever has a store puts it in. */
export interface Scenario {
  readonly people: readonly PersonRef[];
  readonly assets: readonly Asset[];
  readonly joints: readonly JointRevision[];
  readonly wrenches: readonly Wrench[];
  readonly adapters: readonly Adapter[];
  readonly extensions: readonly Extension[];
  /** Certificate by certificate. */
  readonly references: readonly ReferenceStandard[];
  /** The oldest first. */
  readonly calibrations: readonly { readonly calibration: Calibration; readonly summary: CalibrationSummary }[];
  readonly checks: readonly BeforeUseCheck[];
  readonly recalls: readonly Recall[];
  readonly jobs: readonly Pick<PlayedJob, 'sheet' | 'entries' | 'traces' | 'state'>[];
}

/**
 * The invented workshop of a mountain ropeway, as it stands at a moment: calibrations due around it, one job
 * finished some days before, one in hand, two to begin.
 */
export function scenarioAt(now: Date): Scenario {
  const calibrations = demoHistory(now);
  const wrenches = wrenchesOn(calibrations, dayBefore(now, 0));
  return {
    people: DEMO_PEOPLE,
    assets: DEMO_ASSETS,
    joints: DEMO_JOINTS,
    wrenches,
    adapters: DEMO_ADAPTERS,
    extensions: DEMO_EXTENSIONS,
    references: demoReferences(now),
    calibrations: calibrations.map(({ calibration, judged: { summary } }) => ({ calibration, summary })),
    checks: demoChecks(now, wrenches),
    recalls: [demoRecall(calibrations)],
    jobs: demoJobs(now, (daysAgo) => wrenchesOn(calibrations, dayBefore(now, daysAgo))),
  };
}

export { DEMO_PIN } from './people.ts';
