import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Guess, guessMapping } from './guess.ts';
import { guessDecimal } from './guess-decimal.ts';
import { mappingSchema } from './mapping.ts';

const OPTIONS = { zone: 'Europe/Zurich', now: '2026-05-04T09:00:00.000Z' };

function guessBytes(bytes: Uint8Array): Guess {
  const guess = guessMapping(bytes, OPTIONS);
  if (!guess.ok) throw new Error(JSON.stringify(guess.failure));
  return guess.value;
}
const guessText = (text: string) => guessBytes(new TextEncoder().encode(text));
const fieldsOf = (guess: Guess) => guess.doubts.map((doubt) => doubt.field);

describe('guessMapping', () => {
  it.each([
    [
      'English',
      'Position,Torque [N·m],Angle [deg],Time,Result',
      '1,60.4,30.5,2026-05-04T09:00:00Z,OK',
      'point',
      ['Position', 'Torque [N·m]', 'Angle [deg]', 'Time', 'Result'],
    ],
    [
      'German',
      'Schraube;Drehmoment (Nm);Drehwinkel;Zeitstempel;Bewertung',
      '1;60,4;30,5;2026-05-04T09:00:00Z;i.O.',
      'comma',
      ['Schraube', 'Drehmoment (Nm)', 'Drehwinkel', 'Zeitstempel', 'Bewertung'],
    ],
    [
      'French',
      'N° boulon;Couple [Nm];Angle;Heure;Verdict',
      '1;60,4;30,5;2026-05-04T09:00:00Z;ok',
      'comma',
      ['N° boulon', 'Couple [Nm]', 'Angle', 'Heure', 'Verdict'],
    ],
    [
      'Spanish',
      'Tornillo;Par [N·m];Ángulo;Fecha;Estado',
      '1;60,4;30,5;2026-05-04T09:00:00Z;ok',
      'comma',
      ['Tornillo', 'Par [N·m]', 'Ángulo', 'Fecha', 'Estado'],
    ],
  ] as const)(
    'knows the columns of a table in %s',
    (_, header, row, decimalSign, [position, torque, angle, time, verdict]) => {
      const guess = guessText(`${header}\n${row}\n${row}\n`);
      expect(guess).toMatchObject({ sure: true, doubts: [] });
      expect(guess.mapping).toMatchObject({
        decimalSign,
        headerRow: true,
        position,
        torque,
        angle,
        torqueUnit: { unit: 'N·m' },
        angleUnit: { unit: 'deg' },
        time: { column: time, format: 'iso-8601', zone: 'Europe/Zurich' },
        ignored: [verdict],
      });
    },
  );

  it('proposes what a mapping takes, once it has a name', () => {
    const { mapping } = guessText('pos;torque [lbf·ft]\n1;44,5\n2;45,0\n');
    expect(mappingSchema.parse({ name: 'mine', ...mapping })).toMatchObject({
      torque: 'torque [lbf·ft]',
      torqueUnit: { unit: 'lbf·ft' },
    });
  });

  it('finds units in a column of their own', () => {
    const guess = guessText('pos,torque,unit,angle,u2\n1,60.4,Nm,30,deg\n2,60.4,Nm,30,deg\n');
    expect(guess.mapping).toMatchObject({ torqueUnit: { column: 'unit' }, angleUnit: { column: 'u2' } });
    expect(guess.sure).toBe(true);
  });

  it('does not take a target or a limit for the torque', () => {
    const guess = guessText(
      'pos;Solldrehmoment Soll;Drehmoment min;Drehmoment [Nm]\n1;60,5;57,5;60,4\n2;60,5;57,5;60,4\n',
    );
    expect(guess.mapping).toMatchObject({
      torque: 'Drehmoment [Nm]',
      ignored: ['Solldrehmoment Soll', 'Drehmoment min'],
    });
  });

  it('doubts a torque that two columns could be', () => {
    const guess = guessText('pos,torque [Nm],peak torque [Nm]\n1,60.4,61.5\n2,60.4,61.5\n');
    expect(guess.mapping.torque).toBe('torque [Nm]');
    expect(fieldsOf(guess)).toEqual(['torque']);
  });

  it('names columns by number where there is no header, and says that it does not know the torque', () => {
    const guess = guessText('1;60,4;30,5\n2;60,4;30,5\n');
    expect(guess.mapping).toMatchObject({ headerRow: false, delimiter: ';' });
    expect(fieldsOf(guess)).toContain('torque');
    expect(guess.header).toBeUndefined();
  });

  it('finds a table below a title', () => {
    const guess = guessText('Report of station 4\n\npos;torque [Nm]\n1;60,4\n2;60,5\n3;60,6\n');
    expect(guess.mapping).toMatchObject({ linesBefore: 2, torque: 'torque [Nm]', delimiter: ';' });
  });

  it('is not sure of an encoding that only habit speaks for', () => {
    const guess = guessBytes(Buffer.from('Größe;Drehmoment [Nm]\n1;60,4\n2;60,4\n', 'latin1'));
    expect(guess.mapping.encoding).toBe('windows-1252');
    expect(fieldsOf(guess)).toEqual(['encoding']);
  });

  it.each([
    ['time without a zone', '2026-05-04 09:12', 'iso-8601', ['time']],
    ['day before month', '25.03.2026 09:12:33', 'dd.MM.yyyy HH:mm:ss', ['time']],
    ['seconds since 1970', '1777885953.5', 'unix-seconds', []],
    ['elapsed seconds', '12.5', 'elapsed-seconds', ['time']],
    ['month before day', '03/25/2026 09:12:33', 'MM/dd/yyyy HH:mm:ss', ['time']],
    ['a form it does not know', '25/03/2026 09:12:33', undefined, ['time']],
  ] as const)('knows %s', (_, time, format, doubts) => {
    const guess = guessText(`pos,torque [Nm],time\n1,60.4,${time}\n2,60.4,${time}\n`);
    expect(guess.mapping.time?.format).toBe(format);
    expect(fieldsOf(guess)).toEqual(doubts);
  });

  it('knows the curves of the sample by their repeated run', () => {
    const guess = guessBytes(
      readFileSync(new URL('samples/screw-into-plastic/curves.csv', import.meta.url)).subarray(0, 20_000),
    );
    expect(guess.mapping).toMatchObject({
      rows: { each: 'sample', curveBy: 'run_id' },
      torque: 'torque_Nm',
      angle: 'angle_deg',
      torqueUnit: { unit: 'N·m' },
      time: { column: 't_s', format: 'elapsed-seconds' },
    });
    expect(fieldsOf(guess)).toEqual(['time']);
  });

  it('shows the first rows', () => {
    expect(guessText('pos;torque\n1;60,4\n2;60,5\n').rows).toEqual([
      ['1', '60,4'],
      ['2', '60,5'],
    ]);
  });

  it.each([
    ['a binary file', 'PK\u0003\u0004\u0000\u0000'],
    ['an empty file', ''],
  ])('refuses %s', (_, text) => {
    expect(guessMapping(new TextEncoder().encode(text), OPTIONS)).toMatchObject({
      ok: false,
      failure: { field: 'file' },
    });
  });
});

describe('guessDecimal', () => {
  it.each([
    [['60,4', '1'], 'comma', undefined],
    [['60.44', '1,234'], 'point', /comma stands before three digits/],
    [['0,234'], 'comma', undefined],
    [['1234,567'], 'comma', undefined],
    [['1,234', '2,345'], 'comma', /decimals or thousands/],
    [['1.234'], 'point', /decimals or thousands/],
    [['60,4', '60.4'], 'point', /others a decimal point/],
    [['60', '61'], 'point', /nothing tells/],
    [[], 'point', /nothing tells/],
  ] as const)('takes %j for a decimal %s', (texts, sign, doubt) => {
    const guess = guessDecimal(texts);
    expect(guess.sign).toBe(sign);
    expect(guess.doubt ?? '').toMatch(doubt ?? /^$/);
  });
});
