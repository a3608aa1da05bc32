import { invalid, ok, type Result } from '@clampwright/core/failure';
import { readDecimal } from './decimal.ts';
import type { Mapping, TimeMapping, WallFormat } from './mapping.ts';
import { zoneClock } from './zone.ts';

/** Reads a cell as an instant, UTC milliseconds, with what the cell has beyond them. */
export type TimeReader = (text: string) => Result<number>;

const FRACTION = String.raw`(?:[.,](?<fraction>\d{1,9}))?`;
const OFFSET = String.raw`(?<offset>Z|[+-]\d\d(?::?\d\d)?)?`;
const CLOCK = String.raw`(?<hour>\d\d):(?<minute>\d\d)`;
const PATTERNS: Readonly<Record<WallFormat, RegExp>> = {
  'iso-8601': new RegExp(
    `^(?<year>\\d{4})-(?<month>\\d\\d)-(?<day>\\d\\d)[T ]${CLOCK}(?::(?<second>\\d\\d)${FRACTION})?${OFFSET}$`,
  ),
  'dd.MM.yyyy HH:mm:ss': new RegExp(
    `^(?<day>\\d\\d)\\.(?<month>\\d\\d)\\.(?<year>\\d{4}) ${CLOCK}:(?<second>\\d\\d)${FRACTION}$`,
  ),
  'MM/dd/yyyy HH:mm:ss': new RegExp(
    `^(?<month>\\d\\d)/(?<day>\\d\\d)/(?<year>\\d{4}) ${CLOCK}:(?<second>\\d\\d)${FRACTION}$`,
  ),
  'yyyy-MM-dd HH:mm': new RegExp(`^(?<year>\\d{4})-(?<month>\\d\\d)-(?<day>\\d\\d) ${CLOCK}$`),
};

/** Whether a text is a time in this form. */
export function hasForm(format: WallFormat, text: string): boolean {
  const groups = PATTERNS[format].exec(text.trim())?.groups;
  return groups !== undefined && wallOf(groups) !== undefined;
}

/** A pull has been taken in this century; anything else is a slip of format or of unit. */
const EARLIEST_MS = Date.UTC(2000, 0, 1);
const LATEST_MS = Date.UTC(2100, 0, 1);

/** A reader for the times of a file. Nothing is guessed: what does not have the form is refused. */
export function timeReader(time: TimeMapping, decimalSign: Mapping['decimalSign']): TimeReader {
  const read = rawReader(time, decimalSign);
  return (text) => {
    const instant = read(text.trim());
    if (!instant.ok || (instant.value >= EARLIEST_MS && instant.value < LATEST_MS)) return instant;
    return invalid('time', `“${text}” is not between the years 2000 and 2100.`, 'another format or unit of time');
  };
}

function rawReader(time: TimeMapping, decimalSign: Mapping['decimalSign']): TimeReader {
  switch (time.format) {
    case 'unix-seconds':
    case 'elapsed-seconds': {
      const startMs = time.format === 'unix-seconds' ? 0 : Date.parse(time.start);
      return (text) => {
        const seconds = readDecimal(text, decimalSign, 'time');
        return seconds.ok ? ok(startMs + 1000 * seconds.value) : seconds;
      };
    }
    case 'iso-8601':
    case 'dd.MM.yyyy HH:mm:ss':
    case 'MM/dd/yyyy HH:mm:ss':
    case 'yyyy-MM-dd HH:mm':
      return wallReader(time.format, time.zone);
  }
}

function wallReader(format: WallFormat, zone: string): TimeReader {
  const clock = zoneClock(zone);
  return (text) => {
    const groups = PATTERNS[format].exec(text)?.groups;
    if (!groups) return invalid('time', `“${text}” is not written as ${format}.`, format);
    const wallMs = wallOf(groups);
    if (wallMs === undefined)
      return invalid('time', `“${text}” is no day or time of the calendar.`, 'a time that there is');
    return groups.offset === undefined ? clock(wallMs) : ok(wallMs - offsetMs(groups.offset));
  };
}

/** Wall-clock milliseconds as if UTC; undefined for the 31st of February and its like. */
function wallOf(groups: Readonly<Record<string, string | undefined>>): number | undefined {
  const [year, month, day] = [Number(groups.year), Number(groups.month), Number(groups.day)];
  const [hour, minute, second] = [Number(groups.hour), Number(groups.minute), Number(groups.second ?? 0)];
  if (hour > 23 || minute > 59 || second > 59) return undefined;
  const wholeMs = Date.UTC(year, month - 1, day, hour, minute, second);
  const wallMs = wholeMs + 1000 * Number(`0.${groups.fraction ?? 0}`);
  const back = new Date(wholeMs);
  return back.getUTCMonth() === month - 1 && back.getUTCDate() === day ? wallMs : undefined;
}

function offsetMs(text: string): number {
  if (text === 'Z') return 0;
  const minutes = 60 * Number(text.slice(1, 3)) + Number(text.slice(3).replace(':', '') || 0);
  return (text.startsWith('-') ? -1 : 1) * minutes * 60_000;
}
