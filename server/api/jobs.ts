import { failed, ok, type Result } from '@clampwright/core/failure';
import {
  canonical,
  chain,
  entrySchema,
  type JobJoint,
  type JobSheet,
  openJob,
  startOfChain,
} from '@clampwright/core/record';
import type { JobSummary } from '@clampwright/store';
import { z } from 'zod';
import { type Deps, newId } from '../deps.ts';
import { refOf } from '../door.ts';
import { anybody, onlyFor } from './access.ts';
import { type Job, type JobListItem, jobListItemSchema, jobSchema, newJobSchema, type Person } from './contract.ts';
import { type Frozen, json } from './gives.ts';
import { jobParams } from './job-params.ts';
import { route } from './route.ts';

export const listJobs = route({
  method: 'get',
  path: '/jobs',
  title: 'list the jobs, the one last worked on first',
  access: anybody,
  takes: z.object({ query: z.strictObject({ status: jobListItemSchema.shape.status.optional() }) }),
  gives: json(z.array(jobListItemSchema)),
  handle: async ({ query: { status } }, { store }) => {
    const jobs = await store.jobs.list(status === undefined ? {} : { status });
    return jobs.ok ? ok(jobs.value.map(jobListItem)) : jobs;
  },
});

export const jobListItem = ({ lastSeq: _s, lastHash: _h, retorques: _r, ...job }: JobSummary): JobListItem => job;

export const showJob = route({
  method: 'get',
  path: '/jobs/{id}',
  title: 'show a job with all its entries',
  access: anybody,
  takes: z.object({ params: jobParams }),
  gives: json(jobSchema),
  handle: ({ params }, { store }) => wholeJob(store, params.id),
});

async function wholeJob(store: Deps['store'], jobId: string): Promise<Result<Frozen<Job>>> {
  const entries = await store.jobs.entries(jobId);
  if (!entries.ok) return entries;
  const first = entries.value[0]?.body;
  if (first?.kind !== 'opened') throw new Error(`job ${jobId} does not begin with its sheet`);
  return ok({ sheet: first.sheet, entries: entries.value });
}

export const listEntries = route({
  method: 'get',
  path: '/jobs/{id}/entries',
  title: 'list the entries of a job after one',
  access: anybody,
  takes: z.object({ params: jobParams, query: z.strictObject({ after: z.coerce.number().int().min(0).default(0) }) }),
  gives: json(z.array(entrySchema)),
  handle: ({ params, query }, { store }) => store.jobs.entries(params.id, { afterSeq: query.after }),
});

export const makeJob = route({
  method: 'post',
  path: '/jobs',
  title: 'make a job from released joints',
  access: onlyFor('lead'),
  takes: z.object({ body: newJobSchema }),
  gives: json(jobSchema, 201),
  handle: async ({ body }, deps, by) => {
    const sheet = await sheetFor(deps, body, by);
    if (!sheet.ok) return sheet;
    const made = await wholeJob(deps.store, body.id);
    if (made.ok) return sameJob(made.value, sheet.value);
    const asset = await deps.store.assets.add(body.asset, { demo: by.demo });
    return asset.ok ? openWith(deps, sheet.value, by) : asset;
  },
});

async function sheetFor(
  { store }: Deps,
  { id, title, asset, joints }: z.infer<typeof newJobSchema>,
  by: Person,
): Promise<Result<JobSheet>> {
  const taken: JobJoint[] = [];
  for (const [index, { jointId, revision, label }] of joints.entries()) {
    const joint = await store.joints.get(jointId, revision);
    if (!joint.ok) return joint;
    taken.push({ ref: `J${index + 1}`, label, joint: joint.value });
  }
  return ok({ id, title, asset, joints: taken, demo: by.demo });
}

async function openWith(deps: Deps, sheet: JobSheet, by: Person): Promise<Result<Frozen<Job>>> {
  const draft = openJob(sheet, { id: newId(deps), now: deps.now().toISOString(), by: refOf(by) });
  if (!draft.ok) return draft;
  const opened = await deps.store.jobs.open(chain(startOfChain(sheet.id), [draft.value]));
  return opened.ok ? ok({ sheet, entries: opened.value.entries }) : opened;
}

/** Sent twice, a job is made once. */
function sameJob(made: Frozen<Job>, sheet: JobSheet): Result<Frozen<Job>> {
  if (canonical(made.sheet) === canonical(sheet)) return ok(made);
  return failed({
    kind: 'conflict',
    message: 'Another job is kept under this identity; give the new one its own.',
    current: made.sheet,
  });
}
