import { describe, expect, it } from 'vitest';
import { readUnit } from './read-unit.ts';
import { UNITS } from './unit.ts';

describe('readUnit', () => {
  it.each([
    ['N·m', ['N·m', 'Nm', 'N.m', 'N m', 'N*m', 'N-m', 'N⋅m', ' N·m ', 'nm', 'NM']],
    ['cN·m', ['cNm', 'cN.m', 'CNM']],
    ['kN·m', ['kNm', 'kN-m']],
    ['lbf·ft', ['lbf.ft', 'ft.lbf', 'ft-lb', 'ft-lbs', 'ft lb', 'lb·ft', 'FT-LB', 'lbf-ft', 'ftlb']],
    ['lbf·in', ['lbf.in', 'in.lbf', 'in-lb', 'in.lbs', 'IN-LB', 'lbf in']],
    ['ozf·in', ['ozf.in', 'oz-in', 'in.oz']],
    ['kgf·m', ['kgf.m', 'kgf-m', 'kg·m']],
    ['kgf·cm', ['kgf.cm', 'kg-cm']],
    ['MPa', ['MPa', 'mpa', 'MPA', 'N/mm2', 'N/mm²']],
    ['psi', ['PSI']],
    ['deg', ['°', 'degrees', 'Deg.'.toLowerCase()]],
    ['in', ['in', 'in.', '"', 'inch']],
  ] as const)('reads the spellings of %s', (unit, spellings) => {
    expect(spellings.map((spelling) => readUnit(spelling))).toEqual(spellings.map(() => ({ ok: true, value: unit })));
  });

  it('reads every name of the table as itself', () => {
    for (const { name } of UNITS) expect(readUnit(name)).toEqual({ ok: true, value: name });
  });

  it.each(['', 'furlong', 'mPa', 'Mm', 'N/m', 'mN', 'lb·ft·s', '85 N·m'])(
    'refuses “%s” and lists what it knows',
    (text) => {
      expect(readUnit(text, 'from')).toMatchObject({
        ok: false,
        failure: { kind: 'invalid', field: 'from', expected: expect.stringContaining('N·m, cN·m, dN·m') },
      });
    },
  );
});
