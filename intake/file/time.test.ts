import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TimeMapping } from './mapping.ts';
import { timeReader } from './time.ts';
import { isZone, zoneClock } from './zone.ts';

const read = (
  text: string,
  time: Partial<TimeMapping> & Pick<TimeMapping, 'format'>,
  sign: 'comma' | 'point' = 'point',
) => {
  const whole = { column: 1, zone: 'Europe/Zurich', start: '2026-05-04T09:00:00.000Z', ...time };
  const instant = timeReader(timeMappingOf(whole), sign)(text);
  return instant.ok
    ? new Date(instant.value).toISOString()
    : instant.failure.kind === 'invalid' && instant.failure.message;
};

function timeMappingOf({
  format,
  column,
  zone,
  start,
}: {
  format: TimeMapping['format'];
  column: number | string;
  zone: string;
  start: string;
}): TimeMapping {
  if (format === 'elapsed-seconds') return { format, column, start };
  return format === 'unix-seconds' ? { format, column } : { format, column, zone };
}

describe('timeReader', () => {
  it.each([
    ['2026-05-04T09:12:33Z', 'iso-8601', '2026-05-04T09:12:33.000Z'],
    ['2026-05-04T09:12:33.125+02:00', 'iso-8601', '2026-05-04T07:12:33.125Z'],
    ['2026-05-04 09:12:33,5-0330', 'iso-8601', '2026-05-04T12:42:33.500Z'],
    ['2026-05-04T09:12', 'iso-8601', '2026-05-04T07:12:00.000Z'],
    ['04.05.2026 09:12:33', 'dd.MM.yyyy HH:mm:ss', '2026-05-04T07:12:33.000Z'],
    ['05/04/2026 09:12:33', 'MM/dd/yyyy HH:mm:ss', '2026-05-04T07:12:33.000Z'],
    ['2026-05-04 09:12', 'yyyy-MM-dd HH:mm', '2026-05-04T07:12:00.000Z'],
    ['1777885953.5', 'unix-seconds', '2026-05-04T09:12:33.500Z'],
    ['753.25', 'elapsed-seconds', '2026-05-04T09:12:33.250Z'],
    [' 2026-01-04 09:12 ', 'yyyy-MM-dd HH:mm', '2026-01-04T08:12:00.000Z'],
  ] as const)('reads “%s” as %s', (text, format, instant) => {
    expect(read(text, { format })).toBe(instant);
  });

  it('reads seconds with the decimal sign of the file', () => {
    expect(read('753,25', { format: 'elapsed-seconds' }, 'comma')).toBe('2026-05-04T09:12:33.250Z');
  });

  it.each([
    ['04.05.2026', 'dd.MM.yyyy HH:mm:ss', 'is not written as'],
    ['4.5.2026 9:12:33', 'dd.MM.yyyy HH:mm:ss', 'is not written as'],
    ['25/03/2026 09:12:33', 'MM/dd/yyyy HH:mm:ss', 'no day or time of the calendar'],
    ['2026-02-30T09:12:33Z', 'iso-8601', 'no day or time of the calendar'],
    ['2026-05-04T24:00:00Z', 'iso-8601', 'no day or time of the calendar'],
    ['1777885953500', 'unix-seconds', 'between the years 2000 and 2100'],
    ['1926-05-04 09:12', 'yyyy-MM-dd HH:mm', 'between the years 2000 and 2100'],
    ['', 'iso-8601', 'is not written as'],
  ] as const)('refuses “%s” as %s', (text, format, why) => {
    expect(read(text, { format })).toContain(why);
  });

  // Directive 2000/84/EC: clocks change on the last Sunday of March and of October at 01:00 UTC (from memory).
  it('refuses an hour that the clocks skip', () => {
    expect(read('29.03.2026 02:30:00', { format: 'dd.MM.yyyy HH:mm:ss' })).toContain('skip');
  });

  it('refuses an hour that the clocks show twice, unless its offset is told', () => {
    expect(read('2026-10-25T02:30:00', { format: 'iso-8601' })).toContain('twice');
    expect(read('2026-10-25T02:30:00+01:00', { format: 'iso-8601' })).toBe('2026-10-25T01:30:00.000Z');
  });

  it('takes the hours beside the change', () => {
    expect(read('29.03.2026 01:59:59', { format: 'dd.MM.yyyy HH:mm:ss' })).toBe('2026-03-29T00:59:59.000Z');
    expect(read('29.03.2026 03:00:00', { format: 'dd.MM.yyyy HH:mm:ss' })).toBe('2026-03-29T01:00:00.000Z');
    expect(read('25.10.2026 03:00:00', { format: 'dd.MM.yyyy HH:mm:ss' })).toBe('2026-10-25T02:00:00.000Z');
  });
});

describe('zoneClock', () => {
  const zones = [
    'UTC',
    'Europe/Zurich',
    'America/St_Johns',
    'Asia/Kathmandu',
    'Australia/Lord_Howe',
    'Pacific/Apia',
    'America/Sao_Paulo',
  ];
  const wallOf = (zone: string, utcMs: number) => {
    // sv-SE writes wall-clock time as ISO 8601 does.
    const text = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'medium' }).format(
      utcMs,
    );
    return Date.parse(`${text.replace(' ', 'T')}Z`);
  };

  it('comes back from the wall to the instant, or says that the wall tells two', () => {
    const instant = fc
      .integer({ min: Date.UTC(2000, 0, 2) / 1000, max: Date.UTC(2030, 0, 1) / 1000 })
      .map((s) => 1000 * s);
    fc.assert(
      fc.property(fc.constantFrom(...zones), instant, (zone, utcMs) => {
        const back = zoneClock(zone)(wallOf(zone, utcMs));
        expect(back.ok ? back.value : JSON.stringify(back.failure)).toSatisfy(
          (value) => value === utcMs || String(value).includes('twice'),
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('isZone', () => {
  it('knows the zones of the IANA database and no others', () => {
    expect([isZone('Europe/Zurich'), isZone('UTC'), isZone('Europe/Kestrelhorn'), isZone('')]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});
