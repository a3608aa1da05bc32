import { convertTorque } from '../quantity/convert.ts';
import { sha256Hex } from '../record/digest.ts';
import { uuidV8 } from '../record/identity.ts';
import type { LineDescription } from './description.ts';
import { compileLines, type LineFault, type LineSaid } from './read-line.ts';
import { bareOf, type Stretch, stretchOf } from './stretch.ts';
import type { ToldPull } from './told-pull.ts';

/** A sample of a pull that goes on, for the screens. */
export interface LineSample {
  readonly kind: 'sample';
  /** Counts the pulls of this reader. */
  readonly pull: number;
  readonly elapsedS: number;
  readonly torqueNm: number;
  readonly angleDeg: number | undefined;
}

/** A pull that came to its end. */
export interface LinePull {
  readonly kind: 'pull';
  readonly pull: ToldPull;
  /** The line that ended it. */
  readonly raw: string;
}

/** Lines one after the other of which nothing could be made, told once. */
export interface UnreadableLines {
  readonly kind: 'unreadable';
  readonly lines: number;
  /** What is the matter with the first of them. */
  readonly fault: LineFault;
  /** The last of them, anything unprintable replaced. */
  readonly raw: string;
}

export type LineEvent = LineSample | LinePull | UnreadableLines;

/** Reads what a wrench sends; bounded in memory whatever comes in. */
export interface LineReader {
  /** The next piece, each byte a character (ISO 8859-1), however the lines are cut into pieces. */
  readonly take: (piece: string) => readonly LineEvent[];
  /** Nothing came for as long as the description says: the pull in hand is over. */
  readonly fallSilent: () => readonly LineEvent[];
  /** The connection broke: a pull in hand that its end did not reach is no pull. */
  readonly breakOff: () => readonly LineEvent[];
}

/** Longest line that is read, characters. */
export const LONGEST_LINE = 400;

/**
 * Makes a reader after a description. Line ends are LF, CR LF or CR.
 *
 * @param origin names the device, so that the same line of two of them is two pulls
 */
export function lineReader(description: LineDescription, origin = ''): LineReader {
  const read = compileLines(description);
  const { endOfPull } = description;
  const thresholdNm = thresholdOf(description);
  let tail = '';
  let isSkipping = false;
  let open: Stretch | undefined;
  let pulls = 0;
  let last = '';

  const takeLine = (text: string, events: LineEvent[]): void => {
    if (text.length > LONGEST_LINE) return tellUnreadable(events, { code: 'too-long' }, text);
    const line = read(text);
    if (!line.ok) return tellUnreadable(events, line.fault, text);
    if (line.said.says === 'sample') takeSample(line.said, text, events);
    if (line.said.says === 'result') takeResult(line.said, text, events);
  };

  const dropOther = (number: number | undefined, text: string, events: LineEvent[]): void => {
    if (!open || number === undefined || open.number === number) return;
    open = undefined;
    tellUnreadable(events, { code: 'no-result' }, text);
  };

  const takeSample = (said: LineSaid, text: string, events: LineEvent[]): void => {
    dropOther(said.number, text, events);
    const torqueNm = said.torque?.value ?? 0;
    if (!open) {
      if (endOfPull.by === 'fall' && torqueNm < thresholdNm) return;
      pulls += 1;
      open = stretchOf(said.number, thresholdNm);
    }
    const elapsedS = open.add(said, description.samplesPerSecond);
    events.push({ kind: 'sample', pull: pulls, elapsedS, torqueNm, angleDeg: said.angle?.value });
    if (endOfPull.by === 'fall' && open.below() >= endOfPull.samples) endStretch(text, events);
  };

  const takeResult = (said: LineSaid, text: string, events: LineEvent[]): void => {
    dropOther(said.number, text, events);
    const isAgain = said.number !== undefined && text === last;
    last = text;
    const pull = open ? open.closedBy(said) : bareOf(said);
    open = undefined;
    if (!isAgain)
      events.push({ kind: 'pull', pull: { ...pull, id: identityOf(said, text, origin) }, raw: rawOf(text) });
  };

  const endStretch = (text: string, events: LineEvent[]): void => {
    const pull = open?.whole();
    open = undefined;
    if (pull) events.push({ kind: 'pull', pull, raw: rawOf(text) });
  };

  return {
    take: (piece) => {
      const events: LineEvent[] = [];
      const [first = '', ...rest] = piece.split(/[\r\n]/);
      if (!isSkipping) tail += first;
      for (const next of rest) {
        if (!isSkipping && tail !== '') takeLine(tail, events);
        isSkipping = false;
        tail = next;
      }
      if (!isSkipping && tail.length > LONGEST_LINE) {
        tellUnreadable(events, { code: 'too-long' }, tail);
        isSkipping = true;
      }
      if (isSkipping) tail = '';
      return events;
    },
    fallSilent: () => {
      const events: LineEvent[] = [];
      if (open && endOfPull.by === 'silence') endStretch('', events);
      return events;
    },
    breakOff: () => {
      const events: LineEvent[] = [];
      if (open || tail !== '') tellUnreadable(events, { code: 'cut-off' }, tail);
      open = undefined;
      tail = '';
      isSkipping = false;
      return events;
    },
  };
}

/** The torque below which a stream has ended, N·m; none where it ends otherwise. */
function thresholdOf({ endOfPull, torqueUnit }: LineDescription): number {
  return endOfPull.by === 'fall' ? convertTorque(endOfPull.below, torqueUnit, 'N·m') : 0;
}

/** A pull with an identity or a clock of its own is the same when it is sent again; without one nobody can know. */
function identityOf({ identity, takenAt }: LineSaid, text: string, origin: string): string | undefined {
  if (identity !== undefined || takenAt === undefined) return identity;
  return uuidV8(sha256Hex(JSON.stringify([origin, text])));
}

const rawOf = (text: string): string => text.slice(0, LONGEST_LINE).replaceAll(/[^\x20-\x7e]/g, '·');

/** Lines that follow an unreadable one and are no better are counted with it, so that a flood stays one event a piece. */
function tellUnreadable(events: LineEvent[], fault: LineFault, text: string): void {
  const last = events.at(-1);
  if (last?.kind === 'unreadable') events[events.length - 1] = { ...last, lines: last.lines + 1, raw: rawOf(text) };
  else events.push({ kind: 'unreadable', lines: 1, fault, raw: rawOf(text) });
}
