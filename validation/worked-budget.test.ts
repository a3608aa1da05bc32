import { readFileSync } from 'node:fs';
import { calculate } from '@clampwright/core/calculations';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { halfUnit } from './check.ts';

const page = readFileSync(new URL('../docs/calibration.md', import.meta.url), 'utf8');

/** Value of each line of the worked budget, as it is written on the page. */
const LINES = [...page.matchAll(/^\| ([^|]+) \| [^|]+ \| [^|]+ \| (-?[\d.]+) \| (?:N·m|%) \|$/gm)].map(
  ([, line = '', value = '']) => [line.trim(), value] as const,
);

const readings = (/^ {4}([\d. ]+?) +N·m$/m.exec(page)?.[1] ?? '').split(/ +/).map(Number);
const given = (letter: string): number => Number(new RegExp(`${letter} = ([\\d.]+)`).exec(page)?.[1] ?? Number.NaN);

const answerSchema = z.object({
  points: z.array(z.object({ meanReferenceNm: z.number(), meanDeviationPercent: z.number(), conforms: z.boolean() })),
  budget: z.array(z.object({ source: z.string(), value: z.number(), assumed: z.boolean() })),
  steps: z.array(z.object({ symbol: z.string(), value: z.number() })),
});

const result = calculate('wrench-calibration', {
  type: 'II',
  class: 'A',
  maxTorqueNm: 200,
  resolutionNm: 1,
  points: [{ targetNm: 40, referenceNm: readings }],
  referenceUncertaintyPercent: given('W_md'),
  reproducibility: given('b_rep'),
  outputInterface: given('b_od'),
  driveInterface: given('b_int'),
  leverVariation: given('b_l'),
});
if (!result.ok) throw new Error(JSON.stringify(result.failure));
const answer = answerSchema.parse(result.value);

/** By the letter at the end of the line on the page. */
const ours = (line: string): number | undefined => {
  const letter = line.split(' ').at(-1);
  if (letter === 's') return answer.budget.find(({ source }) => source === 'repeatability')?.value;
  return answer.steps.find(({ symbol }) => symbol === letter)?.value;
};

describe('the budget worked by hand in docs/calibration.md', () => {
  it('has a line for everything that is reckoned', () => {
    expect(readings).toEqual([40.3, 40.5, 40.2, 40.4, 40.4]);
    expect(LINES.map(([line]) => line.split(' ').at(-1)).toSorted((a = '', b = '') => a.localeCompare(b))).toEqual(
      [...answer.steps.map(({ symbol }) => symbol), 's'].toSorted((a, b) => a.localeCompare(b)),
    );
    expect(answer.budget.every(({ assumed }) => !assumed)).toBe(true);
    expect(answer.points[0]?.conforms).toBe(true);
  });

  it.each(LINES)('%s is %s', (line, value) => {
    expect(Math.abs((ours(line) ?? Number.NaN) - Number(value))).toBeLessThanOrEqual(halfUnit(value));
  });

  it('adds up as it is written', () => {
    const squares = (/√\((0\.[\d. +]+)\) \| 0\.8119/.exec(page)?.[1] ?? '').split(' + ').map(Number);
    expect(squares).toHaveLength(7);
    expect(Math.sqrt(squares.reduce((sum, square) => sum + square, 0))).toBeCloseTo(0.8119, 3);
  });
});
