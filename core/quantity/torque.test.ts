import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertTorque } from './convert.ts';
import { checkTorque, readTorque } from './torque.ts';
import { UNITS } from './unit.ts';

fc.configureGlobal({ seed: 24 });

const torqueUnits = UNITS.flatMap((unit) => (unit.quantity === 'torque' ? [unit.name] : []));

describe('readTorque', () => {
  it('gives newton metres for a figure in the unit beside it', () => {
    expect(readTorque('62,7', 'lbf·ft', 'de')).toEqual({ ok: true, value: convertTorque(62.7, 'lbf·ft', 'N·m') });
  });

  it('refuses a negative figure', () => {
    expect(readTorque('-5', 'N·m', 'en')).toMatchObject({
      failure: { field: 'torque', message: expect.stringContaining('negative') },
    });
  });

  it('names lbf·in as the likely slip of an absurd figure in lbf·ft', () => {
    expect(readTorque('32000', 'lbf·ft', 'en')).toMatchObject({
      failure: { message: expect.stringMatching(/Was the figure in lbf·in\? 32\u202f000 lbf·in is 2667 lbf·ft\./) },
    });
  });

  it('names the larger unit for a figure that is absurdly small', () => {
    expect(readTorque('0.0005', 'N·m', 'en')).toMatchObject({
      failure: { message: expect.stringContaining('Was the figure in kN·m?') },
    });
  });

  it('asks for a look at the unit when no other unit makes sense of the figure', () => {
    expect(readTorque('999999999999', 'N·m', 'en')).toMatchObject({
      failure: { message: expect.stringContaining('Look at the decimal sign and the unit.') },
    });
  });

  it('refuses a unit that measures something else', () => {
    expect(readTorque('5', 'mm', 'en')).toMatchObject({ failure: { message: 'mm is no unit of torque.' } });
  });

  it('passes on why a figure cannot be read', () => {
    expect(readTorque('1,234', 'N·m', 'en', 'lower')).toMatchObject({ failure: { field: 'lower' } });
  });

  it('takes zero, which is a lower limit', () => {
    expect(readTorque('0', 'N·m', 'en')).toEqual({ ok: true, value: 0 });
  });
});

describe('checkTorque', () => {
  it('takes every torque inside the range and none outside', () => {
    const range = { lowestNm: 10, highestNm: 100 };
    const figure = fc.double({ min: 0.001, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(figure, fc.constantFrom(...torqueUnits), (torque, unit) => {
        const torqueNm = convertTorque(torque, unit, 'N·m');
        expect(checkTorque(torque, unit, range).ok).toBe(torqueNm >= range.lowestNm && torqueNm <= range.highestNm);
      }),
    );
  });

  it('names lbf·in when 540 stands for 45 lbf·ft on a fastener that takes no more than 120 N·m', () => {
    const range = { lowestNm: 5, highestNm: 120 };
    expect(checkTorque(540, 'lbf·ft', range, 'target')).toMatchObject({
      failure: { field: 'target', message: expect.stringContaining('540 lbf·in is 45.00 lbf·ft') },
    });
  });
});
