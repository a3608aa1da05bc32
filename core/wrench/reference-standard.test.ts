import { describe, expect, it } from 'vitest';
import { usableReference } from './reference-standard.ts';
import { aReference } from './testing/a-calibration.ts';

describe('a reference standard', () => {
  it('may be used to the end of the day on which it is due', () => {
    expect(usableReference(aReference(), '2026-12-31T23:00:00.000Z', [20, 200])).toEqual({
      ok: true,
      value: undefined,
    });
  });

  it.each([
    ['2027-01-01', [100], 'reference.dueOn'],
    ['2025-12-31', [100], 'reference.calibratedOn'],
    ['2026-06-01', [20, 300], 'reference.highestNm'],
    ['2026-06-01', [1], 'reference.lowestNm'],
  ] as const)('is refused on %s at %j', (day, torques, field) => {
    expect(usableReference(aReference(), day, torques)).toMatchObject({ failure: { kind: 'invalid', field } });
  });
});
