import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert } from './convert.ts';
import { UNITS, unitsOf } from './unit.ts';

fc.configureGlobal({ seed: 24 });

const unit = fc.constantFrom(...UNITS.map(({ name }) => name));
const kin = unit.chain((from) => {
  const quantity = UNITS.find(({ name }) => name === from)?.quantity ?? 'torque';
  return fc.tuple(fc.constant(from), fc.constantFrom(...unitsOf(quantity)));
});
const figure = fc.double({ min: -1e9, max: 1e9, noNaN: true });

describe('convert', () => {
  it.each([
    [1, 'lbf·ft', 'N·m', 1.3558179483314003],
    [1, 'lbf·ft', 'lbf·in', 12],
    [1, 'lbf·in', 'ozf·in', 16],
    [12, 'in', 'mm', 304.8],
    [100, 'kgf·cm', 'kgf·m', 1],
    [1, 'ksi', 'psi', 1000],
    [0.5, 'turn', 'deg', 180],
    [180, 'deg', 'rad', Math.PI],
    [0, 'kN', 'lbf', 0],
    [-90, 'deg', 'turn', -0.25],
  ] as const)('%d %s is exactly as many %s', (value, from, to, expected) => {
    expect(convert(value, from, to)).toEqual({ ok: true, value: expected });
  });

  it('comes back to the figure it began with', () => {
    fc.assert(
      fc.property(figure, kin, (value, [from, to]) => {
        const there = convert(value, from, to);
        const back = there.ok ? convert(there.value, to, from) : there;
        expect(back.ok && Math.abs(back.value - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-15 + 1e-300);
      }),
    );
  });

  it('keeps the order of figures', () => {
    fc.assert(
      fc.property(figure, figure, kin, (a, b, [from, to]) => {
        const [less, more] = [convert(Math.min(a, b), from, to), convert(Math.max(a, b), from, to)];
        expect(less.ok && more.ok && less.value <= more.value).toBe(true);
      }),
    );
  });

  it('never mixes quantities', () => {
    fc.assert(
      fc.property(figure, unit, unit, (value, from, to) => {
        const quantities = [from, to].map((name) => UNITS.find((row) => row.name === name)?.quantity);
        expect(convert(value, from, to).ok).toBe(quantities[0] === quantities[1]);
      }),
    );
  });

  it('says what each unit measures when they do not go together', () => {
    expect(convert(1, 'N·m', 'mm')).toMatchObject({
      failure: { field: 'to', message: 'N·m is a unit of torque, mm one of length; they cannot be converted.' },
    });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308])(
    'refuses %d, which has no figure in the other unit',
    (value) => {
      expect(convert(value, 'kN·m', 'ozf·in')).toMatchObject({ ok: false, failure: { field: 'value' } });
    },
  );
});
