import { promisify } from 'node:util';
import { deflateRaw, inflateRaw } from 'node:zlib';
import { failed, ok, type Result } from '@clampwright/core/failure';
import { type Trace, traceSchema } from '@clampwright/core/record';
import { decodeSamples, encodeSamples } from '@clampwright/core/trace';
import type { Database } from '../engine.ts';

/** Traces by the identity of their pull. */
export type Traces = Readonly<Record<string, Trace>>;

/** The same as they are stored. */
export type PackedTraces = ReadonlyMap<string, Uint8Array>;

const compress = promisify(deflateRaw);
const expand = promisify(inflateRaw);

/**
 * First byte: how the rest is written; both forms keep every digit of every sample, deflated (RFC 1951).
 * 1: JSON, as traces were kept at first. 2: differences of the device's steps, a quarter of it and less.
 */
const DEFLATED_JSON = 1;
const DEFLATED_DIFFERENCES = 2;

/** Samples of a trace in the form in which they are stored. */
export async function pack(trace: Trace): Promise<Uint8Array> {
  return Buffer.concat([Buffer.of(DEFLATED_DIFFERENCES), await compress(encodeSamples(trace))]);
}

/**
 * Packs traces before a transaction begins: packing waits for another thread, and whoever waits while they hold the
 * write lock keeps everybody waiting.
 */
export async function packAll(traces: readonly (readonly [string, Trace])[]): Promise<PackedTraces> {
  return new Map(await Promise.all(traces.map(async ([id, trace]) => [id, await pack(trace)] as const)));
}

/** Reads what is stored, in whichever form. */
export async function unpack(samples: Uint8Array): Promise<Trace> {
  const [form] = samples;
  const bytes = samples.subarray(1);
  switch (form) {
    case DEFLATED_JSON:
      return traceSchema.parse(JSON.parse((await expand(bytes)).toString('utf8')));
    case DEFLATED_DIFFERENCES: {
      const read = decodeSamples(await expand(bytes));
      if (!read.ok) throw new Error(`a trace that cannot be read: ${JSON.stringify(read.failure)}`);
      return traceSchema.parse(read.value);
    }
    default:
      throw new Error(`a trace in form ${form}, which this version does not know`);
  }
}

export async function readTrace(db: Database, pullId: string): Promise<Result<Trace>> {
  const row = await db.selectFrom('traces').select('samples').where('pull_id', '=', pullId).executeTakeFirst();
  return row ? ok(await unpack(row.samples)) : failed({ kind: 'not-found', what: 'trace', id: pullId });
}
