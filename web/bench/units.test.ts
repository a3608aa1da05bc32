import { expect, it } from 'vitest';
import { toOwn, toShown, unitsFrom, withUnit } from './units.ts';

// 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m, both exact: NIST SP 811:2008, appendix B.
it('reads and shows a figure in the unit chosen', () => {
  const units = { torqueNm: 'lbf·ft' } as const;
  expect(toOwn(1, 'torqueNm', units)).toBeCloseTo(4.4482216152605 * 0.3048, 12);
  expect(toShown(4.4482216152605 * 0.3048, 'torqueNm', units)).toBeCloseTo(1, 12);
});

it('leaves a field alone whose unit was not chosen', () => {
  expect(toOwn(85, 'preloadN', { torqueNm: 'lbf·ft' })).toBe(85);
});

it('keeps only units that are not the field’s own', () => {
  const chosen = withUnit({}, 'torqueNm', 'lbf·in');
  expect(chosen).toEqual({ torqueNm: 'lbf·in' });
  expect(withUnit(chosen, 'torqueNm', 'N·m')).toEqual({});
});

it('takes from a link only units that fit their field', () => {
  const brought = { torqueNm: 'lbf·ft', preloadN: 'mm', threadFriction: 'N', holeMm: 'furlong' };
  expect(unitsFrom(brought)).toEqual({ torqueNm: 'lbf·ft' });
  expect(unitsFrom('torqueNm')).toEqual({});
});
