import { describe, expect, it } from 'vitest';
import { parse } from '../failure/parse.ts';
import { joinsRows, newOwnRowSchema, type OwnBolt, type OwnRow, standingRows, threadOfBolt } from './own-row.ts';

const id = (n: number): string => `01991f3c-0000-7000-8000-00000000000${n}`;

const paste = {
  id: id(1),
  kind: 'lubricant',
  name: 'Assembly paste, tin of March',
  source: 'Own test of 3 March, 12 bolts M12',
  threadFriction: { lower: 0.1, upper: 0.12 },
  bearingFriction: { lower: 0.09, upper: 0.12 },
} as const;

const stud = {
  id: id(2),
  kind: 'material',
  name: 'Stud of lot 7',
  source: 'Inspection certificate 3.1, lot 7',
  yieldStrengthMPa: 700,
  tensileStrengthMPa: 860,
} as const;

const rod = {
  id: id(5),
  kind: 'bolt',
  name: 'Tie rod 23',
  source: 'Drawing KH-114, measured on 4 rods',
  system: 'ISO metric',
  majorDiameterMm: 23,
  pitchMm: 2,
  bearingOuterMm: 34,
  holeMm: 25,
} as const;

describe('a row of one’s own', () => {
  it.each([paste, stud, rod])('is taken with its figures and source: $name', (row) => {
    expect(parse(newOwnRowSchema, row)).toEqual({ ok: true, value: row });
  });

  it.each([
    [{ ...paste, source: ' ' }, 'source'],
    [{ ...paste, threadFriction: { lower: 0, upper: 0.1 } }, 'threadFriction.lower'],
    [{ ...paste, bearingFriction: { lower: 0.1, upper: 1.2 } }, 'bearingFriction.upper'],
    [{ ...paste, threadFriction: { lower: 0.2, upper: 0.1 } }, 'threadFriction.upper'],
    [{ ...stud, tensileStrengthMPa: 600 }, 'tensileStrengthMPa'],
    [{ ...stud, kind: 'thread' }, 'kind'],
    [{ ...rod, source: '' }, 'source'],
    [{ ...rod, name: 'm24 ' }, 'name'],
    [{ ...rod, pitchMm: 23 }, 'pitchMm'],
    [{ ...rod, minorDiameterMm: 24 }, 'minorDiameterMm'],
    [{ ...rod, bearingOuterMm: 25 }, 'bearingOuterMm'],
    [{ ...stud, by: { id: id(3), name: 'Somebody else' } }, 'by'],
  ])('is refused where it cannot be so: %j', (row, field) => {
    expect(parse(newOwnRowSchema, row)).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });

  it('no longer stands once another took its place, and stays in the list', () => {
    const kept = { by: { id: id(9), name: 'Lead' }, addedAt: '2026-03-02T06:00:00.000Z' };
    const rows: readonly OwnRow[] = [
      { ...paste, ...kept },
      { ...paste, ...kept, id: id(4), supersedes: id(1) },
      { ...stud, ...kept },
    ];
    expect(standingRows(rows).map((row) => row.id)).toEqual([id(4), id(2)]);
    expect(rows).toHaveLength(3);
  });
});

describe('a row beside those that are kept', () => {
  const kept = { by: { id: id(9), name: 'Lead' }, addedAt: '2026-03-02T06:00:00.000Z' };
  const rods: readonly OwnBolt[] = [{ ...rod, ...kept }];
  const second = { ...rod, id: id(6), supersedes: rod.id };

  it('takes the place of one that stands, under the same designation', () => {
    expect(joinsRows(rods, second)).toEqual({ ok: true, value: undefined });
  });

  it('is refused where the designation is taken, however it is spelt', () => {
    expect(joinsRows(rods, { ...rod, id: id(6), name: 'TIE  rod 23' })).toMatchObject({
      failure: { kind: 'invalid', field: 'name' },
    });
    expect(joinsRows(rods, { ...stud, name: rod.name })).toMatchObject({ ok: true });
  });

  it('finds the row superseded already, and says which to supersede', () => {
    expect(joinsRows([...rods, { ...second, ...kept }], { ...second, id: id(7) })).toMatchObject({
      failure: { kind: 'conflict', message: expect.stringContaining('supersede that one'), current: { id: id(6) } },
    });
  });

  it('finds nothing to supersede of its kind', () => {
    expect(joinsRows(rods, { ...stud, supersedes: rod.id })).toMatchObject({ failure: { kind: 'not-found' } });
  });

  it('gives its dimensions to calculations, and nothing else', () => {
    const { majorDiameterMm, pitchMm, bearingOuterMm, holeMm, system } = rod;
    const told = { designation: rod.name, system, majorDiameterMm, pitchMm, bearingOuterMm, holeMm };
    expect(threadOfBolt({ ...second, ...kept })).toEqual(told);
  });
});
