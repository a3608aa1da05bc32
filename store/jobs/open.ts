import { failed, invalid, ok, type Result } from '@clampwright/core/failure';
import type { Entry } from '@clampwright/core/record';
import { transact } from '../engine.ts';
import { pullChanges } from '../pulls/tools-taken.ts';
import type { Appender } from './append.ts';
import type { Appended } from './decided.ts';
import { entryToRow, readEntries } from './entries.ts';
import { stateOf } from './folded-jobs.ts';
import { jobToRow } from './job.ts';
import { putPull } from './shelf.ts';

/** Stores a new job with the entries that it has so far; the same job twice is stored once. */
export async function openJobIn(
  { engine, folded, statements }: Appender,
  entries: readonly Entry[],
): Promise<Result<Appended>> {
  const gap = gapIn(entries);
  if (gap) return gap;
  const state = stateOf(entries);
  const result = await transact(engine, async (trx): Promise<Result<Appended>> => {
    const stored = await readEntries(trx, state.jobId, { limit: entries.length });
    if (stored.length > 0) return sameJob(stored, entries);
    await trx.insertInto('jobs').values(jobToRow(state)).execute();
    const changeOf = pullChanges();
    for (const entry of entries) {
      await statements.insertEntry(trx, entryToRow(entry));
      const change = changeOf(entry);
      if (change) await putPull(trx, statements, change);
    }
    return ok({ entries, already: false });
  });
  if (result.ok && !result.value.already) folded.keep(state);
  return result;
}

/** The chain must be one: what is checked here is the form, the hashes are the verifier's. */
function gapIn(entries: readonly Entry[]): ReturnType<typeof failed> | undefined {
  if (entries[0]?.body.kind !== 'opened')
    return invalid('entries', 'a job begins with its sheet', 'an entry of the kind opened');
  const at = entries.findIndex((entry, index) => !follows(entry, entries[index - 1]));
  return at < 0
    ? undefined
    : invalid(`entries[${at}]`, 'this entry does not follow the one before', 'the next link of the chain');
}

function follows(entry: Entry, before: Entry | undefined): boolean {
  if (!before) return entry.seq === 1;
  return entry.jobId === before.jobId && entry.seq === before.seq + 1 && entry.previousHash === before.hash;
}

function sameJob(stored: readonly Entry[], entries: readonly Entry[]): Result<Appended> {
  if (stored.length === entries.length && stored.at(-1)?.hash === entries.at(-1)?.hash)
    return ok({ entries: stored, already: true });
  return failed({
    kind: 'conflict',
    message: 'Another job is stored under this identity; give the new job one of its own.',
    current: stored[0],
  });
}
