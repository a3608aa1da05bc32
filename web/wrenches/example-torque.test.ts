import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { exampleTorqueNm } from './example-torque.ts';

it.each([
  [60, 300, 100],
  [5, 25, 10],
  [200, 1000, 500],
  [1, 5, 2],
])('takes a round torque in the range %d to %d N·m', (lowestNm, highestNm, torqueNm) => {
  expect(exampleTorqueNm({ lowestNm, highestNm })).toBe(torqueNm);
});

it('always lies inside the range', () => {
  const range = fc.tuple(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 1000 }));
  fc.assert(
    fc.property(range, ([lowestNm, widthNm]) => {
      const torqueNm = exampleTorqueNm({ lowestNm, highestNm: lowestNm + widthNm });
      expect(torqueNm).toBeGreaterThanOrEqual(lowestNm);
      expect(torqueNm).toBeLessThanOrEqual(lowestNm + widthNm);
    }),
    { seed: 3 },
  );
});
