import { type Check, check, describeSource } from '../check.ts';
import { numberFrom } from '../got.ts';
import { A574_LOADS, AISC_PRETENSIONS } from '../published/bolting-loads.ts';

const N_PER_LBF = 4.4482216152605;

/** The standard works with areas of three figures and rounds the load again. */
const ROUNDED = { unit: 'lbf', relative: 0.0075, because: 'ASTM A574 rounds the area and then the load' };

const load = (thread: string, propertyClass: string, field: string) => () =>
  numberFrom('fastener', { thread, propertyClass }, field) / N_PER_LBF;

const a574 = A574_LOADS.flatMap(([thread, tensile, proof]): readonly Check[] => [
  check(`${thread} tensile load`, load(thread, 'A574', 'tensileLoadN'), { value: tensile, ...ROUNDED }),
  check(`${thread} proof load`, load(thread, 'A574', 'proofLoadN'), { value: proof, ...ROUNDED }),
]);

const pretension = (thread: string, grade: string, value: string): Check =>
  check(`${thread} ${grade} pretension`, () => (0.7 * load(thread, grade, 'tensileLoadN')()) / 1000, {
    value,
    unit: 'kip',
    absolute: 0.55,
    because: 'worked with areas of three figures and rounded to whole kip, 48.5 up',
  });

export const BOLTING_SOURCES = [
  describeSource('ASTM A574, loads of coarse threads (secondary table)', 'read', a574),
  describeSource('AISC 360-05, table J3.1: 0.7 of the least tensile load', 'read', [
    ...AISC_PRETENSIONS.flatMap(([thread, a325]) => (a325 === undefined ? [] : [pretension(thread, 'A325', a325)])),
    ...AISC_PRETENSIONS.map(([thread, , a490]) => pretension(thread, 'A490', a490)),
  ]),
];
