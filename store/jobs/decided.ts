import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical, chain, type Entry, type EntryDraft, type JobState, type Trace } from '@clampwright/core/record';
import { stateAfter } from './folded-jobs.ts';
import type { Shelf } from './shelf.ts';

/** Entries that are stored under the identities that were looked up, by identity. */
export type Known = ReadonlyMap<string, Entry>;

/** Decides what is appended, given the state and what is stored; no drafts mean that it is stored already. */
export type Decide = (state: JobState, known: Known) => Result<readonly EntryDraft[]>;

/** Traces by the identity of their pull. */
export type Traces = Readonly<Record<string, Trace>>;

export interface Appended {
  readonly entries: readonly Entry[];
  /** The same had been stored before; nothing was added. */
  readonly already: boolean;
}

/** What is handed over with a decision. */
export interface Asked {
  /** Identities that `decide` wants to see if they are stored in this job: the command's own first. */
  readonly lookUp?: readonly string[];
  /** Traces of the pulls that may come of it. */
  readonly traces?: Traces;
}

/** A job while it is appended to. */
export interface Appending {
  readonly shelf: Shelf;
  readonly state: JobState;
  /** Every identity that was looked up, with its entry, whatever job that is in. */
  readonly seen: Map<string, Entry | undefined>;
}

/** Looks identities up once; what is added meanwhile is noted as it is added. */
export async function lookUp({ shelf, seen }: Omit<Appending, 'state'>, ids: readonly string[]): Promise<void> {
  const unseen = ids.filter((id) => !seen.has(id));
  if (unseen.length === 0) return;
  for (const id of unseen) seen.set(id, undefined);
  for (const entry of await shelf.find(unseen)) seen.set(entry.id, entry);
}

/** Decides and puts away; the state moves on only in what is returned. */
export async function appendDecided(
  at: Appending,
  { lookUp: asked = [], traces = {} }: Asked,
  decide: Decide,
): Promise<Result<Appended & { readonly state: JobState }>> {
  await lookUp(at, asked);
  const { state } = at;
  const known = new Map(asked.flatMap((id) => ownEntry(at, id)));
  const drafts = decide(state, known);
  if (!drafts.ok) return drafts;
  if (drafts.value.length === 0) return ok({ entries: [...known.values()].slice(0, 1), already: true, state });
  await lookUp(
    at,
    drafts.value.map(({ id }) => id),
  );
  const stored = drafts.value.flatMap(({ id }) => at.seen.get(id) ?? []);
  if (stored.length > 0) return sameAgain(state, drafts.value, stored);
  return ok({ ...(await putDrafts(at, drafts.value, traces)), already: false });
}

function ownEntry({ seen, state }: Appending, id: string): readonly (readonly [string, Entry])[] {
  const entry = seen.get(id);
  return entry?.jobId === state.jobId ? [[id, entry]] : [];
}

async function putDrafts({ shelf, state, seen }: Appending, drafts: readonly EntryDraft[], traces: Traces) {
  const entries = chain(state, drafts);
  for (const entry of entries) {
    await shelf.put(entry, traceOf(entry, traces));
    seen.set(entry.id, entry);
  }
  return { entries, state: entries.reduce(stateAfter, state) };
}

function traceOf({ id, body }: Entry, traces: Traces): Trace | undefined {
  if (body.kind !== 'pull' || !body.pull.trace) return undefined;
  const trace = traces[id];
  if (!trace) throw new Error(`pull ${id} names a trace that was not handed over`);
  return trace;
}

/** The same identities may come again with the same content; anything else is two things under one name. */
function sameAgain(
  state: JobState,
  drafts: readonly EntryDraft[],
  stored: readonly Entry[],
): Result<Appended & { readonly state: JobState }> {
  const same =
    stored.length === drafts.length && drafts.every((draft, index) => isSame(state.jobId, draft, stored[index]!));
  if (same) return ok({ entries: stored, already: true, state });
  const [first] = stored;
  return failed({
    kind: 'conflict',
    message: `Something else is stored under the identity ${first?.id}; give the new entry one of its own.`,
    current: first,
  });
}

const isSame = (jobId: string, draft: EntryDraft, stored: Entry): boolean =>
  stored.jobId === jobId && stored.by.id === draft.by.id && canonical(stored.body) === canonical(draft.body);
