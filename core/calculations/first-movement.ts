import { z } from 'zod';
import { firstMovement as movementOf } from '../trace/first-movement.ts';
import { typed } from '../trace/samples.ts';
import { calculation } from './calculation.ts';
import { samplesFields, unequal } from './trace-samples.ts';

/** A made re-start: 14 N·m a degree to 112 N·m, then down to 104 and on with 1.6 N·m a degree. */
const ANGLES = Array.from({ length: 61 }, (_, i) => i / 4);
const torqueAt = (deg: number): number => {
  if (deg <= 8) return 14 * deg;
  return deg < 8.5 ? 112 - 16 * (deg - 8) : 104 + 1.6 * (deg - 8.5);
};

export const firstMovement = calculation({
  name: 'first-movement',
  title: 'Torque at which a tight fastener moves again, from the curve of a re-start',
  cautions: [
    'The torque of a re-start is not the torque of the tightening: static friction, settling and the direction of turning lie between them.',
    'Turning a tight fastener on tightens it further; never turn past the joint’s limit.',
  ],
  sources: ['Residual torque by two lines, one before and one after the movement: common practice'],
  input: z.strictObject({
    ...samplesFields,
    afterDeg: z
      .number()
      .positive()
      .max(30)
      .default(2)
      .describe('turning after the movement at which torque is told, degrees'),
  }),
  output: z.strictObject({
    torqueNm: z.number().describe('where the lines before and after the movement meet, N·m'),
    standardUncertaintyNm: z.number().describe('of that torque, from the scatter about the lines, N·m'),
    angleDeg: z.number().describe('where they meet, degrees'),
    index: z.number().int().describe('first sample after the movement'),
    staticPeakNm: z.number().describe('largest torque before the movement; static friction lets it lie too high, N·m'),
    torqueAfterNm: z.number().describe('torque a little after the movement, N·m'),
    torqueAfterDeg: z.number().describe('how much after, degrees'),
    windUpNmPerDeg: z.number().optional().describe('slope while the wrench wound up, N·m a degree'),
    movingNmPerDeg: z.number().describe('slope while the fastener turned, N·m a degree'),
  }),
  example: { angleDeg: ANGLES, torqueNm: ANGLES.map(torqueAt) },
  work: ({ afterDeg, ...samples }) => unequal(samples) ?? movementOf(typed(samples), afterDeg),
});
