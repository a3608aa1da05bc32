import { ok } from '@clampwright/core/failure';
import { calibrationState, type Wrench } from '@clampwright/core/wrench';
import type { JobSummary } from '@clampwright/store';
import { z } from 'zod';
import { anybody } from './access.ts';
import { type Today, todaySchema } from './contract.ts';
import { json } from './gives.ts';
import { jobListItem } from './jobs.ts';
import { route } from './route.ts';

export const today = route({
  method: 'get',
  path: '/today',
  title: 'show what wants to be done today',
  access: anybody,
  takes: z.object({}),
  gives: json(todaySchema),
  handle: async (_, { store, now }) => {
    const jobs = await store.jobs.list();
    if (!jobs.ok) return jobs;
    const wrenches = await store.wrenches.list();
    if (!wrenches.ok) return wrenches;
    return ok({
      jobs: jobs.value.filter(({ status }) => status !== 'closed').map(jobListItem),
      wrenches: wrenches.value.flatMap((wrench) => calling(wrench, now().toISOString())),
      retorques: jobs.value.flatMap((job) => retorquesOf(job, jobs.value)),
    });
  },
});

function calling(wrench: Wrench, onDate: string): Today['wrenches'] {
  const state = calibrationState(wrench, onDate);
  return state === 'valid' ? [] : [{ wrench, state }];
}

/** A joint is to be tightened again until a later job on the same asset has done it and asks for the same in its turn. */
function retorquesOf(job: JobSummary, all: readonly JobSummary[]): Today['retorques'] {
  if (job.status !== 'closed') return [];
  const later = all.filter(
    (other) => other.status === 'closed' && other.lastAt > job.lastAt && isSameAsset(other, job),
  );
  const open = job.retorques.filter(
    ({ after, unit, note }) =>
      !later.some((other) =>
        other.retorques.some((again) => again.after === after && again.unit === unit && again.note === note),
      ),
  );
  return open.map(({ after, unit, note }) => ({
    jobId: job.id,
    jobTitle: job.title,
    assetName: job.assetName,
    closedAt: job.lastAt,
    after,
    unit,
    note,
  }));
}

const isSameAsset = (a: JobSummary, b: JobSummary): boolean =>
  a.assetName === b.assetName && a.assetLocation === b.assetLocation;
