import { type Language, readNumber } from '@clampwright/core/quantity';
import type { PointForm } from './joint-form.ts';

/** A pasted list: the points that could be read, and the lines that could not, counted from 1. */
export interface PastedPoints {
  readonly points: readonly PointForm[];
  readonly badLines: readonly number[];
}

const SPACES = /[\t ]+/;

/**
 * Reads pasted free points, one `x y` a line: columns from a spreadsheet (tab), or split by semicolon or spaces,
 * or by a comma where the language's decimals leave it free. A leading number of the position is passed over.
 *
 * @param text     what was pasted
 * @param language how its decimals are written
 * @param firstKey key of the first row
 */
export function pastedPoints(text: string, language: Language, firstKey: number): PastedPoints {
  const points: PointForm[] = [];
  const badLines: number[] = [];
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    if (line.trim() === '') continue;
    const cells = cellsOf(line.trim(), language);
    const [x, y] = cells.length === 3 ? cells.slice(1) : cells;
    const isPoint = cells.length <= 3 && isNumber(x, language) && isNumber(y, language);
    if (isPoint && x !== undefined && y !== undefined) points.push({ key: firstKey + points.length, x, y });
    else badLines.push(index + 1);
  }
  return { points, badLines };
}

function cellsOf(line: string, language: Language): readonly string[] {
  const trimmed = (cells: readonly string[]) => cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  if (line.includes(';')) return trimmed(line.split(';'));
  if (line.includes('\t')) return trimmed(line.split('\t'));
  if (language === 'en' && line.includes(',')) return trimmed(line.split(','));
  return trimmed(line.split(SPACES));
}

const isNumber = (text: string | undefined, language: Language): boolean =>
  text !== undefined && readNumber(text, language).ok;
