import { failed, ok, type Result } from '@clampwright/core/failure';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';

/** Somebody signed in. Only the hash of the token is known here. */
export interface Session {
  readonly tokenHash: string;
  readonly personId: string;
  readonly expiresAt: string;
}

export interface Sessions {
  begin(session: Session): Promise<Result<Session>>;
  /** The session of a token, unless it has ended or expired. */
  find(tokenHash: string, now: string): Promise<Result<Session>>;
  /** Ends a session; one that has ended or never was stays so. */
  end(tokenHash: string, now: string): Promise<Result<undefined>>;
}

export function sessionsOn(engine: Engine): Sessions {
  return {
    begin: (session) => transact(engine, (trx) => begin(trx, session)),
    find: (tokenHash, now) => attempt(engine, () => find(engine.reading, tokenHash, now)),
    end: (tokenHash, now) => transact(engine, (trx) => end(trx, tokenHash, now)),
  };
}

async function begin(trx: Transaction, session: Session): Promise<Result<Session>> {
  const { tokenHash, personId, expiresAt } = session;
  const person = await trx.selectFrom('people').select('id').where('id', '=', personId).executeTakeFirst();
  if (!person) return failed({ kind: 'not-found', what: 'person', id: personId });
  await trx
    .insertInto('sessions')
    .values({ token_hash: tokenHash, person_id: personId, expires_at: expiresAt, ended_at: null })
    .execute();
  return ok(session);
}

async function find(db: Database, tokenHash: string, now: string): Promise<Result<Session>> {
  const row = await db
    .selectFrom('sessions')
    .selectAll()
    .where('token_hash', '=', tokenHash)
    .where('ended_at', 'is', null)
    .where('expires_at', '>', now)
    .executeTakeFirst();
  if (!row) return failed({ kind: 'not-found', what: 'session', id: '(token)' });
  return ok({ tokenHash: row.token_hash, personId: row.person_id, expiresAt: row.expires_at });
}

async function end(trx: Transaction, tokenHash: string, now: string): Promise<Result<undefined>> {
  await trx
    .updateTable('sessions')
    .set({ ended_at: now })
    .where('token_hash', '=', tokenHash)
    .where('ended_at', 'is', null)
    .execute();
  return ok(undefined);
}
