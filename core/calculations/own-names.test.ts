import { describe, expect, it } from 'vitest';
import { ownRowSchema } from '../fastener/own-row.ts';
import { namesOwnRow } from './own-names.ts';
import { calculate, calculateMany } from './registry.ts';

const kept = {
  source: 'Own test',
  by: { id: '01991f3c-0000-7000-8000-000000000009', name: 'Lead' },
  addedAt: '2026-03-02T06:00:00.000Z',
};
const id = (last: number) => `01991f3c-0000-7000-8000-00000000000${last}`;
const rod = { ...kept, id: id(1), kind: 'bolt', name: 'Tie rod 23', majorDiameterMm: 23, pitchMm: 2 };
const steel = {
  ...kept,
  id: id(2),
  kind: 'material',
  name: 'Stud steel, melt 7',
  yieldStrengthMPa: 700,
  tensileStrengthMPa: 860,
};
const paste = {
  ...kept,
  id: id(3),
  kind: 'lubricant',
  name: 'Assembly paste',
  threadFriction: { lower: 0.1, upper: 0.12 },
  bearingFriction: { lower: 0.09, upper: 0.12 },
};
const ROWS = ownRowSchema.array().parse([rod, steel, paste]);
const DIMENSIONS = { designation: 'Tie rod 23', majorDiameterMm: 23, pitchMm: 2 };
const BOTH = { threadFriction: 0.1, bearingFriction: 0.09 };
const FACE = { bearingOuterMm: 34, holeMm: 25 };

describe('a calculation in which rows of the workshop’s own are named', () => {
  it('takes an own bolt by its designation, whatever its case and spacing', () => {
    const named = calculate('assembly-torque', { thread: 'TIE  rod 23', propertyClass: '8.8', ...BOTH, ...FACE }, ROWS);
    const told = calculate('assembly-torque', { thread: DIMENSIONS, propertyClass: '8.8', ...BOTH, ...FACE });
    expect(named.ok).toBe(true);
    expect(named).toEqual(told);
  });

  it('takes an own material in place of a class, by the field that the calculation has for it', () => {
    const named = calculate('assembly-torque', { thread: 'M12', propertyClass: steel.name, ...BOTH }, ROWS);
    expect(named).toEqual(calculate('assembly-torque', { thread: 'M12', proofStressMPa: 700, ...BOTH }));
    const checked = { thread: 'M12', layers: [{ thicknessMm: 20, outerDiameterMm: 40 }], preloadN: 30_000 };
    const more = { tighteningFactor: 1.6 };
    expect(calculate('joint-check', { ...checked, ...more, propertyClass: steel.name }, ROWS)).toEqual(
      calculate('joint-check', { ...checked, ...more, yieldStrengthMPa: 700, tensileStrengthMPa: 860 }),
    );
  });

  it('takes the lowest friction of an own lubricant, as when a target is derived', () => {
    const input = { thread: 'M12', propertyClass: '8.8' };
    expect(calculate('assembly-torque', { ...input, lubricant: 'assembly paste' }, ROWS)).toEqual(
      calculate('assembly-torque', { ...input, ...BOTH }),
    );
  });

  it('takes all of its range where the calculation takes what is uncertain', () => {
    const input = { thread: 'M12', propertyClass: '8.8', torqueNm: 80, draws: 0 };
    const between = (value: number, halfWidth: number) => ({
      value,
      // JCGM 100:2008, 4.3.7: a²/3.
      standardUncertainty: expect.closeTo(halfWidth / Math.sqrt(3), 12),
    });
    expect(calculate('preload', { ...input, lubricant: 'Assembly paste' }, ROWS)).toMatchObject({
      value: {
        contributions: expect.arrayContaining([
          expect.objectContaining({ quantity: 'threadFriction', ...between(0.11, 0.01) }),
          expect.objectContaining({ quantity: 'bearingFriction', ...between(0.105, 0.015) }),
        ]),
      },
    });
    expect(
      calculate(
        'torque-plausibility',
        { thread: 'M12', propertyClass: '8.8', torqueNm: 80, lubricant: paste.name },
        ROWS,
      ),
    ).toMatchObject({ value: { friction: { lowest: 0.09, highest: 0.12 } } });
  });

  it('keeps what is told beside the name', () => {
    const input = { thread: 'M12', propertyClass: '8.8', lubricant: 'Assembly paste', bearingFriction: 0.15 };
    expect(calculate('assembly-torque', input, ROWS)).toEqual(
      calculate('assembly-torque', { thread: 'M12', propertyClass: '8.8', threadFriction: 0.1, bearingFriction: 0.15 }),
    );
  });

  it('goes by the row that stands, not by one that was superseded', () => {
    const newer = { ...rod, id: id(4), pitchMm: 1.5, supersedes: rod.id };
    const rows = ownRowSchema.array().parse([rod, newer]);
    expect(calculate('fastener', { thread: 'Tie rod 23' }, rows)).toMatchObject({ value: { pitchMm: 1.5 } });
  });

  it('takes shipped rows before own ones', () => {
    const rows = ownRowSchema.array().parse([{ ...steel, name: '8.8' }]);
    const input = { thread: 'M12', propertyClass: '8.8', ...BOTH };
    expect(calculate('assembly-torque', input, rows)).toEqual(calculate('assembly-torque', input));
  });

  it.each([
    [{ thread: 'Tie rod 24', propertyClass: '8.8', ...BOTH }, 'thread', 'M10'],
    [{ thread: 'M12', propertyClass: 'melt 8', ...BOTH }, 'propertyClass', '8.8'],
    [{ thread: 'M12', propertyClass: '8.8', lubricant: 'grease' }, 'lubricant', 'Assembly paste'],
  ])('is refused a name that nobody has: %j', (input, field, expected) => {
    expect(calculate('assembly-torque', input, ROWS)).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field, expected: expect.stringContaining(expected) },
    });
  });

  it('is refused a name that two rows have', () => {
    const rows = ownRowSchema.array().parse([paste, { ...paste, id: id(5) }]);
    const input = { thread: 'M12', propertyClass: '8.8', lubricant: 'Assembly paste' };
    expect(calculate('assembly-torque', input, rows)).toMatchObject({ ok: false, failure: { field: 'lubricant' } });
  });

  it('may be one of several', () => {
    const answers = calculateMany('fastener', [{ thread: 'M12' }, { thread: 'Tie rod 23' }, { thread: 'Rod' }], ROWS);
    expect(answers).toMatchObject([{ majorDiameterMm: 12 }, { majorDiameterMm: 23 }, { error: { field: 'thread' } }]);
  });
});

it('looks own rows up only for names that no shipped table has', () => {
  const usual = { thread: 'M12x1.25', propertyClass: 'grade 5' };
  expect([usual, {}, 7, null, [usual, usual], { thread: DIMENSIONS }].map(namesOwnRow)).not.toContain(true);
  for (const own of [
    { thread: 'Rod' },
    { propertyClass: 'melt 7' },
    { lubricant: 'paste' },
    [usual, { thread: 'Rod' }],
  ])
    expect([own, namesOwnRow(own)]).toEqual([own, true]);
});
