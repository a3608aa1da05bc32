import type { Device } from '@clampwright/core/device';
import { type Failure, failed } from '@clampwright/core/failure';
import type { ToldPull } from '@clampwright/core/line';
import type { IncomingPull } from '@clampwright/core/record';
import type { Verdict } from '@clampwright/core/verdict';
import type { Outcome as Entered, Known } from '@clampwright/store';
import { problemOf, type Refusal } from '../api/problem.ts';
import type { Deps } from '../deps.ts';
import { decided, mayEnter, namedIn } from '../door.ts';
import { learnedForAll } from '../learned-traces.ts';
import { benchFor, tellReading } from '../wrenches/bench.ts';
import { type PlacedPull, placePull } from './place.ts';

/** What became of a pull that a device told. */
export type Taken =
  | { readonly state: 'added' | 'already'; readonly id: string; readonly verdict: Verdict }
  /** It went to the calibration that listens. */
  | { readonly state: 'compared'; readonly id: string | undefined }
  | { readonly state: 'refused'; readonly id?: string | undefined; readonly failure: Refusal };

/**
 * Takes pulls of a device through the door, in their order. Told as taken only once they are stored durably: pulls of
 * one job that follow each other share a transaction. Those of a wrench or device that a calibration listens to go there.
 */
export async function takePulls(deps: Deps, device: Device, pulls: readonly ToldPull[]): Promise<readonly Taken[]> {
  const taken: Taken[] = [];
  let run: PlacedPull[] = [];
  const flush = async (): Promise<void> => {
    if (run.length > 0) taken.push(...(await takeRun(deps, run)));
    run = [];
  };
  for (const told of pulls) {
    const bench = await benchFor(deps, device, told);
    if (bench !== undefined) {
      tellReading(deps, bench, deps.ports.inHand(bench), told);
      await flush();
      taken.push({ state: 'compared', id: told.id });
      continue;
    }
    const placed = placePull(deps, device, told);
    const [first] = run;
    if (!placed.ok || (first && !isSameWork(first, placed.value))) await flush();
    if (placed.ok) run.push(placed.value);
    else taken.push({ state: 'refused', failure: placed.failure });
  }
  await flush();
  for (const { failure } of taken.filter((one) => one.state === 'refused')) {
    deps.logger.warn({ device: device.name, detail: problemOf(failure).detail }, 'pull refused');
  }
  return taken;
}

const isSameWork = (a: PlacedPull, b: PlacedPull): boolean =>
  a.taken.jobId === b.taken.jobId && a.taken.by.id === b.taken.by.id;

/** Takes pulls of one job, made by one person, in one transaction. */
async function takeRun(deps: Deps, run: readonly PlacedPull[]): Promise<readonly Taken[]> {
  const [first] = run;
  if (!first) return [];
  const { jobId, by } = first.taken;
  const all = (failure: Refusal): readonly Taken[] => run.map(() => ({ state: 'refused', failure }));
  const allowed = await mayEnter(deps, jobId, { by });
  if (!allowed.ok) return all(allowed.failure);
  const learned = await learnedForAll(
    deps,
    jobId,
    run.map(({ pull }) => pull),
  );
  if (!learned.ok) return all(learned.failure);
  const outcomes: Taken[] = [];
  let afterSeq: number | undefined;
  const kept = await deps.store.jobs.appendMany(jobId, once(run), {
    decide: (state, placed, known) => {
      const { pull, taken, early } = placed;
      if (early && !known.has(pull.id)) return failed(early);
      const found = { learned: learned.value.get(pull.jointRef) };
      return decided(deps, state, asToldBefore(placed, known), known, { by: taken.by }, found);
    },
    lookUp: ({ pull }) => namedIn(pull),
    traces: ({ pull }) => (pull.trace ? { [pull.id]: pull.trace } : {}),
    told: (_, outcome) => {
      if (outcome.kind === 'added') afterSeq ??= (outcome.entries[0]?.seq ?? 1) - 1;
      outcomes.push(takenFrom(outcome));
    },
  });
  if (!kept.ok) return all(kept.failure);
  if (afterSeq !== undefined) deps.listeners.tell(jobId, { kind: 'entries', afterSeq });
  return outcomes;
}

/** A pull without a time, sent again, is the one that is stored, though it arrives later. */
function asToldBefore({ pull, isTimed }: PlacedPull, known: Known): IncomingPull {
  const stored = known.get(pull.id)?.body;
  return isTimed || stored?.kind !== 'pull' ? pull : { ...pull, takenAt: stored.pull.takenAt };
}

async function* once<T>(items: readonly T[]): AsyncGenerator<readonly T[]> {
  yield items;
}

function takenFrom(outcome: Entered): Taken {
  if (outcome.kind === 'refused') return { state: 'refused', failure: outcome.failure };
  const entry = outcome.entries[0];
  if (entry?.body.kind !== 'pull') return { state: 'refused', failure: NO_PULL };
  return { state: outcome.kind, id: entry.id, verdict: entry.body.judgement.verdict };
}

const NO_PULL: Failure = {
  kind: 'conflict',
  message: 'Another entry is stored under the identity of this pull; give it one of its own.',
  current: null,
};
