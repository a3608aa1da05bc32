import type { Language } from '../quantity/language.ts';
import { say } from './say.ts';

const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;

/**
 * A date written out: `4 March 2026`.
 *
 * @param isoDate `YYYY-MM-DD`, also as the beginning of an instant
 */
export function sayDate(isoDate: string, language: Language): string {
  const [year = '', monthDigits, dayDigits] = isoDate.slice(0, 10).split('-');
  const month = MONTHS.find((candidate) => candidate === Number(monthDigits));
  if (month === undefined) return isoDate;
  const day = Number(dayDigits) === 1 ? say(language, 'date.first-day') : Number(dayDigits);
  return say(language, 'date.day', { day, month: say(language, `month.${month}`), year });
}

/** A month written out: `May 2027`, of an ISO 8601 day or month. */
export function sayMonth(iso: string, language: Language): string {
  const [year = '', digits] = iso.split('-');
  const month = MONTHS.find((candidate) => candidate === Number(digits));
  return month === undefined ? iso : `${say(language, `month.${month}`)} ${year}`;
}

/**
 * An instant written out, always in UTC and saying so: `4 March 2026, 10:11:12 UTC`.
 *
 * @param iso `YYYY-MM-DDTHH:MM:SS.sssZ`
 */
export const sayInstant = (iso: string, language: Language): string =>
  say(language, 'date.instant', { date: sayDate(iso, language), time: iso.slice(11, 19) });
