/** A day on which something is due. */
export interface DueDay {
  /** Stays the same however often the file is made, so that a calendar takes the newer in place of the older. */
  readonly uid: string;
  /** ISO 8601 day. */
  readonly day: string;
  readonly summary: string;
  readonly description: string;
  readonly location?: string | undefined;
}

/**
 * Days as a calendar file, each with a reminder two weeks ahead.
 *
 * @param stampedAt instant at which the file is made, ISO 8601
 * @source RFC 5545: 3.1 folding, 3.3.11 escaping, 3.6.1 event, 3.6.6 alarm, 3.8.2.7 a day does not make anybody busy
 */
export function renderCalendar(name: string, days: readonly DueDay[], stampedAt: string): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Clampwright//Wrench care//EN',
    'CALSCALE:GREGORIAN',
    `X-WR-CALNAME:${escaped(name)}`,
    ...days.flatMap((day) => event(day, stampedAt)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

const event = ({ uid, day, summary, description, location }: DueDay, stampedAt: string): readonly string[] => [
  'BEGIN:VEVENT',
  `UID:${escaped(uid)}`,
  `DTSTAMP:${stampedAt.replaceAll(/[-:]|\.\d+/g, '')}`,
  `DTSTART;VALUE=DATE:${day.replaceAll('-', '')}`,
  `SUMMARY:${escaped(summary)}`,
  `DESCRIPTION:${escaped(description)}`,
  ...(location === undefined ? [] : [`LOCATION:${escaped(location)}`]),
  'TRANSP:TRANSPARENT',
  'BEGIN:VALARM',
  'ACTION:DISPLAY',
  `DESCRIPTION:${escaped(summary)}`,
  'TRIGGER:-P14D',
  'END:VALARM',
  'END:VEVENT',
];

/** Control characters have no place in a text and no escape (RFC 5545, 3.3.11); a tab is a blank. */
const escaped = (text: string): string =>
  text
    .replaceAll(/\r\n?/g, '\n')
    // oxlint-disable-next-line no-control-regex -- they are what is meant
    .replaceAll(/[\u0000-\u0009\u000b-\u001f\u007f]/g, ' ')
    .replaceAll(/[\\;,]/g, (sign) => `\\${sign}`)
    .replaceAll('\n', '\\n');

/** Octets of a line without its break. */
const LONGEST_OCTETS = 75;

/** Breaks a line between characters, never inside of one, so that each piece can be read as UTF-8. */
function folded(line: string): string {
  const pieces: string[] = [];
  let piece = '';
  let octets = 0;
  for (const character of line) {
    const size = Buffer.byteLength(character);
    if (octets + size > LONGEST_OCTETS) {
      pieces.push(piece);
      // the blank that begins what goes on counts as well
      [piece, octets] = ['', 1];
    }
    piece += character;
    octets += size;
  }
  return [...pieces, piece].join('\r\n ');
}
