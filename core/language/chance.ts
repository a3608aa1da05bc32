import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { say } from './say.ts';

/** Rarer than this, the tails of a distribution are guessed. */
const MOST = 1_000_000;
const SURE = 0.995;

/**
 * A probability in words: `1 in 12`, `9 in 10`, `less than 1 in 1 000 000`, `almost certain`.
 *
 * @param probability 0 to 1
 */
export function sayChance(probability: number, language: Language): string {
  const show = (count: number) => showNumber(count, language);
  if (probability < 1 / MOST) return say(language, 'chance.hardly', { count: show(MOST) });
  if (probability >= SURE) return say(language, 'chance.sure');
  if (probability < 0.55) return say(language, 'chance.one-in', { count: show(roundCount(1 / probability)) });
  const count = probability < 0.95 ? 10 : 100;
  return say(language, 'chance.in', { part: show(Math.round(probability * count)), count: show(count) });
}

/** Two digits tell as much as anybody can mean. */
const roundCount = (count: number): number => (count < 100 ? Math.round(count) : Number(count.toPrecision(2)));
