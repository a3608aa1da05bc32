import { failed, ok, type Result } from '@clampwright/core/failure';
import type { JobState } from '@clampwright/core/record';
import { attempt, type Spool, transact } from '../engine.ts';
import { pullChangeFrom } from '../pulls/pull-row.ts';
import type { Appender } from './append.ts';
import { findEntries } from './entries.ts';
import { type Intake, NOTHING, packedOf, type Tally, takeBatch, told } from './intake.ts';
import { movedJob } from './job.ts';
import { getState } from './reading.ts';
import { putPull, shelfAside } from './shelf.ts';

/**
 * Takes a list in as a whole or not at all. It is decided aside, however slowly it comes, so that nobody waits for it;
 * only when all of it is known to be good is it stored, in one transaction.
 */
export async function takeTogether<Item>(
  at: Appender,
  jobId: string,
  batches: AsyncIterable<readonly Item[]>,
  intake: Intake<Item>,
): Promise<Result<Tally>> {
  const { engine, folded } = at;
  const before = await attempt(engine, () => getState(engine.reading, folded, jobId));
  if (!before.ok) return before;
  const spool = engine.spool();
  try {
    const aside = await decideAside(at, before.value, spool, batches, intake);
    if (!aside.ok) return aside;
    const { state, tally } = aside.value;
    if (intake.keep === 'nothing' || tally.refused > 0) return ok({ ...tally, kept: false });
    const stored = await storeSpooled(at, before.value, state, spool);
    return stored.ok ? ok(tally) : stored;
  } finally {
    spool.close();
  }
}

/** What the list's own source throws is not the store's to explain, so it stays outside `attempt`. */
async function decideAside<Item>(
  { engine, statements }: Appender,
  before: JobState,
  spool: Spool,
  batches: AsyncIterable<readonly Item[]>,
  intake: Intake<Item>,
): Promise<Result<{ readonly state: JobState; readonly tally: Tally }>> {
  const shelf = shelfAside(engine.reading, statements, spool);
  let state = before;
  let tally = NOTHING;
  for await (const batch of batches) {
    const from = state;
    const traces = packedOf(batch, intake);
    const taken = await attempt(engine, async () => ok(await takeBatch(shelf, from, batch, intake, traces)));
    if (!taken.ok) return taken;
    state = taken.value.state;
    tally = told(tally, taken.value, intake);
  }
  return ok({ state, tally });
}

/** Stores what was decided aside, unless somebody worked on the job meanwhile. */
async function storeSpooled(
  { engine, folded, statements }: Appender,
  before: JobState,
  after: JobState,
  spool: Spool,
): Promise<Result<undefined>> {
  const { jobId } = after;
  const stored = await transact(engine, async (trx) => {
    const [head] = await statements.headOf(trx, { jobId });
    if (head?.last_hash !== before.lastHash) return failed(MEANWHILE);
    for (const page of spool.pages()) {
      const ids = page.map(({ id }) => id);
      if ((await findEntries(trx, statements, ids)).length > 0) return failed(MEANWHILE);
      for (const { id, seq, entry, samples, pull } of page) {
        await statements.insertEntry(trx, { job_id: jobId, seq, id, entry });
        if (pull !== null) await putPull(trx, statements, pullChangeFrom(pull));
        if (samples) await statements.insertTrace(trx, { pull_id: id, job_id: jobId, samples });
      }
    }
    await statements.moveJob(trx, movedJob(after));
    return ok(undefined);
  });
  if (stored.ok) folded.keep(after);
  return stored;
}

const MEANWHILE = {
  kind: 'conflict',
  message: 'Somebody worked on this job while the list was read; nothing of it was kept. Take it in again.',
  current: null,
} as const;
