import {
  type Continuous,
  chiSquare,
  fisherF,
  gamma,
  logGamma,
  normal,
  studentT,
  weibull,
} from '@clampwright/core/statistics';
import { describe, expect, it } from 'vitest';
import { DISTRIBUTION_TABLE } from './made/distribution-table.ts';

/** Relative, on figures that mpmath works out to forty digits. */
const TOLERANCE = 1e-10;

const MAKERS: Readonly<Record<string, (first: number, second: number) => Continuous>> = {
  normal: () => normal,
  t: studentT,
  F: fisherF,
  'chi-square': chiSquare,
  gamma,
  weibull,
};

interface Row {
  readonly name: string;
  readonly parameters: readonly number[];
  readonly what: string;
  readonly argument: number;
  readonly figures: readonly number[];
}

function rowOf(line: string): Row {
  const words = line.split(' ');
  const at = words.findIndex((word) => ['at', 'above', 'below'].includes(word));
  const [argument = Number.NaN, ...figures] = words.slice(at + 1).map(Number);
  return { name: words[0] ?? '', parameters: words.slice(1, at).map(Number), what: words[at] ?? '', argument, figures };
}

const ROWS = DISTRIBUTION_TABLE.trim().split('\n').map(rowOf);

function oursFor({ name, parameters: [first = 0, second = 0], what, argument }: Row): readonly number[] {
  if (name === 'log-gamma') return [logGamma(argument)];
  const distribution = MAKERS[name]?.(first, second);
  if (!distribution) throw new Error(`no distribution ${name}`);
  if (what === 'above') return [distribution.quantileAbove(argument)];
  if (what === 'below') return [distribution.quantile(argument)];
  return [distribution.density(argument), distribution.below(argument), distribution.above(argument)];
}

const missOf = (row: Row): number =>
  Math.max(...oursFor(row).map((ours, index) => Math.abs(ours / (row.figures[index] ?? Number.NaN) - 1)));

describe('density, shares and quantiles agree with mpmath 1.3.0 at 40 digits', () => {
  it('at more than a thousand points', () => {
    expect(ROWS.length).toBeGreaterThan(1000);
    expect(ROWS.every(({ figures }) => figures.length > 0 && figures.every(Number.isFinite))).toBe(true);
  });

  it.each([...Object.keys(MAKERS), 'log-gamma'])('%s, within a relative 1e-10', (name) => {
    const misses = ROWS.filter((row) => row.name === name).map((row) => ({ row, miss: missOf(row) }));
    expect(misses.length).toBeGreaterThan(20);
    expect(misses.filter(({ miss }) => !(miss < TOLERANCE))).toEqual([]);
  });
});
