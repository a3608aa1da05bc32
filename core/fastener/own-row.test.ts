import { describe, expect, it } from 'vitest';
import { parse } from '../failure/parse.ts';
import { newOwnRowSchema, type OwnRow, standingRows } from './own-row.ts';

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

describe('a row of one’s own', () => {
  it.each([paste, stud])('is taken with its figures and source: $name', (row) => {
    expect(parse(newOwnRowSchema, row)).toEqual({ ok: true, value: row });
  });

  it.each([
    [{ ...paste, source: ' ' }, 'source'],
    [{ ...paste, threadFriction: { lower: 0, upper: 0.1 } }, 'threadFriction.lower'],
    [{ ...paste, bearingFriction: { lower: 0.1, upper: 1.2 } }, 'bearingFriction.upper'],
    [{ ...paste, threadFriction: { lower: 0.2, upper: 0.1 } }, 'threadFriction.upper'],
    [{ ...stud, tensileStrengthMPa: 600 }, 'tensileStrengthMPa'],
    [{ ...stud, kind: 'thread' }, 'kind'],
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
