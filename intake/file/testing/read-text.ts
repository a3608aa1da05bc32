import type { IncomingPull } from '@clampwright/core/record';
import type { FileContext } from '../context.ts';
import { type Encoding, type Mapping, mappingSchema, type WrittenMapping } from '../mapping.ts';
import type { Outcome } from '../outcome.ts';
import { readPulls } from '../read.ts';

export const CONTEXT: FileContext = {
  jobId: '01973c3e-6a10-7000-8000-00000000000a',
  jointRef: 'J1',
  readAt: '2026-05-04T09:00:00.000Z',
  fileName: 'hub.csv',
};

const PLAIN: WrittenMapping = {
  name: 'plain',
  decimalSign: 'point',
  headerRow: true,
  position: 'pos',
  torque: 'torque',
  torqueUnit: { unit: 'N·m' },
  angle: 'angle',
};

/** A mapping of columns `pos`, `torque` and `angle`, but for the changes. */
export const mapping = (changes: Partial<WrittenMapping> = {}): Mapping =>
  mappingSchema.parse({ ...PLAIN, ...changes });

async function* inPieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

/** Reads a file that arrives in pieces of so many bytes. */
export async function outcomesOf(
  bytes: Uint8Array,
  how: Mapping,
  context: FileContext = CONTEXT,
  size = 7,
): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = [];
  for await (const outcome of readPulls(inPieces(bytes, size), how, context)) outcomes.push(outcome);
  return outcomes;
}

export const readText = (text: string, changes?: Partial<WrittenMapping>, context?: FileContext) =>
  outcomesOf(new TextEncoder().encode(text), mapping(changes), context);

export const pullsOf = (outcomes: readonly Outcome[]): readonly IncomingPull[] =>
  outcomes.flatMap((outcome) => (outcome.kind === 'pull' ? [outcome.pull] : []));

/** Line and torque of each pull; line, field and message of each refusal. */
export const briefly = (outcomes: readonly Outcome[]): readonly (readonly (string | number)[])[] =>
  outcomes.map((outcome) =>
    outcome.kind === 'pull'
      ? [outcome.line, outcome.pull.shownTorqueNm]
      : [outcome.line, outcome.field, outcome.message],
  );

/** A text in each encoding that is read. */
export const ENCODED: Readonly<Record<Encoding, (text: string) => Uint8Array>> = {
  'utf-8': (text) => new TextEncoder().encode(text),
  'utf-16le': (text) => Uint8Array.from(Buffer.from(text, 'utf16le')),
  'utf-16be': (text) => Uint8Array.from(Buffer.from(text, 'utf16le').swap16()),
  // All letters used in tests stand alike in ISO 8859-1 and Windows-1252.
  'windows-1252': (text) => Uint8Array.from(Buffer.from(text, 'latin1')),
};
