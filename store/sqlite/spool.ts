import BetterSqlite from 'better-sqlite3';
import type { Spool, SpooledEntry } from '../engine.ts';

const PAGE = 500;

/** A spool in a nameless database, which lies in memory and, when it grows, in a file that nobody else sees. */
export function openSpool(): Spool {
  const db = new BetterSqlite('');
  db.pragma('journal_mode = off');
  db.pragma('synchronous = off');
  db.exec(
    'create table entries (seq integer primary key, id text not null unique, entry text not null, samples blob, pull text)',
  );
  const insert = db.prepare('insert into entries (seq, id, entry, samples, pull) values (?, ?, ?, ?, ?)');
  const find = db.prepare<[string], string>('select entry from entries where id = ?').pluck();
  const page = db.prepare<[number], SpooledEntry>(
    `select id, seq, entry, samples, pull from entries where seq > ? order by seq limit ${PAGE}`,
  );
  return {
    put: ({ seq, id, entry, samples, pull }) => void insert.run(seq, id, entry, samples, pull),
    find: (ids) => ids.flatMap((id) => find.get(id) ?? []),
    *pages() {
      for (let rows = page.all(0); rows.length > 0; rows = page.all(rows.at(-1)?.seq ?? 0)) yield rows;
    },
    close: () => void db.close(),
  };
}
