import { failed, ok, type Result } from '@clampwright/core/failure';
import { type JointContent, type JointRevision, jointContentSchema } from '@clampwright/core/joint';
import { canonical } from '@clampwright/core/record';
import type { ExpressionBuilder, Selectable } from 'kysely';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import type { Adding } from './register.ts';
import { flag, type JointRevisionsTable, type Tables } from './tables.ts';

/** A joint as a list shows it. */
export interface JointSummary {
  readonly latest: JointRevision;
  /** The newest revision that jobs can be made from. */
  readonly releasedRevision: number | undefined;
  readonly demo: boolean;
}

export interface JointHistory {
  /** First to last. */
  readonly revisions: readonly JointRevision[];
  readonly demo: boolean;
}

export interface Joints {
  /** Makes the joint, changes its draft, or begins a new revision after a released one. */
  saveDraft(id: string, content: JointContent, adding?: Adding): Promise<Result<JointRevision>>;
  /** From now on the revision never changes. Released twice, it is the same. */
  release(id: string, revision: number): Promise<Result<JointRevision>>;
  history(id: string): Promise<Result<JointHistory>>;
  /** By name of the latest revision. */
  list(): Promise<Result<readonly JointSummary[]>>;
  get(id: string, revision: number): Promise<Result<JointRevision>>;
}

export function jointsOn(engine: Engine): Joints {
  const { reading } = engine;
  return {
    saveDraft: (id, content, adding) => transact(engine, (trx) => saveDraft(trx, id, content, adding)),
    release: (id, revision) => transact(engine, (trx) => release(trx, id, revision)),
    history: (id) => attempt(engine, () => history(reading, id)),
    list: () => attempt(engine, () => list(reading)),
    get: (id, revision) => attempt(engine, () => get(reading, id, revision)),
  };
}

const revisionFromRow = (row: Selectable<JointRevisionsTable>): JointRevision => ({
  id: row.joint_id,
  revision: row.revision,
  status: row.status,
  content: jointContentSchema.parse(JSON.parse(row.content)),
});

async function saveDraft(
  trx: Transaction,
  id: string,
  content: JointContent,
  { demo }: Adding = {},
): Promise<Result<JointRevision>> {
  const latest = (await revisionsOf(trx, id)).at(-1);
  if (!latest)
    await trx
      .insertInto('joints')
      .values({ id, demo: flag(demo) })
      .execute();
  if (latest?.status === 'draft') return changeDraft(trx, { ...latest, content });
  const draft: JointRevision = { id, revision: (latest?.revision ?? 0) + 1, status: 'draft', content };
  await trx
    .insertInto('joint_revisions')
    .values({ joint_id: id, revision: draft.revision, status: draft.status, content: canonical(content) })
    .execute();
  return ok(draft);
}

async function changeDraft(trx: Transaction, draft: JointRevision): Promise<Result<JointRevision>> {
  await changeRevision(trx, draft)
    .set({ content: canonical(draft.content) })
    .execute();
  return ok(draft);
}

async function release(trx: Transaction, id: string, revision: number): Promise<Result<JointRevision>> {
  const found = await get(trx, id, revision);
  if (!found.ok || found.value.status === 'released') return found;
  await changeRevision(trx, found.value).set({ status: 'released' }).execute();
  return ok({ ...found.value, status: 'released' });
}

/** Only a draft is ever changed; the database holds to that as well. */
const changeRevision = (trx: Transaction, { id, revision }: JointRevision) =>
  trx
    .updateTable('joint_revisions')
    .where('joint_id', '=', id)
    .where('revision', '=', revision)
    .where('status', '=', 'draft');

async function revisionsOf(db: Database, id: string): Promise<readonly JointRevision[]> {
  const rows = await db
    .selectFrom('joint_revisions')
    .selectAll()
    .where('joint_id', '=', id)
    .orderBy('revision')
    .execute();
  return rows.map(revisionFromRow);
}

async function history(db: Database, id: string): Promise<Result<JointHistory>> {
  const joint = await db.selectFrom('joints').select('demo').where('id', '=', id).executeTakeFirst();
  if (!joint) return failed({ kind: 'not-found', what: 'joint', id });
  return ok({ revisions: await revisionsOf(db, id), demo: joint.demo === 1 });
}

async function get(db: Database, id: string, revision: number): Promise<Result<JointRevision>> {
  const row = await db
    .selectFrom('joint_revisions')
    .selectAll()
    .where('joint_id', '=', id)
    .where('revision', '=', revision)
    .executeTakeFirst();
  return row
    ? ok(revisionFromRow(row))
    : failed({ kind: 'not-found', what: 'revision of a joint', id: `${id}, revision ${revision}` });
}

async function list(db: Database): Promise<Result<readonly JointSummary[]>> {
  const rows = await db
    .selectFrom(heads)
    .innerJoin('joints', 'joints.id', 'heads.joint_id')
    .innerJoin('joint_revisions', (join) =>
      join
        .onRef('joint_revisions.joint_id', '=', 'heads.joint_id')
        .onRef('joint_revisions.revision', '=', 'heads.latest'),
    )
    .selectAll('joint_revisions')
    .select(['heads.released', 'joints.demo'])
    .execute();
  const joints = rows.map((row) => ({
    latest: revisionFromRow(row),
    releasedRevision: row.released ?? undefined,
    demo: row.demo === 1,
  }));
  return ok(joints.toSorted((a, b) => (a.latest.content.name < b.latest.content.name ? -1 : 1)));
}

/** The newest revision of each joint, and the newest released one. */
const heads = (eb: ExpressionBuilder<Tables, never>) =>
  eb
    .selectFrom('joint_revisions')
    .select((eb) => [
      'joint_id',
      eb.fn.max('revision').as('latest'),
      eb.fn.max(eb.case().when('status', '=', 'released').then(eb.ref('revision')).end()).as('released'),
    ])
    .groupBy('joint_id')
    .as('heads');
