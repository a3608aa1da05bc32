import { describe, expect, it } from 'vitest';
import type { Guess, Mapping } from './mapping.ts';
import { formOf, readMapping, withRole } from './mapping-form.ts';

const DEFAULTS = { zone: 'Europe/Zurich', now: '2026-03-01T08:00:00.000Z' } as const;

const GUESS: Guess = {
  mapping: {
    delimiter: ';',
    encoding: 'utf-8',
    decimalSign: 'comma',
    linesBefore: 2,
    headerRow: true,
    position: 'Nr',
    torque: 'Drehmoment',
    torqueUnit: { unit: 'N·m' },
    time: { column: 'Zeit', format: 'dd.MM.yyyy HH:mm:ss', zone: 'Europe/Zurich' },
  },
  doubts: [],
  header: ['Nr', 'Drehmoment', 'Winkel', 'Zeit', 'Urteil'],
  rows: [['1', '84,6', '41', '01.03.2026 09:12:00', 'OK']],
};

const guessed = formOf(GUESS, GUESS.mapping, DEFAULTS);

describe('columns of a file', () => {
  it('stand with the roles that were guessed, their names and their first cells', () => {
    expect(guessed.columns.map(({ name, role, cells }) => [name, role, cells[0]])).toEqual([
      ['Nr', 'position', '1'],
      ['Drehmoment', 'torque', '84,6'],
      ['Winkel', 'none', '41'],
      ['Zeit', 'time', '01.03.2026 09:12:00'],
      ['Urteil', 'none', 'OK'],
    ]);
  });

  it('give up a role that another column takes', () => {
    expect(withRole(guessed, 2, 'torque').columns.map((column) => column.role)).toEqual([
      'position',
      'none',
      'torque',
      'time',
      'none',
    ]);
  });

  it('may all be passed over', () => {
    expect(withRole(guessed, 0, 'none').columns.filter((column) => column.role === 'none')).toHaveLength(3);
  });
});

describe('the mapping that is told', () => {
  it('names columns by their header and lists what is passed over', () => {
    expect(readMapping(withRole(guessed, 2, 'angle'), 'Bench').mapping).toEqual({
      name: 'Bench',
      delimiter: ';',
      encoding: 'utf-8',
      decimalSign: 'comma',
      linesBefore: 2,
      headerRow: true,
      rows: { each: 'pull' },
      signs: 'positive-tightens',
      position: 'Nr',
      torque: 'Drehmoment',
      torqueUnit: { unit: 'N·m' },
      angle: 'Winkel',
      angleUnit: { unit: 'deg' },
      time: { column: 'Zeit', format: 'dd.MM.yyyy HH:mm:ss', zone: 'Europe/Zurich' },
      ignored: ['Urteil'],
    });
  });

  it('numbers columns from 1 where there is no header row, or a name stands over two', () => {
    const bare = formOf({ mapping: {}, doubts: [], rows: [['84.6', '41']] }, {}, DEFAULTS);
    expect(readMapping(withRole(bare, 0, 'torque'), 'x').mapping).toMatchObject({ torque: 1, ignored: [2] });
    const twin = formOf({ ...GUESS, mapping: {}, header: ['Nm', 'Nm ', 'a', 'b', 'c'] }, { headerRow: true }, DEFAULTS);
    expect(readMapping(withRole(twin, 1, 'torque'), 'x').mapping).toMatchObject({ torque: 2 });
  });

  it('waits for the torque', () => {
    expect(readMapping(withRole(guessed, 1, 'none'), 'x')).toEqual({ mapping: undefined, missing: ['torque'] });
  });

  it('takes the unit from a column where one has it', () => {
    expect(readMapping(withRole(guessed, 4, 'torqueUnit'), 'x').mapping?.torqueUnit).toEqual({ column: 'Urteil' });
  });

  it('wants time and angle of samples that make up curves', () => {
    const curves = withRole(withRole(guessed, 0, 'curveBy'), 3, 'none');
    expect(readMapping(curves, 'x').missing).toEqual(['curve-time', 'curve-angle']);
  });

  it('refuses a time zone that nobody knows, where a zone is needed', () => {
    const astray = { ...guessed, zone: 'Europe/Atlantis' };
    expect(readMapping(astray, 'x').missing).toEqual(['zone']);
    expect(readMapping({ ...astray, timeFormat: 'unix-seconds' }, 'x').mapping?.time).toEqual({
      column: 'Zeit',
      format: 'unix-seconds',
    });
  });
});

it('fits a saved mapping onto the columns of another file, whatever their order', () => {
  const saved: Partial<Mapping> = readMapping(guessed, 'Bench').mapping ?? {};
  const other = { ...GUESS, header: ['Zeit', 'nr', 'Drehmoment'], rows: [['01.03.2026 09:12:00', '1', '84,6']] };
  expect(formOf(other, saved, DEFAULTS).columns.map((column) => column.role)).toEqual(['time', 'position', 'torque']);
});
