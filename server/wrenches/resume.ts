import { ok, type Result } from '@clampwright/core/failure';
import type { Deps } from '../deps.ts';
import { serialTools } from './ports.ts';

/** Opens the ports of all wrenches that were taken for open jobs before the server was started. */
export async function resumePorts(deps: Deps): Promise<Result<undefined>> {
  const jobs = await deps.store.jobs.list();
  if (!jobs.ok) return jobs;
  // The job last worked on comes last and so keeps a wrench that was taken for two.
  for (const { id, status } of jobs.value.toReversed()) {
    if (status === 'closed') continue;
    const resumed = await resumeJob(deps, id);
    if (!resumed.ok) return resumed;
  }
  return ok(undefined);
}

async function resumeJob({ store, ports }: Deps, jobId: string): Promise<Result<undefined>> {
  const state = await store.jobs.state(jobId);
  if (!state.ok) return state;
  if (serialTools(state.value).size === 0) return ok(undefined);
  const entries = await store.jobs.entries(jobId);
  if (!entries.ok) return entries;
  for (const { body, by } of entries.value) {
    if (body.kind !== 'tool-taken' || body.tool.wrench.connection.kind !== 'serial') continue;
    const person = await store.people.get(by.id);
    if (person.ok) ports.follow(state.value, person.value, body.jointRefs);
  }
  return ok(undefined);
}
