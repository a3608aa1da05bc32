import type { JointContent } from '@clampwright/core/joint';
import type { Stage } from '@clampwright/core/procedure';

/** What the joint's stages ask of the fastener, in torque at the fastener. */
export interface Demand {
  readonly highestNm: number;
  /** Elastic slope with which torque and angle targets are met together. */
  readonly slopeNmPerDeg: number;
}

/** Turning from the elastic origin to the highest torque when no angle stage tells it; 30° is a hard joint, 360° a soft one (ISO 5393, *from memory*). */
const USUAL_ELASTIC_DEG = 50;
/** An angle stage without a torque window is taken to end at so many times the torque that it begins with. */
const USUAL_ANGLE_STAGE_RISE = 1.6;

export function demandOf(content: JointContent): Demand {
  let reachedNm = 0;
  let highestNm = 0;
  let slopeNmPerDeg: number | undefined;
  for (const stage of content.stages) {
    const fromNm = Math.max(reachedNm, stage.angleFromNm ?? 0);
    const endNm = stageEndNm(stage, fromNm);
    if (stage.angle && endNm > fromNm) slopeNmPerDeg = (endNm - fromNm) / stage.angle.targetDeg;
    reachedNm = Math.max(reachedNm, endNm);
    highestNm = Math.max(highestNm, endNm, stage.torque?.upperNm ?? 0);
  }
  return { highestNm, slopeNmPerDeg: slopeNmPerDeg ?? highestNm / USUAL_ELASTIC_DEG };
}

function stageEndNm(stage: Stage, fromNm: number): number {
  if (stage.kind === 'loosen') return 0;
  if (stage.torque) return stage.torque.targetNm;
  return stage.angle ? USUAL_ANGLE_STAGE_RISE * fromNm : fromNm;
}
