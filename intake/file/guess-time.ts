import { type TimeMapping, WALL_FORMATS } from './mapping.ts';
import { hasForm } from './time.ts';

export interface GuessedTime {
  readonly time: TimeMapping | undefined;
  readonly doubt: string | undefined;
}

/** Seconds since 1970 of the years 2001 to 2096; elapsed seconds are far below. */
const UNIX_SECONDS = /^[1-3]\d{9}([.,]\d+)?$/;
const SECONDS = /^\d{1,7}([.,]\d+)?$/;
/** Day and month could change places. */
const DAY_OR_MONTH_FIRST = /^(0\d|1[0-2])\/(0\d|1[0-2])\/\d{4}/;

/** How times are written, when every one of them is written so. */
export function guessTime(column: number | string, texts: readonly string[], zone: string, now: string): GuessedTime {
  const format = WALL_FORMATS.find((form) => texts.every((text) => hasForm(form, text)));
  if (format) return { time: { column, format, zone }, doubt: wallDoubt(texts, zone) };
  if (texts.every((text) => UNIX_SECONDS.test(text)))
    return { time: { column, format: 'unix-seconds' }, doubt: undefined };
  if (texts.every((text) => SECONDS.test(text))) {
    return {
      time: { column, format: 'elapsed-seconds', start: now },
      doubt: 'The times count seconds; when the count began is not told.',
    };
  }
  return { time: undefined, doubt: 'The times are written in no form that is known.' };
}

function wallDoubt(texts: readonly string[], zone: string): string | undefined {
  if (texts.every((text) => /(Z|[+-]\d\d(:?\d\d)?)$/.test(text) && text.includes(':'))) return undefined;
  if (texts.every((text) => DAY_OR_MONTH_FIRST.test(text))) return 'The month is taken to come before the day.';
  return `The file does not tell its time zone; ${zone} is taken.`;
}
