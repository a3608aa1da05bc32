import { type Failure, ok, type Result } from '@clampwright/core/failure';
import type { Entry, EntryDraft, JobState } from '@clampwright/core/record';
import { transact } from '../engine.ts';
import { type Appender, noJob } from './append.ts';
import { type Appended, type Appending, appendDecided, type Known, lookUp, type Traces } from './decided.ts';
import { movedJob } from './job.ts';
import { insertTraces } from './traces.ts';

/** What became of one item. */
export type Outcome =
  | { readonly kind: 'added'; readonly entries: readonly Entry[] }
  | { readonly kind: 'already'; readonly entries: readonly Entry[] }
  | { readonly kind: 'refused'; readonly failure: Failure };

/** How a long list of items is taken in. */
export interface Intake<Item> {
  readonly decide: (state: JobState, item: Item, known: Known) => Result<readonly EntryDraft[]>;
  /** Identities that `decide` wants to see if they are stored in this job: the item's own first. */
  readonly lookUp?: (item: Item) => readonly string[];
  readonly traces?: (item: Item) => Traces;
  /** Told of every item in its order, after its batch was decided; where nothing is kept in the end, what would have become of it. */
  readonly told?: (item: Item, outcome: Outcome) => void;
  /**
   * `each-batch` (the rule): one transaction a batch; what was refused stays out, the rest is kept.
   * `all-or-nothing`: one transaction for all; one refusal and nothing is kept.
   * `nothing`: a rehearsal. Both of the latter keep other writers waiting until the end.
   */
  readonly keep?: 'each-batch' | 'all-or-nothing' | 'nothing';
}

export interface Tally {
  readonly added: number;
  readonly already: number;
  readonly refused: number;
  /** False when everything was rolled back: `added` then says what would have been added. */
  readonly kept: boolean;
}

const NOTHING: Tally = { added: 0, already: 0, refused: 0, kept: true };

/**
 * Takes in a long list, one item decided after the other on the state that the ones before have left.
 * Memory is bounded by the batch. A failure of the medium ends it; batches kept until then stay.
 */
export function appendMany<Item>(
  at: Appender,
  jobId: string,
  batches: AsyncIterable<readonly Item[]>,
  intake: Intake<Item>,
): Promise<Result<Tally>> {
  const { keep = 'each-batch' } = intake;
  return keep === 'each-batch' ? keepEachBatch(at, jobId, batches, intake) : keepTogether(at, jobId, batches, intake);
}

async function keepEachBatch<Item>(
  at: Appender,
  jobId: string,
  batches: AsyncIterable<readonly Item[]>,
  intake: Intake<Item>,
): Promise<Result<Tally>> {
  let tally = NOTHING;
  for await (const batch of batches) {
    const taken = await transact(at.engine, async (trx) => {
      const state = await at.folded.current(trx, jobId);
      return state ? ok(await takeBatch({ ...at, trx }, state, batch, intake)) : noJob(jobId);
    });
    if (!taken.ok) return taken;
    at.folded.keep(taken.value.state);
    tally = told(tally, taken.value, intake);
    await letOthersIn();
  }
  return ok(tally);
}

/** Long enough for other processes that ask for the lock every few milliseconds. */
const letOthersIn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));

async function keepTogether<Item>(
  at: Appender,
  jobId: string,
  batches: AsyncIterable<readonly Item[]>,
  intake: Intake<Item>,
): Promise<Result<Tally>> {
  const result = await transact(
    at.engine,
    async (trx) => {
      let state = await at.folded.current(trx, jobId);
      if (!state) return noJob(jobId);
      let tally = NOTHING;
      for await (const batch of batches) {
        const taken: TakenBatch<Item> = await takeBatch({ ...at, trx }, state, batch, intake);
        state = taken.state;
        tally = told(tally, taken, intake);
      }
      return ok({ ...tally, kept: intake.keep !== 'nothing' && tally.refused === 0, state });
    },
    ({ kept }) => kept,
  );
  if (!result.ok) return result;
  const { state, ...tally } = result.value;
  if (tally.kept) at.folded.keep(state);
  return ok(tally);
}

interface TakenBatch<Item> {
  readonly state: JobState;
  readonly outcomes: readonly (readonly [Item, Outcome])[];
}

async function takeBatch<Item>(
  at: Pick<Appending, 'trx' | 'statements'>,
  before: JobState,
  batch: readonly Item[],
  intake: Intake<Item>,
): Promise<TakenBatch<Item>> {
  const { lookUp: idsOf = () => [] } = intake;
  const seen = new Map<string, Entry | undefined>();
  await lookUp({ ...at, seen }, batch.flatMap(idsOf));
  const outcomes: (readonly [Item, Outcome])[] = [];
  let state = before;
  for (const item of batch) {
    const appended = await appendDecided({ ...at, state, seen }, idsOf(item), (current, known) =>
      intake.decide(current, item, known),
    );
    if (appended.ok) {
      state = appended.value.state;
      await insertTraces(at.trx, appended.value, intake.traces?.(item));
    }
    outcomes.push([item, outcomeOf(appended)]);
  }
  if (state !== before) await at.statements.moveJob(at.trx, movedJob(state));
  return { state, outcomes };
}

function outcomeOf(appended: Result<Appended>): Outcome {
  if (!appended.ok) return { kind: 'refused', failure: appended.failure };
  return { kind: appended.value.already ? 'already' : 'added', entries: appended.value.entries };
}

function told<Item>(tally: Tally, { outcomes }: TakenBatch<Item>, intake: Intake<Item>): Tally {
  const counts = { added: 0, already: 0, refused: 0 };
  for (const [item, outcome] of outcomes) {
    counts[outcome.kind] += 1;
    intake.told?.(item, outcome);
  }
  return {
    added: tally.added + counts.added,
    already: tally.already + counts.already,
    refused: tally.refused + counts.refused,
    kept: tally.kept,
  };
}
