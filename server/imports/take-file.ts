import { failed, ok, type Result } from '@clampwright/core/failure';
import type { EntryDraft, JobState } from '@clampwright/core/record';
import { type FileContext, type Outcome as Line, type Mapping, readPulls } from '@clampwright/intake/file';
import type { Intake, Known } from '@clampwright/store';
import type { IMPORT_MODES, ImportResult, Person } from '../api/contract.ts';
import type { Outcome } from '../api/problem.ts';
import type { Deps } from '../deps.ts';
import { decided, mayEnter, namedIn } from '../door.ts';
import { type Learned, learnedForAll } from '../learned-traces.ts';
import { inBatches } from './batches.ts';
import { importTally } from './tally.ts';

export interface FileTaking {
  readonly jobId: string;
  readonly bytes: AsyncIterable<Uint8Array>;
  readonly mapping: Mapping;
  readonly mode: (typeof IMPORT_MODES)[number];
  /** Joint of lines that name none; of a job with one joint that one. */
  readonly jointRef?: string | undefined;
  readonly fileName?: string | undefined;
  readonly by: Person;
}

/** What the taking of a file needs of the world; the command line has it as well. */
export type TakingDeps = Pick<Deps, 'store' | 'now' | 'random'>;

export interface FileTaken {
  readonly result: ImportResult;
  /** Entries after this one are new; undefined when nothing was kept. */
  readonly afterSeq: number | undefined;
}

const KEEP = {
  preview: 'nothing',
  'all-or-nothing': 'all-or-nothing',
  'good-lines': 'each-batch',
} as const satisfies Record<FileTaking['mode'], Intake<Line>['keep']>;

/** Takes the pulls of a file into a job through the same door as all others, with bounded memory. */
export async function takeFile(deps: TakingDeps, taking: FileTaking): Promise<Outcome<FileTaken>> {
  const allowed = await mayEnter(deps, taking.jobId, taking);
  if (!allowed.ok) return allowed;
  const context = await contextOf(deps, taking);
  if (!context.ok) return context;
  const tally = importTally();
  const lines = readPulls(taking.bytes, taking.mapping, context.value);
  const learned = new Map<string, Learned>();
  const batches = learning(deps, taking.jobId, inBatches(lines), learned);
  const taken = await deps.store.jobs.appendMany(taking.jobId, batches, {
    decide: (state, line, known) => decidedFor(deps, state, line, known, taking, learned),
    lookUp: (line) => (line.kind === 'pull' ? namedIn(line.pull) : []),
    traces: (line) => (line.kind === 'pull' && line.pull.trace ? { [line.pull.id]: line.pull.trace } : {}),
    told: tally.tell,
    keep: KEEP[taking.mode],
  });
  if (!taken.ok) return taken;
  const first = taken.value.kept ? tally.firstAdded() : undefined;
  return ok({ result: tally.result(taken.value), afterSeq: first && first.seq - 1 });
}

/**
 * Looks up what other jobs have taught of each joint before its first trace is decided; later batches find it there.
 * What cannot be looked up teaches nothing: the medium's failure is told by the store itself as it takes the batch.
 */
async function* learning(
  deps: TakingDeps,
  jobId: string,
  batches: AsyncIterable<readonly Line[]>,
  learned: Map<string, Learned>,
): AsyncGenerator<readonly Line[]> {
  for await (const batch of batches) {
    const unknown = batch.flatMap((line) =>
      line.kind === 'pull' && !learned.has(line.pull.jointRef) ? line.pull : [],
    );
    const found = await learnedForAll(deps, jobId, unknown);
    if (found.ok) for (const [ref, figures] of found.value) learned.set(ref, figures);
    yield batch;
  }
}

/** A line that could not be read counts like a pull that was refused. */
function decidedFor(
  deps: TakingDeps,
  state: JobState,
  line: Line,
  known: Known,
  asking: FileTaking,
  learned: ReadonlyMap<string, Learned>,
): Result<readonly EntryDraft[]> {
  if (line.kind === 'pull')
    return decided(deps, state, line.pull, known, asking, { learned: learned.get(line.pull.jointRef) });
  return failed({
    kind: 'invalid',
    field: line.field,
    message: line.message,
    expected: 'a line that the mapping can read',
  });
}

async function contextOf(
  { store, now }: TakingDeps,
  { jobId, jointRef, fileName }: FileTaking,
): Promise<Result<FileContext>> {
  const state = await store.jobs.state(jobId);
  if (!state.ok) return state;
  const wrenches = await store.wrenches.list();
  if (!wrenches.ok) return wrenches;
  const { joints } = state.value.sheet;
  const named = joints.flatMap(
    ({ ref, label }) =>
      [
        [label, ref],
        [ref, ref],
      ] as const,
  );
  return ok({
    jobId,
    jointRef: jointRef ?? (joints.length === 1 ? joints[0]?.ref : undefined),
    joints: new Map(named),
    wrenches: new Map(wrenches.value.map(({ serial, id }) => [serial, id])),
    readAt: now().toISOString(),
    fileName,
  });
}
