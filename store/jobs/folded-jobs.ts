import { type Entry, fold, foldOn, type JobState } from '@clampwright/core/record';
import type { Database } from '../engine.ts';
import { entriesBetween } from './entries.ts';
import type { AppendStatements } from './statements.ts';

/**
 * Far above what a joint's rework rule allows; only large imports reach it. Never lower it: a pull that was
 * mended while in sight must be in sight when its job is folded again.
 */
const FOLDING = { attemptsKept: 50 } as const;
/** What the kept states may weigh together, see `weightOf`, a kilobyte each at most. A count of jobs would bound no memory. */
const MOST_KEPT = 60_000;
/** A sheet weighs about as much as so many cells. */
const SHEET = 30;

/** The state after one more entry, as every decision of the store sees it. */
export const stateAfter = (state: JobState, entry: Entry): JobState => foldOn(state, entry, FOLDING);

/** The state of a job from its entries, which begin with `opened`. */
export const stateOf = (entries: readonly Entry[]): JobState => fold(entries, FOLDING);

/** Folded states of the jobs that were last worked on, so that an append reads no entries again. */
export class FoldedJobs {
  readonly #states = new Map<string, JobState>();
  readonly #headOf: AppendStatements['headOf'];
  #weight = 0;

  constructor({ headOf }: AppendStatements) {
    this.#headOf = headOf;
  }

  /** Only what is committed may be kept. */
  keep(state: JobState): void {
    this.#forget(state.jobId);
    this.#states.set(state.jobId, state);
    this.#weight += weightOf(state);
    for (const oldest of this.#states.keys()) {
      if (this.#weight <= MOST_KEPT || oldest === state.jobId) break;
      this.#forget(oldest);
    }
  }

  #forget(jobId: string): void {
    const state = this.#states.get(jobId);
    if (!state) return;
    this.#states.delete(jobId);
    this.#weight -= weightOf(state);
  }

  forgetAll(): void {
    this.#states.clear();
    this.#weight = 0;
  }

  /**
   * The state of a job as the database has it now. Another process may have appended since, so the head of the
   * chain is compared and what is missing is folded on.
   *
   * @returns undefined when there is no such job
   */
  async current(db: Database, jobId: string): Promise<JobState | undefined> {
    const [head] = await this.#headOf(db, { jobId });
    if (!head) return undefined;
    const kept = this.#states.get(jobId);
    if (kept?.lastSeq === head.last_seq && kept.lastHash === head.last_hash) return kept;
    const state = kept && (await foldOnTo(db, jobId, head.last_seq, kept));
    if (state?.lastHash === head.last_hash) return state;
    const anew = await foldOnTo(db, jobId, head.last_seq);
    if (anew?.lastHash !== head.last_hash)
      throw new Error(`the entries of job ${jobId} do not lead to the head of its chain`);
    return anew;
  }
}

/** Cells and the attempts that they can remember: what a state takes of memory grows with them. */
function weightOf({ joints, lastSeq }: JobState): number {
  const cells = joints.reduce((sum, joint) => sum + joint.steps.length * (joint.cells[0]?.length ?? 0), SHEET);
  return cells + Math.min(lastSeq, FOLDING.attemptsKept * cells);
}

/** Folds on, or from the first entry, up to an entry; undefined when the chain does not go on from what was kept. */
export async function foldOnTo(
  db: Database,
  jobId: string,
  lastSeq: number,
  kept?: JobState,
): Promise<JobState | undefined> {
  let state = kept;
  for await (const entry of entriesBetween(db, jobId, kept?.lastSeq ?? 0, lastSeq)) {
    if (state && entry.previousHash !== state.lastHash) return undefined;
    state = state ? stateAfter(state, entry) : stateOf([entry]);
  }
  return state;
}
