import type { Picture } from '../plot/picture.ts';
import { capabilityPicture } from './capability.ts';
import { contributions } from './contributions.ts';
import { controlChartPicture } from './control-chart.ts';
import { decidedWrongly, valueAgainstLimits } from './decisions.ts';
import { forcesOfRounds } from './forces-of-rounds.ts';
import { givingWay } from './giving-way.ts';
import { margins } from './margins.ts';
import { reliabilityPicture } from './reliability.ts';
import type { Scribe } from './scribe.ts';
import { spreadOfPreload } from './spread-of-preload.ts';
import { torqueOverAngle } from './torque-over-angle.ts';
import { torqueShares } from './torque-shares.ts';
import { torqueToPreload } from './torque-to-preload.ts';
import { wrenchDeviations } from './wrench-deviations.ts';

/** What is drawn of a calculation's result. Each drawing looks for what it needs and draws nothing of other results. */
export function picturesOf(input: unknown, output: unknown, scribe: Scribe): readonly Picture[] {
  return [
    ...margins(output, scribe),
    ...torqueToPreload(input, output, scribe),
    ...torqueOverAngle(output, scribe),
    ...spreadOfPreload(input, output, scribe),
    ...contributions(output, scribe),
    ...torqueShares(output, scribe),
    ...givingWay(output, scribe),
    ...forcesOfRounds(output, scribe),
    ...wrenchDeviations(output, scribe),
    ...valueAgainstLimits(input, output, scribe),
    ...decidedWrongly(input, output, scribe),
    ...capabilityPicture(input, output, scribe),
    ...controlChartPicture(input, output, scribe),
    ...reliabilityPicture(input, output, scribe),
  ];
}
