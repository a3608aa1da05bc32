import { ok, type Result } from '@clampwright/core/failure';
import { attempt, type Engine, type Transaction, transact } from './engine.ts';
import type { FoldedJobs } from './jobs/folded-jobs.ts';
import { readSetting, writeSetting } from './settings.ts';

export type DemoState = 'never-loaded' | 'loaded' | 'removed';

/** The invented scenario: whatever was added with its mark. */
export interface Demo {
  /** `never-loaded` also while loading it was begun and not finished; adding the same things again is harmless. */
  state(): Promise<Result<DemoState>>;
  /** Says that all of it has been added. */
  finishLoading(): Promise<Result<undefined>>;
  /** Removes all of it and nothing else, in one transaction: the only removal there is. */
  remove(): Promise<Result<undefined>>;
}

const SETTING = 'demo';

export function demoOn(engine: Engine, jobs: FoldedJobs): Demo {
  return {
    state: () => attempt(engine, () => state(engine)),
    finishLoading: () => transact(engine, async (trx) => ok(await writeSetting(trx, SETTING, 'loaded'))),
    remove: async () => {
      const removed = await transact(engine, remove);
      jobs.forgetAll();
      return removed;
    },
  };
}

async function state(engine: Engine): Promise<Result<DemoState>> {
  const value = await readSetting(engine.reading, SETTING);
  return ok(value === 'loaded' || value === 'removed' ? value : 'never-loaded');
}

async function remove(trx: Transaction): Promise<Result<undefined>> {
  await removeParts(trx);
  for (const table of [
    'jobs',
    'joints',
    'wrenches',
    'adapters',
    'extensions',
    'assets',
    'own_rows',
    'reference_standards',
    'people',
    'mappings',
    'devices',
    'line_descriptions',
  ] as const) {
    await trx.deleteFrom(table).where('demo', '=', 1).execute();
  }
  return ok(await writeSetting(trx, SETTING, 'removed'));
}

/** What hangs on a flagged row goes before it. */
async function removeParts(trx: Transaction): Promise<void> {
  const demoJobs = trx.selectFrom('jobs').select('id').where('demo', '=', 1);
  for (const table of ['traces', 'seals', 'pulls', 'entries'] as const) {
    await trx.deleteFrom(table).where('job_id', 'in', demoJobs).execute();
  }
  await trx
    .deleteFrom('joint_revisions')
    .where('joint_id', 'in', trx.selectFrom('joints').select('id').where('demo', '=', 1))
    .execute();
  await trx
    .deleteFrom('device_counts')
    .where('device_id', 'in', trx.selectFrom('devices').select('id').where('demo', '=', 1))
    .execute();
  const demoWrenches = trx.selectFrom('wrenches').select('id').where('demo', '=', 1);
  const demoRecalls = trx.selectFrom('recalls').select('id').where('owner_id', 'in', demoWrenches);
  await trx.deleteFrom('rechecks').where('owner_id', 'in', demoRecalls).execute();
  for (const table of ['recalls', 'checks', 'whole_calibrations'] as const) {
    await trx.deleteFrom(table).where('owner_id', 'in', demoWrenches).execute();
  }
  await trx.deleteFrom('calibrations').where('wrench_id', 'in', demoWrenches).execute();
  await trx
    .deleteFrom('sessions')
    .where('person_id', 'in', trx.selectFrom('people').select('id').where('demo', '=', 1))
    .execute();
}
