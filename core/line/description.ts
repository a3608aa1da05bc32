import { z } from 'zod';

export const LINE_DELIMITERS = [' ', ',', ';', '\t', '|', ':', '/'] as const;
export const LINE_CHECKS = ['crc-16', 'xor-8', 'sum-8'] as const;
export type LineCheck = (typeof LINE_CHECKS)[number];

const printable = z.string().regex(/^[\x21-\x7e]{1,40}$/, '1 to 40 printable characters without a blank');

/** What one field of a line means. */
export const lineFieldSchema = z.discriminatedUnion('means', [
  /** Always this text: by it lines of one kind are known from those of another. */
  z.strictObject({ means: z.literal('mark'), text: printable }),
  z.strictObject({ means: z.literal('torque') }),
  /** Replaces the unit of the description, line by line. */
  z.strictObject({ means: z.literal('torque-unit') }),
  /** Empty or a hyphen: this pull has none. */
  z.strictObject({ means: z.literal('angle') }),
  /** Fastest turning, degrees a second; empty or a hyphen: not told. */
  z.strictObject({ means: z.literal('fastest') }),
  /** Time since the pull began. */
  z.strictObject({ means: z.literal('elapsed'), unit: z.enum(['s', 'ms']) }),
  /** The wrench's clock. */
  z.strictObject({ means: z.literal('time'), written: z.enum(['iso-8601', 'unix-seconds']) }),
  /** Running number of the pull. */
  z.strictObject({ means: z.literal('number') }),
  /** How many samples went before the result. */
  z.strictObject({ means: z.literal('sample-count') }),
  z.strictObject({ means: z.literal('position') }),
  /** Serial number of the wrench. */
  z.strictObject({ means: z.literal('serial') }),
  /** A UUID that the wrench gave the pull. */
  z.strictObject({ means: z.literal('identity') }),
  /** Hexadecimal digits, worked out from all that stands before the delimiter ahead of them. */
  z.strictObject({ means: z.literal('check'), method: z.enum(LINE_CHECKS) }),
  z.strictObject({ means: z.literal('passed-over') }),
]);
export type LineField = z.infer<typeof lineFieldSchema>;
export type FieldMeaning = LineField['means'];

/** One kind of line that the wrench sends. `other`: known, and of no meaning here. */
export const lineKindSchema = z.strictObject({
  says: z.enum(['sample', 'result', 'other']),
  fields: z.array(lineFieldSchema).min(1).max(40),
});
export type LineKind = z.infer<typeof lineKindSchema>;

/** What marks the end of a pull. */
const endOfPullSchema = z.discriminatedUnion('by', [
  /** A result line; it takes the samples before it along. */
  z.strictObject({ by: z.literal('result') }),
  /** So many samples in succession below a torque, in the unit of the description, once it was reached. */
  z.strictObject({
    by: z.literal('fall'),
    below: z.number().positive(),
    samples: z.number().int().min(1).max(1000),
  }),
  /** Nothing came for so long, in seconds. */
  z.strictObject({ by: z.literal('silence'), seconds: z.number().min(0.1).max(60) }),
]);

/** How the lines of a wrench are read: written once, kept by name, carried from workshop to workshop as a file. */
export const lineDescriptionSchema = z
  .strictObject({
    name: z.string().trim().min(1).max(100),
    delimiter: z.enum(LINE_DELIMITERS),
    decimalSign: z.enum(['point', 'comma']),
    torqueUnit: z.enum(['N·m', 'cN·m', 'dN·m', 'kN·m', 'lbf·ft', 'lbf·in', 'ozf·in', 'kgf·m', 'kgf·cm']),
    angleUnit: z.enum(['deg', 'rad', 'turn']).default('deg'),
    lines: z.array(lineKindSchema).min(1).max(8),
    endOfPull: endOfPullSchema,
    /** Of a stream of samples that tell no time. */
    samplesPerSecond: z.number().min(0.1).max(100_000).optional(),
  })
  .superRefine((description, context) => {
    for (const [path, message] of contradictions(description)) context.addIssue({ code: 'custom', path, message });
  });
export type LineDescription = z.infer<typeof lineDescriptionSchema>;

type Contradiction = readonly [path: (string | number)[], message: string];

function contradictions(description: z.input<typeof lineDescriptionSchema>): readonly Contradiction[] {
  const { lines, endOfPull, delimiter, decimalSign, samplesPerSecond } = description;
  const found: Contradiction[] = lines.flatMap((line, at) => contradictionsOf(line, at));
  const has = (says: LineKind['says']) => lines.some((line) => line.says === says);
  if (endOfPull.by === 'result' && !has('result')) found.push([['lines'], 'a line that tells the result']);
  if (endOfPull.by !== 'result' && !has('sample')) found.push([['lines'], 'a line that tells a sample']);
  if (endOfPull.by !== 'result' && has('result'))
    found.push([['endOfPull'], 'by the result, as there is a line for it']);
  if (decimalSign === 'comma' && delimiter === ',') found.push([['delimiter'], 'another one than the decimal sign']);
  const untimed = lines.some((line) => line.says === 'sample' && !means(line, 'elapsed'));
  if (untimed && samplesPerSecond === undefined)
    found.push([['samplesPerSecond'], 'how many samples come in a second']);
  return found;
}

function contradictionsOf(line: LineKind, at: number): readonly Contradiction[] {
  const found: Contradiction[] = [];
  if (line.says !== 'other' && !means(line, 'torque')) found.push([['lines', at, 'fields'], 'a field with the torque']);
  const once = line.fields.filter(({ means: meaning }) => meaning !== 'mark' && meaning !== 'passed-over');
  if (new Set(once.map(({ means: meaning }) => meaning)).size < once.length)
    found.push([['lines', at, 'fields'], 'each meaning once']);
  const check = line.fields.findIndex(({ means: meaning }) => meaning === 'check');
  if (check >= 0 && check !== line.fields.length - 1)
    found.push([['lines', at, 'fields'], 'the check as the last field']);
  return found;
}

const means = (line: LineKind, meaning: FieldMeaning): boolean => line.fields.some((field) => field.means === meaning);
