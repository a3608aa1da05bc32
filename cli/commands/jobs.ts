import { ok } from '@clampwright/core/failure';
import Table from 'cli-table3';
import { withStore } from '../open.ts';

/** `clampwright jobs`: every job, the one last worked on first. */
export async function listJobs({ data, json }: { readonly data?: string; readonly json?: boolean }): Promise<void> {
  const jobs = await withStore(data, async (store) => {
    const listed = await store.jobs.list();
    return listed.ok ? ok(listed.value) : listed;
  });
  if (json) {
    process.stdout.write(`${JSON.stringify(jobs, null, 2)}\n`);
    return;
  }
  if (jobs.length === 0) {
    process.stdout.write('There are no jobs yet. The lead makes one from a released joint, on the page Joints.\n');
    return;
  }
  const table = new Table({ head: ['id', 'job', 'asset', 'status', 'done'], style: { head: [], border: [] } });
  for (const { id, title, assetName, status, done, total } of jobs)
    table.push([id, title, assetName, status, `${done}/${total}`]);
  process.stdout.write(`${table.toString()}\n`);
}
