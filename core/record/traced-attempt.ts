import { type EntryOf, isOf, type RecordFacts } from './document-facts.ts';
import type { Judgement } from './entry.ts';
import type { Attempt, CellState } from './state.ts';

/** An attempt with the pull that it was, and the judgement that it got where it stands. */
export interface TracedAttempt {
  readonly attempt: Attempt;
  readonly pull: EntryOf<'pull'>;
  readonly judgement: Judgement;
  /** Set when the pull came here from another cell. */
  readonly arrival: EntryOf<'pull-moved'> | undefined;
}

/** The attempts of a cell, first to last, none left out. */
export const attemptsOf = (facts: RecordFacts, cell: CellState): readonly TracedAttempt[] =>
  cell.attempts.map((attempt) => traced(facts, attempt));

function traced({ entries }: RecordFacts, attempt: Attempt): TracedAttempt {
  const entry = entries[attempt.seq - 1];
  if (entry && isOf('pull')(entry))
    return { attempt, pull: entry, judgement: entry.body.judgement, arrival: undefined };
  const pull = entries.find(({ id }) => id === attempt.pullId);
  if (!entry || !pull || !isOf('pull-moved')(entry) || !isOf('pull')(pull))
    throw new Error('an attempt without its entry');
  return { attempt, pull, judgement: entry.body.judgement, arrival: entry };
}
