import { failed, ok, type Result } from '../failure/failure.ts';
import { within } from '../failure/within.ts';
import type { JointContent } from '../joint/joint.ts';
import { positionsInOrder } from '../layout/positions-in-order.ts';
import type { Round, Stage, TorqueWindow } from './procedure.ts';
import type { Step, TorqueLimits } from './step.ts';

/**
 * The work on a joint as one sequence of steps: every round of every stage, in order, with its positions and the
 * windows that hold in it. Torque is scaled by the round's share, or by each position's own; angle is not. Stage and
 * round count from 1.
 *
 * @returns refused with the field of an own order that is not a permutation, such as
 * `stages[1].rounds[0].order.positions[3]`
 */
export function stepsOf({ layout, stages }: Pick<JointContent, 'layout' | 'stages'>): Result<readonly Step[]> {
  const steps: Step[] = [];
  for (const [stageIndex, stage] of stages.entries()) {
    for (const [roundIndex, round] of stage.rounds.entries()) {
      const order = positionsInOrder(layout, round.order);
      if (!order.ok) return failed(within(`stages[${stageIndex}].rounds[${roundIndex}].order`, order.failure));
      steps.push({ stage: stageIndex + 1, round: roundIndex + 1, order: order.value, ...aimsOf(stage, round) });
    }
  }
  return ok(steps);
}

function aimsOf(stage: Stage, { share, positionShares, closing }: Round): Omit<Step, 'stage' | 'round' | 'order'> {
  const { kind, torque, angle, angleFromNm, speedLimitDegPerS } = stage;
  return {
    kind,
    torque: torque && scaled(torque, share),
    torques: torque && positionShares?.map((own) => scaled(torque, own)),
    angle: angle && { lowerDeg: angle.lowerDeg, targetDeg: angle.targetDeg, upperDeg: angle.upperDeg },
    angleFromNm,
    speedLimitDegPerS,
    closing,
  };
}

const scaled = ({ lowerNm, targetNm, upperNm }: TorqueWindow, share: number): TorqueLimits => ({
  lowerNm: lowerNm * share,
  targetNm: targetNm * share,
  upperNm: upperNm * share,
});
