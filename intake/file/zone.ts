import { invalid, ok, type Result } from '@clampwright/core/failure';

const DAY_MS = 86_400_000;
/** Offsets are looked up once for each quarter of an hour; clocks change on no finer step. */
const QUARTER_MS = 900_000;
const MOST_KEPT = 10_000;

/** Whether a name is a zone of the IANA time zone database that this machine knows. */
export function isZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}

/** Wall-clock time in milliseconds, as if it were UTC, to UTC milliseconds. */
export type ZoneClock = (wallMs: number) => Result<number>;

/**
 * The clock on the wall of a zone. A time that the clock skips in spring, or shows twice in autumn, is refused:
 * it has no single meaning.
 *
 * @param zone a zone that `isZone` knows
 */
export function zoneClock(zone: string): ZoneClock {
  const offsetMs = offsetsOf(zone);
  const kept = new Map<number, Result<number>>();
  const offsetAtWall = (wallMs: number): Result<number> => {
    const candidates = new Set([offsetMs(wallMs - DAY_MS), offsetMs(wallMs + DAY_MS)]);
    const [first, second] = [...candidates].filter((offset) => offsetMs(wallMs - offset) === offset);
    if (first === undefined) return invalid('time', `The clocks of ${zone} skip this time.`, 'a time that there was');
    if (second !== undefined) {
      return invalid(
        'time',
        `The clocks of ${zone} show this time twice that day.`,
        'a time with its offset, such as +01:00',
      );
    }
    return ok(first);
  };
  return (wallMs) => {
    const quarter = Math.floor(wallMs / QUARTER_MS);
    let offset = kept.get(quarter);
    if (!offset) {
      offset = offsetAtWall(wallMs);
      if (kept.size >= MOST_KEPT) kept.clear();
      kept.set(quarter, offset);
    }
    return offset.ok ? ok(wallMs - offset.value) : offset;
  };
}

/** Offset from UTC at an instant, ms, positive east. */
function offsetsOf(zone: string): (utcMs: number) => number {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    era: 'short',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  return (utcMs) => {
    const part: Record<string, number> = {};
    for (const { type, value } of format.formatToParts(utcMs)) part[type] = Number(value);
    const { year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0 } = part;
    return Date.UTC(year, month - 1, day, hour, minute, second) - Math.floor(utcMs / 1000) * 1000;
  };
}
