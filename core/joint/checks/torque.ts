import type { Failure } from '../../failure/failure.ts';
import type { JointContent } from '../joint.ts';
import { stageTorque } from '../plausibility/stage-torque.ts';
import { refusal } from './refusal.ts';

/** A torque that breaks the fastener on the driest surface is no target; less than that is a lead's to decide. */
export const torqueBreaksNothing = ({ fastener, stages }: JointContent): readonly Failure[] =>
  stages.flatMap(({ torque }, index) => {
    if (!torque) return [];
    const judged = stageTorque(fastener, torque.upperNm, torque);
    if (judged?.assessment !== 'beyond-ultimate') return [];
    const fullNm = judged.fullTorqueNm.toPrecision(3);
    return [refusal(`stages[${index}].torque.upperNm`, judged.message, `about ${fullNm} N·m or less`)];
  });
