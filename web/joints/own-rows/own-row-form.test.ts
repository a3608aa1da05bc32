import { newOwnRowSchema } from '@clampwright/core/fastener';
import { describe, expect, it } from 'vitest';
import { type OwnRowForm, ownRowForm, readOwnRow } from './own-row-form.ts';

const ids = { id: '01991f3c-0000-7000-8000-000000000001', supersedes: undefined };

const paste: OwnRowForm = {
  ...ownRowForm(undefined, 'de'),
  name: 'Montagepaste',
  source: 'Eigener Versuch vom 3. März',
  threadLower: '0,1',
  threadUpper: '0,12',
  bearingLower: '0,09',
  bearingUpper: '0,12',
};

const fields = (form: OwnRowForm) => readOwnRow(form, ids, 'de').faults.map(({ field }) => field);

describe('an own row as it is written', () => {
  it('is read in the language on screen into what the server takes', () => {
    const { row } = readOwnRow(paste, ids, 'de');
    expect(row).toMatchObject({ threadFriction: { lower: 0.1, upper: 0.12 } });
    expect(newOwnRowSchema.parse(row)).toEqual(row);
  });

  it.each([
    [{ source: '' }, 'source'],
    [{ threadLower: '0' }, 'threadFriction.lower'],
    [{ bearingUpper: '1,2' }, 'bearingFriction.upper'],
    [{ threadLower: '0,3' }, 'threadFriction.upper'],
    [{ kind: 'material', yieldMPa: '700', tensileMPa: '600' }, 'tensileStrengthMPa'],
    [{ kind: 'material', yieldMPa: '700', tensileMPa: '' }, 'tensileStrengthMPa'],
  ] as const)('is told what to mend: %j', (wrong, field) => {
    expect(fields({ ...paste, ...wrong })).toEqual([field]);
  });

  it('names both ends of what a coefficient may be', () => {
    const { faults } = readOwnRow({ ...paste, bearingUpper: '1,2' }, ids, 'de');
    expect(faults[0]?.finding).toEqual({ kind: 'between', from: 0, to: 1 });
  });

  it('begins with the figures of the row whose place it takes, but not with its source', () => {
    const by = { id: ids.id, name: 'Lead' };
    const before = { ...readOwnRow(paste, ids, 'de').row!, by, addedAt: '2026-03-02T06:00:00.000Z' } as const;
    expect(ownRowForm(before, 'de')).toEqual({ ...paste, source: '' });
  });
});
