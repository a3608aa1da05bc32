import { promisify } from 'node:util';
import { deflateRaw, inflateRaw } from 'node:zlib';
import { failed, ok, type Result } from '@clampwright/core/failure';
import { type Trace, traceSchema } from '@clampwright/core/record';
import type { Database } from '../engine.ts';

const compress = promisify(deflateRaw);
const expand = promisify(inflateRaw);

/** First byte: how the rest is written. 1: JSON, deflated (RFC 1951), which keeps every digit of every sample. */
const DEFLATED_JSON = 1;

/** Samples of a trace in the form in which they are stored. */
export async function pack(trace: Trace): Promise<Uint8Array> {
  return Buffer.concat([Buffer.of(DEFLATED_JSON), await compress(JSON.stringify(trace))]);
}

async function unpack(samples: Uint8Array): Promise<Trace> {
  const [form] = samples;
  if (form !== DEFLATED_JSON) throw new Error(`a trace in form ${form}, which this version does not know`);
  const text = await expand(samples.subarray(1));
  return traceSchema.parse(JSON.parse(text.toString('utf8')));
}

export async function readTrace(db: Database, pullId: string): Promise<Result<Trace>> {
  const row = await db.selectFrom('traces').select('samples').where('pull_id', '=', pullId).executeTakeFirst();
  return row ? ok(await unpack(row.samples)) : failed({ kind: 'not-found', what: 'trace', id: pullId });
}
