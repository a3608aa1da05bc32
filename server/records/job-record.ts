import { ok, type Result } from '@clampwright/core/failure';
import { type Entry, type RecordFile, recordFile, type Trace } from '@clampwright/core/record';
import { type Store, sha256 } from '@clampwright/store';

/** The record of a job as it stands; sealed when the job is closed. */
export async function jobRecord({ jobs }: Pick<Store, 'jobs'>, jobId: string): Promise<Result<RecordFile>> {
  const entries = await jobs.entries(jobId);
  if (!entries.ok) return entries;
  const traces = await tracesOf(jobs, entries.value);
  if (!traces.ok) return traces;
  if (entries.value.at(-1)?.body.kind !== 'closed')
    return ok(recordFile(entries.value, traces.value, undefined, sha256));
  const seal = await jobs.seal(jobId);
  return seal.ok ? ok(recordFile(entries.value, traces.value, seal.value, sha256)) : seal;
}

async function tracesOf(
  jobs: Store['jobs'],
  entries: readonly Entry[],
): Promise<Result<Readonly<Record<string, Trace>>>> {
  const traces: Record<string, Trace> = {};
  for (const { id, body } of entries) {
    if (body.kind !== 'pull' || !body.pull.trace) continue;
    const trace = await jobs.trace(id);
    if (!trace.ok) return trace;
    traces[id] = trace.value;
  }
  return ok(traces);
}
