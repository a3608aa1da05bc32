import * as fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { type DueDay, renderCalendar } from './calendar.ts';

fc.configureGlobal({ seed: 5545 });

const STAMP = '2026-03-02T06:00:00.000Z';

const day = (change: Partial<DueDay> = {}): DueDay => ({
  uid: '01991f3c-0000-7000-8000-000000000000',
  day: '2026-04-01',
  summary: 'Calibrate Middle wrench, KH-102',
  description: 'Certificate KH-C-0398; shelf\\2\nSecond line',
  ...change,
});

/** Read back by a general library for calendars. */
function readBack(text: string): readonly DueDay[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      day: event.startDate.toString(),
      summary: event.summary,
      description: event.description,
      ...(event.location ? { location: event.location } : {}),
    };
  });
}

describe('a calendar file', () => {
  it('is read back by ical.js as it was, commas, semicolons, backslashes and lines too', () => {
    const days = [day(), day({ uid: 'b', day: '2028-02-29', location: 'Valley; shelf 3, "left"' })];
    expect(readBack(renderCalendar('Wrenches', days, STAMP))).toEqual(days);
  });

  it('has lines of at most 75 octets that end with CR LF (RFC 5545, 3.1)', () => {
    const long = `Drehmomentschlüssel für die Seilbahn – ${'größer ü 𝛼 '.repeat(30)}`;
    const text = renderCalendar('Schlüssel', [day({ summary: long })], STAMP);
    const lines = text.split('\r\n');
    expect(lines.at(-1)).toBe('');
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(readBack(text)[0]?.summary).toBe(long);
  });

  it('says a day as a date, without a time that would move it in another zone (RFC 5545, 3.3.4)', () => {
    expect(renderCalendar('x', [day()], STAMP)).toContain('\r\nDTSTART;VALUE=DATE:20260401\r\n');
    expect(renderCalendar('x', [day()], STAMP)).toContain('\r\nDTSTAMP:20260302T060000Z\r\n');
  });

  it('gives back any text without control characters', () => {
    const text = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }).filter((one) => !/\p{Cc}/u.test(one));
    fc.assert(
      fc.property(text, text, (summary, description) => {
        const [read] = readBack(renderCalendar('x', [day({ summary, description })], STAMP));
        expect([read?.summary, read?.description]).toEqual([summary, description]);
      }),
    );
  });
});
