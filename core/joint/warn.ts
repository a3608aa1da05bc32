import type { Stage } from '../procedure/procedure.ts';
import type { JointContent } from './joint.ts';
import { stageTorque } from './plausibility/stage-torque.ts';
import type { Assessment, TorquePlausibility } from './plausibility/torque-plausibility.ts';

/** A doubt about a joint that may be released and worked on in spite of it. */
export interface JointWarning {
  readonly field: string;
  /** In English. */
  readonly message: string;
  readonly assessment: Exclude<Assessment, 'usual'>;
  /** The figures behind it. */
  readonly plausibility: TorquePlausibility;
}

/**
 * What is doubtful in a joint's torques: told by the editor before the joint is released, and again before a job begins.
 *
 * @param content what its schema let through; contradictions are told by `checkJoint`
 * @returns field such as `stages[1].torque`; empty when every torque is usual
 */
export const warnJoint = (content: Pick<JointContent, 'fastener' | 'stages'>): readonly JointWarning[] =>
  content.stages.flatMap((stage, index) => {
    if (!stage.torque) return [];
    const mostNm = stage.torque.targetNm * highestShare(stage);
    const plausibility = stageTorque(content.fastener, mostNm, stage.torque);
    if (!plausibility || plausibility.assessment === 'usual') return [];
    const { assessment, message } = plausibility;
    if (assessment === 'low' && !isLastWord(stage, content.stages)) return [];
    return [{ field: `stages[${index}].torque`, message, assessment, plausibility }];
  });

/** A plan may pull single bolts higher than the stage's own target. */
const highestShare = ({ rounds }: Stage): number =>
  Math.max(1, ...rounds.flatMap(({ positionShares = [] }) => positionShares));

/** Snug torques, torques before an angle and all but the greatest are low on purpose. */
function isLastWord({ kind, torque }: Stage, stages: readonly Stage[]): boolean {
  const target = torque?.targetNm ?? 0;
  return kind === 'torque' && stages.every((other) => !other.angle && (other.torque?.targetNm ?? 0) <= target);
}
