import { describe, expect, it } from 'vitest';
import { mappingSchema } from './mapping.ts';

const PLAIN = { name: 'plain', decimalSign: 'point', headerRow: true, torque: 'torque', torqueUnit: { unit: 'N·m' } };
const fieldsOf = (changes: object) =>
  mappingSchema.safeParse({ ...PLAIN, ...changes }).error?.issues.map((issue) => issue.path[0]);

describe('mappingSchema', () => {
  it('fills in what has a usual value', () => {
    expect(mappingSchema.parse(PLAIN)).toMatchObject({
      delimiter: 'auto',
      encoding: 'auto',
      rows: { each: 'pull' },
      signs: 'positive-tightens',
      angleUnit: { unit: 'deg' },
    });
  });

  it.each([
    ['a name where there is no header', { headerRow: false, torque: 2, position: 'pos' }, 'position'],
    ['curves without a time', { rows: { each: 'sample', curveBy: 'run' }, angle: 'angle' }, 'time'],
    [
      'curves without an angle',
      { rows: { each: 'sample', curveBy: 'run' }, time: { column: 't', format: 'unix-seconds' } },
      'angle',
    ],
    ['a used column among the ignored ones', { ignored: ['torque'] }, 'ignored'],
    ['a zone that is none', { time: { column: 't', format: 'iso-8601', zone: 'Europe/Kestrelhorn' } }, 'time'],
    ['a unit that is none of torque', { torqueUnit: { unit: 'mm' } }, 'torqueUnit'],
    ['no torque', { torque: undefined }, 'torque'],
    ['a column 0', { position: 0 }, 'position'],
    ['a verdict', { verdict: 'ok' }, undefined],
  ])('refuses %s', (_, changes, field) => {
    expect(fieldsOf(changes)).toContain(field);
  });
});
