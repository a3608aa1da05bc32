import { join } from 'node:path';
import BetterSqlite from 'better-sqlite3';
import { sql } from 'kysely';
import { describe, expect, it, onTestFinished } from 'vitest';
import { freshFolder } from '../testing/contract/folder.ts';
import { type Turns, turnsOn } from './turns.ts';

/** A joint must have its revision by the commit, so that a commit can be refused. */
const SCHEMA = `
  create table joints (id integer primary key);
  create table revisions (joint integer references joints(id) deferrable initially deferred)`;

async function turns(): Promise<Turns> {
  const handle = new BetterSqlite(join(await freshFolder(), 'turns.sqlite'));
  onTestFinished(() => void handle.close());
  handle.pragma('foreign_keys = on');
  handle.exec(SCHEMA);
  return turnsOn(handle);
}

/** Rows of revisions, as the next turn sees them. */
async function rows({ begin }: Turns): Promise<number> {
  const { trx, rollback } = await begin();
  const found = await sql`select * from revisions`.execute(trx);
  await rollback();
  return found.rows.length;
}

async function sqlIn(begin: Turns['begin'], statement: string): Promise<void> {
  const { trx, commit } = await begin();
  await sql.raw(statement).execute(trx);
  await commit();
}

describe('turns of writing', () => {
  it('are taken one after the other', async () => {
    const { begin } = await turns();
    const said: string[] = [];
    const first = await begin();
    const second = begin().then(({ rollback }) => {
      said.push('second begins');
      return rollback();
    });
    await Promise.resolve();
    said.push('first ends');
    await first.commit();
    await second;
    expect(said).toEqual(['first ends', 'second begins']);
  });

  it('are over also when the commit is refused, and nothing of it is left', async () => {
    const at = await turns();
    const { trx, commit } = await at.begin();
    await sql`insert into revisions (joint) values (1)`.execute(trx);
    await expect(commit()).rejects.toThrow('FOREIGN KEY');
    expect(await rows(at)).toBe(0);
  });

  it('that are done at once are kept together, and one that is undone takes none of the others with it', async () => {
    const { begin } = await turns();
    const ended: string[] = [];
    const writes = async (id: number, end: 'commit' | 'rollback'): Promise<void> => {
      const { trx, ...endings } = await begin();
      await sql`insert into joints (id) values (${id})`.execute(trx);
      await endings[end]();
      ended.push(`${id} ${end}`);
    };
    await Promise.all([writes(1, 'commit'), writes(2, 'rollback'), writes(3, 'commit')]);
    const { trx, rollback } = await begin();
    expect((await sql`select id from joints order by id`.execute(trx)).rows).toEqual([{ id: 1 }, { id: 3 }]);
    await rollback();
    expect(ended.toSorted()).toEqual(['1 commit', '2 rollback', '3 commit']);
  });

  it('are all told when what was done together is refused', async () => {
    const { begin } = await turns();
    const refused = await Promise.allSettled([
      sqlIn(begin, 'insert into joints values (8)'),
      sqlIn(begin, 'insert into revisions values (9)'),
    ]);
    expect(refused.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    await expect(sqlIn(begin, 'insert into joints values (8)')).resolves.toBeUndefined();
  });

  it('that the database undid altogether are lost together, for the same reason', async () => {
    const { begin } = await turns();
    const first = sqlIn(begin, 'insert into joints values (1)');
    const undoesAll = async (): Promise<void> => {
      const { trx, rollback } = await begin();
      await sql`rollback`.execute(trx);
      await rollback(new Error('the disk is full'));
    };
    const second = undoesAll();
    await expect(first).rejects.toThrow('the disk is full');
    await second;
    await expect(sqlIn(begin, 'insert into joints values (1)')).resolves.toBeUndefined();
  });

  it('are waited for before the connection is closed', async () => {
    const { begin, close } = await turns();
    const { trx, commit } = await begin();
    const closed = close();
    await sql`insert into joints (id) values (1)`.execute(trx);
    await commit();
    await closed;
    await expect(begin()).rejects.toThrow('not open');
  });
});
