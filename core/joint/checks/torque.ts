import type { Failure } from '../../failure/failure.ts';
import type { TorqueWindow } from '../../procedure/procedure.ts';
import type { FastenerSpec, JointContent } from '../joint.ts';
import { stageTorque } from '../plausibility/stage-torque.ts';
import { refusal } from './refusal.ts';

/** A torque that breaks the fastener on the driest surface is no target; less than that is a lead's to decide. */
export const torqueBreaksNothing = ({ fastener, stages }: JointContent): readonly Failure[] =>
  stages.flatMap(({ torque, rounds }, index) => {
    if (!torque) return [];
    const path = `stages[${index}]`;
    const planned = rounds.flatMap(({ positionShares = [] }, round) =>
      breaks(fastener, torque, Math.max(0, ...positionShares), `${path}.rounds[${round}].positionShares`),
    );
    return [...breaks(fastener, torque, 1, `${path}.torque.upperNm`), ...planned];
  });

function breaks(fastener: FastenerSpec, torque: TorqueWindow, share: number, field: string): readonly Failure[] {
  const judged = stageTorque(fastener, torque.upperNm * share, torque);
  if (judged?.assessment !== 'beyond-ultimate') return [];
  const fullNm = judged.fullTorqueNm.toPrecision(3);
  return [refusal(field, judged.message, `about ${fullNm} N·m or less`)];
}
