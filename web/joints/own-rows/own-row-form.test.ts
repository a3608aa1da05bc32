import { newOwnRowSchema } from '@clampwright/core/fastener';
import { describe, expect, it } from 'vitest';
import { type OwnRowForm, ownRowForm, readOwnRow } from './own-row-form.ts';

const ids = { id: '01991f3c-0000-7000-8000-000000000001', supersedes: undefined, rows: [] };

const paste: OwnRowForm = {
  ...ownRowForm(undefined, 'de'),
  name: 'Montagepaste',
  source: 'Eigener Versuch vom 3. März',
  threadLower: '0,1',
  threadUpper: '0,12',
  bearingLower: '0,09',
  bearingUpper: '0,12',
};

const by = { id: ids.id, name: 'Lead' };
const addedAt = '2026-03-02T06:00:00.000Z';
const blank = ownRowForm(undefined, 'de');
const rod: OwnRowForm = {
  ...blank,
  kind: 'bolt',
  name: 'Zugstange 23',
  source: 'Zeichnung',
  bolt: { ...blank.bolt, majorDiameterMm: '23', pitchMm: '2', bearingOuterMm: '34', holeMm: '25' },
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

  it.each([
    [{ majorDiameterMm: '' }, 'majorDiameterMm', { kind: 'needed' }],
    [{ pitchMm: '25' }, 'pitchMm', { kind: 'bolt', fault: { than: 'core' } }],
    [{ minorDiameterMm: '24' }, 'minorDiameterMm', { kind: 'bolt', fault: { must: 'less than', limit: 23 } }],
    [{ bearingOuterMm: '24,5' }, 'bearingOuterMm', { kind: 'bolt', fault: { than: 'holeMm' } }],
    [{ holeMm: 'x' }, 'holeMm', { kind: 'number' }],
  ] as const)('of a bolt is told which figure to mend: %j', (wrong, field, finding) => {
    const { row, faults } = readOwnRow({ ...rod, bolt: { ...rod.bolt, ...wrong } }, ids, 'de');
    expect([row, faults]).toMatchObject([undefined, [{ field, finding }]]);
  });

  it('of a bolt is read with the figures that were given, and no others', () => {
    const { row } = readOwnRow(rod, ids, 'de');
    const { id } = ids;
    const figures = { majorDiameterMm: 23, pitchMm: 2, bearingOuterMm: 34, holeMm: 25, system: 'ISO metric' };
    expect(row).toEqual({ id, kind: 'bolt', name: 'Zugstange 23', source: 'Zeichnung', ...figures });
    expect(newOwnRowSchema.parse(row)).toEqual(row);
  });

  it('of a bolt is refused a designation that is taken', () => {
    const taken = [{ field: 'name', finding: { kind: 'taken' } }];
    expect(readOwnRow({ ...rod, name: 'M24' }, ids, 'de').faults).toMatchObject(taken);
    const rows = [{ ...readOwnRow(rod, ids, 'de').row!, id: 'other', by, addedAt }];
    expect(readOwnRow(rod, { ...ids, rows }, 'de').faults).toMatchObject(taken);
    expect(readOwnRow(rod, { ...ids, rows, supersedes: 'other' }, 'de').faults).toEqual([]);
  });

  it('begins with the figures of the row whose place it takes, but not with its source', () => {
    for (const form of [paste, rod]) {
      const before = { ...readOwnRow(form, ids, 'de').row!, by, addedAt };
      expect(ownRowForm(before, 'de')).toEqual({ ...form, source: '' });
    }
  });
});
