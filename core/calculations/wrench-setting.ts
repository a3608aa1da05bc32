import { z } from 'zod';
import { wrenchSetting as settingOf, appliedTorque as torqueApplied } from '../procedure/setting.ts';
import { checkTorque, HAND_TORQUE } from '../quantity/torque.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';

const lever = {
  leverMm: z.number().positive().max(100_000).describe('L, from the square drive to the marked point of the hand, mm'),
  adapterMm: z
    .number()
    .min(0)
    .max(100_000)
    .default(0)
    .describe('E, from the square drive to the centre of the fastener, mm; 0 without an adapter'),
  adapterAngleDeg: z
    .number()
    .min(-360)
    .max(360)
    .default(0)
    .describe('a, degrees: 0 straight out, 90 square to the handle, 180 folded back over it'),
};

const CAUTIONS = [
  MAKER_FIRST,
  'Holds for a hand at the marked point of the handle, pulling square to it; no cheater bar.',
  'A plain extension along the axis of the fastener changes no torque and is not counted here.',
];

const SOURCES = ['TM 9-254, figure 4-6: T_set = T·L / (L + E·cos a)', 'FAA AC 43.13-1B, figure 7-2 (from memory)'];

export const wrenchSetting = calculation({
  name: 'wrench-setting',
  title: 'What the wrench must show so that the fastener gets its torque through an adapter',
  cautions: CAUTIONS,
  sources: SOURCES,
  input: z.strictObject({ torqueNm: z.number().describe('torque wanted at the fastener, N·m, 0 to 20 000'), ...lever }),
  output: z.strictObject({
    settingNm: z.number().describe('what the wrench must show, N·m'),
    factor: z.number().describe('setting over torque'),
  }),
  example: { torqueNm: 80, leverMm: 400, adapterMm: 50, adapterAngleDeg: 0 },
  work: ({ torqueNm, leverMm, adapterMm, adapterAngleDeg }) =>
    settingOf(torqueNm, leverMm, { lengthMm: adapterMm, angleDeg: adapterAngleDeg }),
});

export const appliedTorque = calculation({
  name: 'applied-torque',
  title: 'What reached the fastener through an adapter when the wrench showed a torque',
  cautions: CAUTIONS,
  sources: SOURCES,
  input: z.strictObject({ readingNm: z.number().describe('what the wrench showed, N·m, 0 to 20 000'), ...lever }),
  output: z.strictObject({
    torqueNm: z.number().describe('torque at the fastener, N·m'),
    factor: z.number().describe('torque over reading'),
  }),
  example: { readingNm: 71.1, leverMm: 400, adapterMm: 50, adapterAngleDeg: 0 },
  work: ({ readingNm, leverMm, adapterMm, adapterAngleDeg }) => {
    const reading = checkTorque(readingNm, 'N·m', { ...HAND_TORQUE, lowestNm: 0 }, 'readingNm');
    if (!reading.ok) return reading;
    return torqueApplied(reading.value, leverMm, { lengthMm: adapterMm, angleDeg: adapterAngleDeg });
  },
});
