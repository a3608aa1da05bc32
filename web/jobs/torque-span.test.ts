import { sampleJoint, sampleTool } from '@clampwright/core/record/testing';
import { expect, it } from 'vitest';
import { torqueSpan } from './torque-span.ts';

const torqueStage = sampleJoint.stages[0]!;
const halfFirst = {
  ...torqueStage,
  rounds: [
    { share: 0.5, order: { method: 'star' as const } },
    { share: 1, order: { method: 'star' as const } },
  ],
};

it('reaches from the lowest limit of the smallest share to the highest limit', () => {
  expect(torqueSpan({ stages: [halfFirst] }, undefined)?.joint).toEqual({ lowestNm: 47.5, highestNm: 105 });
});

it('counts the adapter in for what the wrench shows', () => {
  const adapter = { id: sampleTool.wrench.id, name: 'straight', lengthMm: 100, angleDeg: 0 };
  const span = torqueSpan({ stages: [torqueStage] }, { ...sampleTool, adapter });
  // 400 / (400 + 100)
  expect(span?.shown.highestNm).toBeCloseTo(84, 9);
  expect(span?.joint.highestNm).toBe(105);
});

it('is unknown where no stage has a torque', () => {
  expect(torqueSpan({ stages: sampleJoint.stages.slice(1) }, undefined)).toBeUndefined();
});
