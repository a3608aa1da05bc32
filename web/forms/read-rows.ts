import { readNumber } from '@clampwright/core/quantity';
import type { Reader } from './reader.ts';

/** Tabs, semicolons and blanks stand between figures; a comma may be a decimal sign. */
const BETWEEN = /[\t; ]+/;

/** Figures in a row of text; undefined, and a fault at the field, where one cannot be read. */
export function figuresIn(text: string, field: string, reader: Reader): number[] | undefined {
  const words = text.trim().split(BETWEEN).filter(Boolean);
  if (words.length === 0) return reader.fault(field, { kind: 'needed' });
  const figures: number[] = [];
  for (const word of words) {
    const read = readNumber(word, reader.language);
    if (!read.ok) return reader.fault(field, { kind: 'number', text: word });
    figures.push(read.value);
  }
  return figures;
}

/** The same for whole numbers, between which commas may stand too. */
export function wholesIn(text: string, field: string, reader: Reader): number[] | undefined {
  const figures = figuresIn(text.replaceAll(',', ' '), field, reader);
  const odd = figures?.find((figure) => !Number.isInteger(figure));
  return odd === undefined ? figures : reader.fault(field, { kind: 'number', text: String(odd) });
}

/** A matrix, a row on each line. */
export function matrixIn(text: string, field: string, reader: Reader): number[][] | undefined {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  if (lines.length === 0) return reader.fault(field, { kind: 'needed' });
  const rows: number[][] = [];
  for (const line of lines) {
    const row = figuresIn(line, field, reader);
    if (!row) return undefined;
    rows.push(row);
  }
  return rows;
}
