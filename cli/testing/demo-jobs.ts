import { z } from 'zod';
import type { Place, Ran } from './place.ts';

/** Ids of the demonstration's jobs by how they stand. */
export interface DemoJobs {
  readonly closed: string;
  /** In hand: some pulls are made. */
  readonly open: string;
}

const jobsSchema = z.array(z.object({ id: z.string(), status: z.string(), done: z.number() }));

/** Loads the demonstration into the data folder of a place. */
export async function demoJobs(place: Place): Promise<DemoJobs> {
  await place.run(['demo', 'load', '--data', place.data]);
  const listed = await place.run(['jobs', '--json', '--data', place.data]);
  const jobs = jobsSchema.parse(JSON.parse(listed.stdout));
  const idOf = (status: string) => jobs.find((job) => job.status === status && job.done > 0)?.id;
  const [closed, open] = [idOf('closed'), idOf('open')];
  if (closed === undefined || open === undefined) throw new Error('the demonstration has a closed job and one in hand');
  return { closed, open };
}

export const exported = (place: Place, job: string, ...args: readonly string[]): Promise<Ran> =>
  place.run(['record', 'export', job, '--data', place.data, ...args]);
