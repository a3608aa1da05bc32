import BetterSqlite from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { builderOn } from './sqlite/dialect.ts';
import { statementOf } from './statement.ts';

const db = builderOn(new BetterSqlite(':memory:'));
const make = db.schema.createTable('settings').addColumn('name', 'text').addColumn('value', 'text');

describe('a statement', () => {
  it('fills each use with its own values, beside those that are fixed', async () => {
    await make.execute();
    const insert = statementOf<{ readonly name: string }>((slot) =>
      db
        .insertInto('settings')
        .values({ name: slot('name'), value: 'fixed' })
        .$castTo<never>()
        .compile(),
    );
    const find = statementOf<{ readonly name: string }, { readonly value: string }>((slot) =>
      db.selectFrom('settings').select('value').where('name', '=', slot('name')).where('value', '=', 'fixed').compile(),
    );
    for (const name of ['first', 'second']) await insert(db, { name });
    expect(await find(db, { name: 'second' })).toEqual([{ value: 'fixed' }]);
    expect(await find(db, { name: 'third' })).toEqual([]);
    expect(await db.selectFrom('settings').select('name').execute()).toEqual([{ name: 'first' }, { name: 'second' }]);
  });
});
