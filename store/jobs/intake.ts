import type { Failure, Result } from '@clampwright/core/failure';
import type { Entry, EntryDraft, JobState } from '@clampwright/core/record';
import { type Appended, decideNext, type Known, lookUp } from './decided.ts';
import type { Shelf } from './shelf.ts';
import { type PackedTraces, packAll, type Traces } from './traces.ts';

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
   * `all-or-nothing`: one transaction for all at the end; one refusal, or somebody else's work on the job meanwhile,
   * and nothing is kept.
   * `nothing`: a rehearsal.
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

export const NOTHING: Tally = { added: 0, already: 0, refused: 0, kept: true };

export interface TakenBatch<Item> {
  readonly state: JobState;
  readonly outcomes: readonly (readonly [Item, Outcome])[];
}

/** The traces of a batch as they will be stored. */
export const packedOf = <Item>(batch: readonly Item[], { traces }: Pick<Intake<Item>, 'traces'>): PackedTraces =>
  packAll(batch.flatMap((item) => Object.entries(traces?.(item) ?? {})));

/** Decides a batch, one item after the other, and puts away what comes of it. */
export async function takeBatch<Item>(
  shelf: Shelf,
  before: JobState,
  batch: readonly Item[],
  { decide, lookUp: idsOf = () => [] }: Intake<Item>,
  traces: PackedTraces,
): Promise<TakenBatch<Item>> {
  const seen = new Map<string, Entry | undefined>();
  await lookUp({ shelf, seen }, batch.flatMap(idsOf));
  const outcomes: (readonly [Item, Outcome])[] = [];
  let state = before;
  for (const item of batch) {
    const asked = { lookUp: idsOf(item), traces };
    const decided = await decideNext({ shelf, state, seen }, asked, (current, known) => decide(current, item, known));
    if (decided.ok) {
      state = decided.value.state;
      await shelf.put(decided.value.shelved);
    }
    outcomes.push([item, outcomeOf(decided)]);
  }
  return { state, outcomes };
}

function outcomeOf(appended: Result<Appended>): Outcome {
  if (!appended.ok) return { kind: 'refused', failure: appended.failure };
  return { kind: appended.value.already ? 'already' : 'added', entries: appended.value.entries };
}

/** Tells of every item and counts it. */
export function told<Item>(tally: Tally, { outcomes }: TakenBatch<Item>, intake: Intake<Item>): Tally {
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
