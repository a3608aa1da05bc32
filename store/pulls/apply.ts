import { entrySchema } from '@clampwright/core/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../tables.ts';
import { keyOf, type PullChange } from './pull-row.ts';

/** Moves a pull or takes it out, found by its key: what is not added is rare. */
export async function mendPull(db: Kysely<Tables>, change: Exclude<PullChange, { kind: 'add' }>): Promise<void> {
  const stored = await db
    .selectFrom('entries')
    .select('entry')
    .where('id', '=', change.pullId)
    .executeTakeFirstOrThrow();
  const { wrench_id, taken_at, pull_id } = keyOf(entrySchema.parse(JSON.parse(stored.entry)));
  if (change.kind === 'move') {
    await db
      .updateTable('pulls')
      .set(change.placed)
      .where('wrench_id', '=', wrench_id)
      .where('taken_at', '=', taken_at)
      .where('pull_id', '=', pull_id)
      .execute();
  } else {
    await db
      .deleteFrom('pulls')
      .where('wrench_id', '=', wrench_id)
      .where('taken_at', '=', taken_at)
      .where('pull_id', '=', pull_id)
      .execute();
  }
}
