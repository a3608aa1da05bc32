import type { Trace } from '@clampwright/core/record';
import { type ResultLine, readLine, type SampleLine } from './line.ts';

/** A pull that its result line has closed. */
export interface SerialPull extends Omit<ResultLine, 'kind'> {
  readonly kind: 'pull';
  /** Only when every sample came. */
  readonly trace: Trace | undefined;
  readonly samplesLost: number;
}

/** Lines one after the other that could not be read, told once. */
export interface UnreadableLines {
  readonly kind: 'unreadable';
  readonly lines: number;
  /** What is the matter with the first of them. */
  readonly message: string;
  /** Its beginning, anything unprintable replaced. */
  readonly excerpt: string;
}

export type LineEvent = SampleLine | SerialPull | UnreadableLines;

interface OpenPull {
  readonly number: number;
  readonly samples: readonly SampleLine[];
}

/** What the reader remembers between two chunks; bounded in size whatever comes in. */
export interface ReaderState {
  readonly tail: string;
  /** In a line that is too long; the rest of it is thrown away. */
  readonly skipping: boolean;
  readonly open: OpenPull | undefined;
}

export const READER_START: ReaderState = { tail: '', skipping: false, open: undefined };

/** Longest line that is read, characters; the longest that a wrench sends is about 250. */
export const LONGEST_LINE = 400;
/** Most samples of one pull; the same bound as a kept trace has. */
const MOST_SAMPLES = 200_000;

/** What one chunk adds to; never leaves `readLines`. */
interface Intake {
  readonly events: LineEvent[];
  open: { readonly number: number; readonly samples: SampleLine[] } | undefined;
}

/**
 * Takes the next bytes from the wrench. Pure: the same state and chunk give the same events.
 *
 * Line ends are LF, CR LF or CR. Rubbish, cut lines, binary bytes and endless lines become `unreadable`;
 * the next good line is read as if nothing had been.
 */
export function readLines(state: ReaderState, chunk: Uint8Array): { state: ReaderState; events: readonly LineEvent[] } {
  const intake: Intake = { events: [], open: state.open && { ...state.open, samples: [...state.open.samples] } };
  const [first = '', ...rest] = latin1(chunk).split(/[\r\n]/);
  let tail = state.skipping ? '' : state.tail + first;
  let skipping = state.skipping;
  for (const next of rest) {
    if (!skipping && tail !== '') takeLine(intake, tail);
    skipping = false;
    tail = next;
  }
  if (!skipping && tail.length > LONGEST_LINE) {
    tellUnreadable(intake.events, TOO_LONG, tail);
    skipping = true;
  }
  return { state: { tail: skipping ? '' : tail, skipping, open: intake.open }, events: intake.events };
}

const TOO_LONG = `the line is longer than ${LONGEST_LINE} characters`;
const latin1 = (chunk: Uint8Array): string =>
  Buffer.from(chunk.buffer, chunk.byteOffset, chunk.byteLength).toString('latin1');

function takeLine(intake: Intake, text: string): void {
  if (text.length > LONGEST_LINE) return tellUnreadable(intake.events, TOO_LONG, text);
  const line = readLine(text);
  if (line.kind === 'wrong') return tellUnreadable(intake.events, line.wrong, text);
  if (intake.open && intake.open.number !== line.pull) {
    tellUnreadable(intake.events, `the result of pull ${intake.open.number} did not come`, text);
    intake.open = undefined;
  }
  if (line.kind === 'result') return closePull(intake, line);
  intake.open ??= { number: line.pull, samples: [] };
  if (intake.open.samples.length < MOST_SAMPLES) intake.open.samples.push(line);
  intake.events.push(line);
}

function closePull(intake: Intake, result: ResultLine): void {
  const samples = intake.open?.samples ?? [];
  const whole = samples.length === result.samples && samples.length >= 2;
  intake.events.push({
    ...result,
    kind: 'pull',
    trace: whole ? traceOf(samples) : undefined,
    samplesLost: Math.max(0, result.samples - samples.length),
  });
  intake.open = undefined;
}

const traceOf = (samples: readonly SampleLine[]): Trace => ({
  timeS: samples.map((sample) => sample.timeS),
  angleDeg: samples.map((sample) => sample.angleDeg),
  torqueNm: samples.map((sample) => sample.torqueNm),
});

/** Lines that follow an unreadable one and are no better are counted with it, so that a flood stays one event a chunk. */
function tellUnreadable(events: LineEvent[], message: string, text: string): void {
  const last = events.at(-1);
  if (last?.kind === 'unreadable') {
    events[events.length - 1] = { ...last, lines: last.lines + 1 };
    return;
  }
  events.push({ kind: 'unreadable', lines: 1, message, excerpt: text.slice(0, 60).replaceAll(/[^\x20-\x7e]/g, '·') });
}
