import { ok } from '@clampwright/core/failure';
import type { Outcome } from '@clampwright/server';
import { dataFolder } from '../data-folder.ts';
import { withStore } from '../open.ts';
import { answer, remark, toJson } from '../say.ts';
import { table } from '../table.ts';

interface Wanted {
  readonly data?: string;
  readonly json?: true;
}

/** `clampwright jobs`: every job, the one last worked on first. */
export async function listJobs({ data, json }: Wanted): Promise<Outcome<0>> {
  const jobs = await withStore(dataFolder(data), (store) => store.jobs.list());
  if (!jobs.ok) return jobs;
  const rows = jobs.value.map(({ id, title, assetName, status, done, total }) => [
    id,
    title,
    assetName,
    status,
    `${done}/${total}`,
  ]);
  if (json) answer(toJson(jobs.value));
  else if (rows.length > 0) answer(table(['id', 'job', 'asset', 'status', 'done'], rows));
  else remark('There are no jobs yet. The lead makes one from a released joint, on the page Joints.');
  return ok(0);
}
