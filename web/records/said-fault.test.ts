import { verifyRecord } from '@clampwright/core/record';
import { expect, it } from 'vitest';
import { isSameFingerprint, saidFault } from './said-fault.ts';

it('tells an altered field by its entry and place', () => {
  const fault = { part: 'entry', seq: 4, field: '/body/pull/reading/torqueNm', message: '' } as const;
  expect(saidFault(fault)).toEqual({ word: 'entry-field', seq: 4, field: '/body/pull/reading/torqueNm' });
});

it('tells an entry that does not follow the one before it without a place', () => {
  expect(saidFault({ part: 'entry', seq: 7, message: '' })).toMatchObject({ word: 'entry', seq: 7 });
});

it('tells a file that is no record', () => {
  const { whole, faults } = verifyRecord('{"format":');
  expect(whole).toBe(false);
  expect(faults.map((fault) => saidFault(fault).word)).toEqual(['file']);
});

it('compares fingerprints whatever their spaces and case', () => {
  expect(isSameFingerprint('ab12 cd34', 'AB12-CD34')).toBe(true);
  expect(isSameFingerprint('ab12 cd34', 'ab12 cd35')).toBe(false);
  expect(isSameFingerprint('', '')).toBe(false);
});
