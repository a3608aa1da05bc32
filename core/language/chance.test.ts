import { describe, expect, it } from 'vitest';
import { sayChance } from './chance.ts';
import { sayReason } from './reasons.ts';

describe('a chance in words', () => {
  it.each([
    [0.085, '1 in 12'],
    [0.5, '1 in 2'],
    [0.3, '1 in 3'],
    [0.0123, '1 in 81'],
    [0.00123, '1 in 810'],
    [0.74, '7 in 10'],
    [0.97, '97 in 100'],
    [0.999, 'almost certain'],
    [1e-9, 'less than 1 in 1\u202f000\u202f000'],
    [0, 'less than 1 in 1\u202f000\u202f000'],
  ])('%d is %s', (probability, words) => {
    expect(sayChance(probability, 'en')).toBe(words);
  });

  it.each([
    ['en', 'About 1 in 12 that it lies above.'],
    ['de', 'Mit einer Wahrscheinlichkeit von etwa 1 von 12 liegt es darüber.'],
    ['fr', 'Environ 1 chance sur 12 qu’il soit au-dessus.'],
    ['es', 'Alrededor de 1 entre 12 de que esté por encima.'],
  ] as const)('stands behind a doubtful verdict in %s', (language, sentence) => {
    const reason = {
      code: 'inside-guard-band',
      quantity: 'torque',
      value: 104,
      limit: 105,
      probability: 0.085,
    } as const;
    expect(sayReason(reason, language, 'N·m')).toMatch(new RegExp(`\\. ${sentence}$`));
  });
});
