import { z } from 'zod';

/** What is the matter with what a device sent last. */
const deviceFaultSchema = z.discriminatedUnion('kind', [
  /** `code` and `cell` of a line that its description does not fit. */
  z.strictObject({ kind: z.literal('line'), code: z.string(), cell: z.number().int().optional() }),
  z.strictObject({ kind: z.literal('pull'), message: z.string() }),
  z.strictObject({ kind: z.literal('other'), message: z.string() }),
]);

const count = z.number().int().min(0);
const instant = z.iso.datetime({ precision: 3 });

/** What a device has told since it was set up; kept when the server is started anew. */
export const deviceCountsSchema = z.strictObject({
  since: instant,
  taken: count,
  /** Told before and known again. */
  already: count,
  refused: count,
  /** Lines, results or files of which nothing could be made. */
  unreadable: count,
  /** How often a connection came back that was lost. */
  reconnections: count,
  /** What it sent last, the last one at the end. */
  raw: z.array(z.string()),
  lastFault: deviceFaultSchema.nullable(),
  lastSeenAt: instant.nullable(),
});
export type DeviceCounts = Readonly<z.infer<typeof deviceCountsSchema>>;
