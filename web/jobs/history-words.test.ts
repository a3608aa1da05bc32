import { done, openedSample, pullOf, taking } from '@clampwright/core/record/testing';
import { expect, it } from 'vitest';
import { historyWords } from './history-words.ts';

const job = done(done(openedSample(), taking), pullOf(1, 92.4));

it('tells a pull with its place and its figure in the unit of the work', () => {
  const words = historyWords(job.entries.at(-1)!, job.entries, 'en');
  expect(words).toContain('position 1');
  expect(words).toContain('92.4\u00a0N·m');
});

it('tells figures with the decimal sign of the language', () => {
  expect(historyWords(job.entries.at(-1)!, job.entries, 'de')).toContain('92,4\u00a0N·m');
});

it('names the wrench that was taken', () => {
  expect(historyWords(job.entries[1]!, job.entries, 'en')).toContain('Wrench');
});
