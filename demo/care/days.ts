const DAY_MS = 86_400_000;

/** The day so many days before a moment, ISO 8601. */
export const dayBefore = (now: Date, days: number): string =>
  new Date(now.getTime() - days * DAY_MS).toISOString().slice(0, 10);

/** An instant at a time of that day, such as `07:30`. */
export const instantBefore = (now: Date, days: number, time: string): string =>
  `${dayBefore(now, days)}T${time}:00.000Z`;
