import type { JointContent } from '../joint/joint.ts';
import { tightening, torqueAims } from './aims.ts';
import { calibrationState, daysToCalibration } from './calibration-state.ts';
import type { Notice } from './objection.ts';
import { uncertaintyOf } from './share-left.ts';
import type { Tool } from './wrench.ts';

/** Half the window over the expanded uncertainty should be at least this (common practice). */
const LEAST_RATIO = 4;

/**
 * What should be known of a tool although it may be taken: calibration due within 30 days, a window narrow for the
 * uncertainty, an extension whose wind-up nobody knows on a stage that needs an angle.
 *
 * @param onDate ISO 8601, a day or an instant
 */
export const toolNotices = (tool: Tool, content: JointContent, onDate: string): readonly Notice[] => [
  ...dueSoon(tool, onDate),
  ...narrowWindows(tool, content),
  ...unknownWindUp(tool, content),
];

function dueSoon({ wrench }: Tool, onDate: string): readonly Notice[] {
  const daysLeft = daysToCalibration(wrench, onDate);
  if (!wrench.calibration || daysLeft === undefined || calibrationState(wrench, onDate) !== 'soon') return [];
  return [{ code: 'calibration-soon', dueOn: wrench.calibration.dueOn, daysLeft }];
}

function narrowWindows(tool: Tool, content: JointContent): readonly Notice[] {
  return torqueAims(content, tool).flatMap((aim) => {
    const { stage, round, widthNm } = aim;
    const uncertaintyNm = uncertaintyOf(tool, aim);
    const ratio = uncertaintyNm === undefined ? Number.POSITIVE_INFINITY : widthNm / 2 / uncertaintyNm;
    return ratio < LEAST_RATIO ? [{ code: 'uncertainty-ratio', stage, round, ratio }] : [];
  });
}

function unknownWindUp({ extension }: Tool, { stages }: JointContent): readonly Notice[] {
  if (!extension || extension.stiffnessNmPerDeg !== undefined) return [];
  return tightening(stages).flatMap(({ stage, angle }) => (angle ? [{ code: 'wind-up-unknown', stage }] : []));
}
