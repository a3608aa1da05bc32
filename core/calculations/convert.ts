import { z } from 'zod';
import { ok } from '../failure/failure.ts';
import { convert as convertUnit } from '../quantity/convert.ts';
import { readUnit } from '../quantity/read-unit.ts';
import { calculation } from './calculation.ts';

const unit = (which: string) => z.string().describe(`${which}, such as N·m, lbf.ft, kN, MPa, in, deg`);

export const convert = calculation({
  name: 'convert',
  title: 'Convert a torque, force, length, stress or angle from one unit into another',
  cautions: ['A converted figure is only as right as the unit it was taken in: read the manual’s unit twice.'],
  sources: ['NIST SP 811:2008, appendix B: 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm, 1 kgf = 9.80665 N, all exact'],
  input: z.strictObject({
    value: z.number().describe('the figure to convert'),
    from: unit('its unit'),
    to: unit('the unit wanted, of the same quantity'),
  }),
  output: z.strictObject({ value: z.number().describe('the figure in the unit wanted') }),
  example: { value: 85, from: 'lbf.ft', to: 'N.m' },
  work: ({ value, from, to }) => {
    const fromUnit = readUnit(from, 'from');
    if (!fromUnit.ok) return fromUnit;
    const toUnit = readUnit(to, 'to');
    if (!toUnit.ok) return toUnit;
    const converted = convertUnit(value, fromUnit.value, toUnit.value);
    return converted.ok ? ok({ value: converted.value }) : converted;
  },
});
