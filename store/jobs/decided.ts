import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical, type Entry, type EntryDraft, type JobState, links } from '@clampwright/core/record';
import { pullChanges } from '../pulls/tools-taken.ts';
import { sha256 } from '../sha256.ts';
import { stateAfter } from './folded-jobs.ts';
import type { Shelf, Shelved } from './shelf.ts';
import type { PackedTraces } from './traces.ts';

/** Entries that are stored under the identities that were looked up, by identity. */
export type Known = ReadonlyMap<string, Entry>;

/** Decides what is appended, given the state and what is stored; no drafts mean that it is stored already. */
export type Decide = (state: JobState, known: Known) => Result<readonly EntryDraft[]>;

export interface Appended {
  readonly entries: readonly Entry[];
  /** The same had been stored before; nothing was added. */
  readonly already: boolean;
}

/** What a decision comes to, and what is still to be put away. */
export interface Decided extends Appended {
  readonly state: JobState;
  readonly shelved: readonly Shelved[];
}

/** What is handed over with a decision. */
export interface Asked {
  /** Identities that `decide` wants to see if they are stored in this job: the command's own first. */
  readonly lookUp?: readonly string[];
  /** Traces of the pulls that may come of it. */
  readonly traces?: PackedTraces;
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

/** Decides one thing after what was decided before; nothing is put away yet. */
export async function decideNext(
  at: Appending,
  { lookUp: asked = [], traces = NO_TRACES }: Asked,
  decide: Decide,
): Promise<Result<Decided>> {
  const { state, seen } = at;
  const isUnseen = (id: string): boolean => !seen.has(id);
  // what was looked up with its batch is not waited for again: a promise for each line costs more than judging it
  if (asked.some(isUnseen)) await lookUp(at, asked);
  const known = new Map(asked.flatMap((id) => ownEntry(at, id)));
  const drafts = decide(state, known);
  if (!drafts.ok) return drafts;
  if (drafts.value.length === 0) return ok(sameAsBefore(state, [...known.values()].slice(0, 1)));
  const ids = drafts.value.map(({ id }) => id);
  if (ids.some(isUnseen)) await lookUp(at, ids);
  const stored = ids.flatMap((id) => seen.get(id) ?? []);
  return stored.length > 0 ? sameAgain(state, drafts.value, stored) : ok(linked(at, drafts.value, traces));
}

function ownEntry({ seen, state }: Appending, id: string): readonly (readonly [string, Entry])[] {
  const entry = seen.get(id);
  return entry?.jobId === state.jobId ? [[id, entry]] : [];
}

function linked({ state, seen }: Appending, drafts: readonly EntryDraft[], traces: PackedTraces): Decided {
  const changeOf = pullChanges(state.joints.map(({ ref, tools }) => [ref, tools] as const));
  const shelved = links(state, drafts, sha256).map((link) => ({
    link,
    samples: samplesOf(link.entry, traces),
    pull: changeOf(link.entry),
  }));
  const entries = shelved.map(({ link }) => link.entry);
  for (const entry of entries) seen.set(entry.id, entry);
  return { entries, already: false, state: entries.reduce(stateAfter, state), shelved };
}

const sameAsBefore = (state: JobState, entries: readonly Entry[]): Decided => ({
  entries,
  already: true,
  state,
  shelved: [],
});

const NO_TRACES: PackedTraces = new Map();

function samplesOf({ id, body }: Entry, traces: PackedTraces): Uint8Array | undefined {
  if (body.kind !== 'pull' || !body.pull.trace) return undefined;
  const samples = traces.get(id);
  if (!samples) throw new Error(`pull ${id} names a trace that was not handed over`);
  return samples;
}

/** The same identities may come again with the same content; anything else is two things under one name. */
function sameAgain(state: JobState, drafts: readonly EntryDraft[], stored: readonly Entry[]): Result<Decided> {
  const same =
    stored.length === drafts.length && drafts.every((draft, index) => isSame(state.jobId, draft, stored[index]!));
  if (same) return ok(sameAsBefore(state, stored));
  const [first] = stored;
  return failed({
    kind: 'conflict',
    message: `Something else is stored under the identity ${first?.id}; give the new entry one of its own.`,
    current: first,
  });
}

const isSame = (jobId: string, draft: EntryDraft, stored: Entry): boolean =>
  stored.jobId === jobId && stored.by.id === draft.by.id && canonical(stored.body) === canonical(draft.body);
