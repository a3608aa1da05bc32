import { expect, it } from 'vitest';
import { pastedPoints } from './points.ts';

const xy = (text: string, language: 'en' | 'de') => pastedPoints(text, language, 1).points.map(({ x, y }) => [x, y]);

it.each([
  [
    'columns of a spreadsheet',
    '10\t20\n30\t40.5',
    'en',
    [
      ['10', '20'],
      ['30', '40.5'],
    ],
  ],
  [
    'a position number ahead',
    '1\t10\t20\r\n2\t30\t40',
    'en',
    [
      ['10', '20'],
      ['30', '40'],
    ],
  ],
  [
    'semicolons and decimal commas',
    '10,5; 20\n-3,25;0',
    'de',
    [
      ['10,5', '20'],
      ['-3,25', '0'],
    ],
  ],
  [
    'commas where they are no decimal sign',
    '10, 20\n30,40',
    'en',
    [
      ['10', '20'],
      ['30', '40'],
    ],
  ],
  [
    'spaces',
    '  10   20 \n\n30 40\n',
    'de',
    [
      ['10', '20'],
      ['30', '40'],
    ],
  ],
] as const)('reads %s', (_what, text, language, points) => {
  expect(xy(text, language)).toEqual(points);
});

it('names the lines that are no point and keeps the others', () => {
  const read = pastedPoints('x\ty\n10\t20\n30\n40\t50\t60\t70', 'en', 5);
  expect(read.badLines).toEqual([1, 3, 4]);
  expect(read.points).toEqual([{ key: 5, x: '10', y: '20' }]);
});

it('does not take a decimal point for one where the comma is the sign', () => {
  expect(pastedPoints('10.5 20', 'de', 1)).toEqual({ points: [], badLines: [1] });
});
