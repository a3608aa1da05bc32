import { ok } from '@clampwright/core/failure';
import { referenceState, type Wrench } from '@clampwright/core/wrench';
import type { JobSummary } from '@clampwright/store';
import { z } from 'zod';
import { dueItems } from '../care/due-items.ts';
import { anybody } from './access.ts';
import { type DueItem, type Today, todaySchema } from './contract.ts';
import { json } from './gives.ts';
import { jobListItem } from './jobs.ts';
import { recallItems } from './recalls.ts';
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
    const today = now().toISOString().slice(0, 10);
    const due = await dueItems(store, today);
    if (!due.ok) return due;
    const references = await store.references.list();
    if (!references.ok) return references;
    const recalls = await recallItems(store);
    if (!recalls.ok) return recalls;
    return ok({
      jobs: jobs.value.filter(({ status }) => status !== 'closed').map(jobListItem),
      wrenches: due.value.flatMap((item) => calling(item, wrenches.value)),
      references: references.value.flatMap((reference) => {
        const state = referenceState(reference, today);
        return state === 'valid' ? [] : [{ reference, state }];
      }),
      recalls: recalls.value.filter(({ pulls, rechecked }) => rechecked < pulls),
      retorques: jobs.value.flatMap((job) => retorquesOf(job, jobs.value)),
    });
  },
});

function calling({ id, state }: DueItem, wrenches: readonly Wrench[]): Today['wrenches'] {
  const wrench = wrenches.find((one) => one.id === id);
  return wrench === undefined || state === 'valid' ? [] : [{ wrench, state }];
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
