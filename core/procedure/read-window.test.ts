import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleWindowSchema, type TypedWindow, torqueWindowSchema } from './procedure.ts';
import { readWindow } from './read-window.ts';

fc.configureGlobal({ seed: 24 });

const percent = (target: string, percent: string, unit = 'N·m'): TypedWindow => ({
  form: 'percent',
  target,
  percent,
  unit,
});
const plusMinus = (target: string, plusMinus: string, unit = 'N·m'): TypedWindow => ({
  form: 'plus-minus',
  target,
  plusMinus,
  unit,
});
const limits = (lower: string, upper: string, unit = 'N·m'): TypedWindow => ({ form: 'limits', lower, upper, unit });

describe('a torque window', () => {
  it.each([
    ['target and percent', percent('400', '5'), 380, 400, 420],
    ['target and deviation', plusMinus('85', '4.25'), 80.75, 85, 89.25],
    ['lower to upper, the target in the middle', limits('70', '115'), 70, 92.5, 115],
  ])('is read from %s', (_, typed, lowerNm, targetNm, upperNm) => {
    expect(readWindow(typed, 'torque', 'en')).toEqual({ ok: true, value: { lowerNm, targetNm, upperNm, typed } });
  });

  it('is converted from the unit of the manual, which is kept', () => {
    // 1 lbf·ft = 1.355 817 948 331 400 4 N·m exactly (NIST SP 811, from the definitions of lbf and ft)
    const window = readWindow(percent('63', '10', 'lbf.ft'), 'torque', 'en');
    expect(window.ok && window.value.targetNm).toBeCloseTo(63 * 1.3558179483314, 12);
    expect(window.ok && window.value.lowerNm).toBeCloseTo(56.7 * 1.3558179483314, 12);
    expect(window.ok && window.value.typed).toEqual(percent('63', '10', 'lbf.ft'));
  });

  it('is read with the decimal sign of the language', () => {
    expect(readWindow(plusMinus('12,5', '0,5'), 'torque', 'de')).toMatchObject({
      ok: true,
      value: { lowerNm: 12, upperNm: 13 },
    });
    expect(readWindow(plusMinus('12,5', '0,5'), 'torque', 'en')).toMatchObject({
      ok: false,
      failure: { field: 'target' },
    });
  });

  it.each<[string, TypedWindow, string]>([
    ['lower above upper', limits('115', '70'), 'lower'],
    ['a unit of angle', percent('400', '5', 'deg'), 'unit'],
    ['an unknown unit', percent('400', '5', 'furlong'), 'unit'],
    ['no figure', percent('', '5'), 'target'],
    ['a target of nothing', percent('0', '5'), 'target'],
    ['a negative target', percent('-85', '5'), 'target'],
    ['more than all', percent('85', '101'), 'percent'],
    ['a negative percent', percent('85', '-5'), 'percent'],
    ['a negative deviation', plusMinus('85', '-5'), 'plusMinus'],
    ['a deviation larger than the target', plusMinus('85', '86'), 'plusMinus'],
    ['limits of nothing', limits('0', '0'), 'upper'],
    ['an absurd torque', limits('0', '99000'), 'upper'],
  ])('is refused, naming the field: %s', (_, typed, field) => {
    expect(readWindow(typed, 'torque', 'en')).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });

  it('always fits its schema, limits around the target', () => {
    const figure = fc.integer({ min: 1000, max: 900_000 }).map((thousandths) => String(thousandths / 1000));
    const share = fc.integer({ min: 0, max: 1000 }).map((tenths) => String(tenths / 10));
    fc.assert(
      fc.property(figure, share, fc.constantFrom('N·m', 'lbf·ft', 'kgf·cm'), (target, share, unit) => {
        const read = readWindow(percent(target, share, unit), 'torque', 'en');
        const window = torqueWindowSchema.parse(read.ok ? read.value : undefined);
        expect(window.lowerNm).toBeLessThanOrEqual(window.targetNm);
        expect(window.upperNm).toBeGreaterThanOrEqual(window.targetNm);
      }),
    );
  });
});

describe('an angle window', () => {
  it('is read in degrees, radians or turns', () => {
    expect(readWindow(plusMinus('90', '5', '°'), 'angle', 'en')).toMatchObject({
      ok: true,
      value: { lowerDeg: 85, targetDeg: 90, upperDeg: 95 },
    });
    const turns = readWindow(limits('0.25', '0.5', 'turn'), 'angle', 'en');
    expect(turns).toMatchObject({ ok: true, value: { lowerDeg: 90, targetDeg: 135, upperDeg: 180 } });
    expect(angleWindowSchema.safeParse(turns.ok ? turns.value : undefined).success).toBe(true);
  });

  it.each<[string, TypedWindow, string]>([
    ['a unit of torque', plusMinus('90', '5', 'N·m'), 'unit'],
    ['a negative angle', limits('-5', '5', 'deg'), 'lower'],
    ['degrees typed as turns', percent('90', '5', 'turn'), 'target'],
  ])('is refused, naming the field: %s', (_, typed, field) => {
    expect(readWindow(typed, 'angle', 'en')).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });
});
