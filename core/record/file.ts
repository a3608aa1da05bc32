import { z } from 'zod';
import { traceSchema } from './command.ts';
import { entrySchema, instantSchema } from './entry.ts';

/** The signature over the head of a closed job's chain. */
export const sealSchema = z.strictObject({
  algorithm: z.literal('Ed25519'),
  /** 32 bytes, hexadecimal. */
  publicKey: z.string().regex(/^[0-9a-f]{64}$/),
  signedAt: instantSchema,
  /** 64 bytes, hexadecimal, over the canonical form of {format, version, jobId, entryCount, headHash, publicKey, signedAt}. */
  signature: z.string().regex(/^[0-9a-f]{128}$/),
});
export type Seal = z.infer<typeof sealSchema>;

/**
 * An exported record: canonical JSON (RFC 8785) and one line feed. `seal` is missing while the job is not closed.
 * `fingerprints` hold a short digest of every leaf of each entry, so that a change can be told to the field.
 */
export const recordFileSchema = z.strictObject({
  format: z.literal('clampwright-record'),
  version: z.literal(1),
  entries: z.array(entrySchema).min(1),
  fingerprints: z.array(z.record(z.string(), z.string().regex(/^[0-9a-f]{8}$/))),
  /** By pull id; each must match the digest in its pull. */
  traces: z.record(z.uuid(), traceSchema),
  seal: sealSchema.optional(),
});
export type RecordFile = z.infer<typeof recordFileSchema>;
