import { join } from 'node:path';
import BetterSqlite from 'better-sqlite3';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openStore } from '../index.ts';
import { freshFolder, valueOf } from '../testing/contract/folder.ts';
import {
  deciding,
  firstEntries,
  hubContent,
  hubSheet,
  identity,
  ownStud,
  pullNumber,
  wrench,
} from '../testing/workshop.ts';

const calibration = {
  calibratedOn: '2026-01-31',
  dueOn: '2027-01-31',
  certificate: 'KH 1',
  by: 'bench',
  maximumDeviationPercent: 1,
  expandedUncertaintyPercent: 1,
};

/** The database with a row in each guarded table, opened past the store by a program that asks nobody. */
async function filled(demo: boolean): Promise<BetterSqlite.Database> {
  const folder = await freshFolder();
  const store = valueOf(await openStore(folder));
  const sheet = hubSheet('tower 3', demo);
  valueOf(await store.jobs.open(firstEntries(sheet)));
  const trace = { timeS: [0, 1], angleDeg: [0, 30], torqueNm: [0, 30] };
  const pull = pullNumber(sheet.id, 0, { trace });
  valueOf(await store.jobs.append(sheet.id, deciding(pull, 10), { traces: { [pull.id]: trace } }));
  valueOf(await store.joints.saveDraft(identity('hub'), hubContent, { demo }));
  valueOf(await store.joints.release(identity('hub'), 1));
  valueOf(await store.wrenches.add({ ...wrench, calibration }, { demo }));
  valueOf(
    await store.people.add({ id: identity('lead'), name: 'Tomas Venn', role: 'lead', pinHash: undefined }, { demo }),
  );
  valueOf(await store.ownRows.add(ownStud(identity('stud'), 'Stud of lot 7'), { demo }));
  await store.close();
  const db = new BetterSqlite(join(folder, 'clampwright.sqlite'));
  onTestFinished(() => void db.close());
  return db;
}

describe('the database itself', () => {
  it.for([
    ["update entries set entry = '{}'", 'entries are not altered'],
    ['delete from entries where seq = 3', 'entries are not removed'],
    [
      "insert or replace into entries (job_id, seq, id, entry) select job_id, seq, 'other', entry from entries",
      'entries are not replaced',
    ],
    [
      'insert or replace into entries (job_id, seq, id, entry) select job_id, 99, id, entry from entries',
      'entries are not replaced',
    ],
    ["update traces set samples = x'00'", 'traces are not altered'],
    ['delete from traces', 'traces are not removed'],
    [
      "insert or replace into traces (pull_id, job_id, samples) select pull_id, job_id, x'00' from traces",
      'traces are not replaced',
    ],
    ["update own_rows set content = '{}'", 'own_rows are not altered'],
    ['delete from own_rows', 'own_rows are not removed'],
    ["insert or replace into own_rows select id, demo, name, '{}' from own_rows", 'own_rows are not replaced'],
    ['update jobs set demo = 1', 'jobs are not altered'],
    [
      'insert or replace into jobs select id, 1, title, asset_name, asset_location, status, done, total, retorques, opened_at, last_at, last_seq, last_hash from jobs',
      'jobs are not replaced',
    ],
    ['delete from jobs', 'jobs are not removed'],
    ["update joint_revisions set status = 'draft'", 'joint_revisions are not altered'],
    ["update joint_revisions set content = '{}'", 'joint_revisions are not altered'],
    ['delete from joint_revisions', 'joint_revisions are not removed'],
    ['update joints set demo = 1', 'joints are not altered'],
    ["update calibrations set summary = '{}'", 'calibrations are not altered'],
    ['delete from calibrations', 'calibrations are not removed'],
    ['update wrenches set demo = 1', 'wrenches are not altered'],
    ['delete from wrenches', 'wrenches are not removed'],
    ['delete from people', 'people are not removed'],
  ] as const)('refuses: %s', async ([statement, complaint]) => {
    const db = await filled(false);
    db.pragma('foreign_keys = on');
    expect(() => db.exec(statement)).toThrow(complaint);
  });

  it('lets what belongs to the invented scenario be removed, but not altered', async () => {
    const db = await filled(true);
    expect(() => db.exec("update entries set entry = '{}'")).toThrow('entries are not altered');
    for (const table of [
      'traces',
      'entries',
      'jobs',
      'joint_revisions',
      'joints',
      'calibrations',
      'wrenches',
      'people',
    ]) {
      expect(db.prepare(`delete from ${table}`).run().changes).toBeGreaterThan(0);
    }
  });
});
