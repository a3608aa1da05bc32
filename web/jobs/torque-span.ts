import type { JointContent } from '@clampwright/core/joint';
import { wrenchSetting } from '@clampwright/core/procedure';
import type { Tool } from '@clampwright/core/wrench';

interface Span {
  readonly lowestNm: number;
  readonly highestNm: number;
}

/** The torques of a joint over all its stages and rounds, at the fastener and as the wrench will show them. */
export interface TorqueSpan {
  readonly joint: Span;
  readonly shown: Span;
}

/**
 * From the lowest lower limit to the highest upper limit.
 *
 * @param tool with its adapter; left out: shown and joint are the same
 * @returns undefined where no stage has a torque window
 */
export function torqueSpan({ stages }: Pick<JointContent, 'stages'>, tool: Tool | undefined): TorqueSpan | undefined {
  const windows = stages.flatMap(({ torque, rounds }) =>
    torque
      ? rounds.flatMap(({ share, positionShares = [share] }) => positionShares.map((own) => ({ torque, share: own })))
      : [],
  );
  if (windows.length === 0) return undefined;
  const joint = {
    lowestNm: Math.min(...windows.map(({ torque, share }) => torque.lowerNm * share)),
    highestNm: Math.max(...windows.map(({ torque, share }) => torque.upperNm * share)),
  };
  const setting = tool && wrenchSetting(1, tool.wrench.leverMm, tool.adapter);
  const factor = setting?.ok ? setting.value.factor : 1;
  return { joint, shown: { lowestNm: joint.lowestNm * factor, highestNm: joint.highestNm * factor } };
}
