import { ok, type Result } from '@clampwright/core/failure';
import type { Deps } from '../deps.ts';
import { serialTools, toolsBy } from './ports.ts';

/** Opens the ports, and knows the hands again, of all wrenches that were taken for open jobs before the server was started. */
export async function resumePorts(deps: Deps): Promise<Result<undefined>> {
  const jobs = await deps.store.jobs.list();
  if (!jobs.ok) return jobs;
  const devices = await deps.store.devices.list();
  if (!devices.ok) return devices;
  // Who took a wrench stands in the entries, and reading them all takes its time: only where somebody will ask.
  const isAsked = devices.value.length > 0;
  // The job last worked on comes last and so keeps a wrench that was taken for two.
  for (const { id, status } of jobs.value.toReversed()) {
    if (status === 'closed') continue;
    const resumed = await resumeJob(deps, id, isAsked);
    if (!resumed.ok) return resumed;
  }
  return ok(undefined);
}

async function resumeJob({ store, ports }: Deps, jobId: string, isAsked: boolean): Promise<Result<undefined>> {
  const state = await store.jobs.state(jobId);
  if (!state.ok) return state;
  const tools = isAsked ? toolsBy(state.value, ({ id }) => id) : serialTools(state.value);
  if (tools.size === 0) return ok(undefined);
  const entries = await store.jobs.entries(jobId);
  if (!entries.ok) return entries;
  for (const { body, by, at } of entries.value) {
    if (body.kind !== 'tool-taken') continue;
    const person = await store.people.get(by.id);
    if (person.ok) ports.follow(state.value, { by: person.value, jointRefs: body.jointRefs, at });
  }
  return ok(undefined);
}
