import { say } from '../language/say.ts';
import type { Language } from '../quantity/language.ts';
import type { Tool } from '../wrench/wrench.ts';
import { canonical } from './canonical.ts';
import type { Sha256 } from './digest.ts';
import type { CellRef, Entry, EntryBody, JobJoint, JobSheet, PersonRef } from './entry.ts';
import type { RecordFile } from './file.ts';
import { fold } from './fold.ts';
import type { JobState } from './state.ts';
import { type RecordFault, recordFaults } from './verify.ts';

/** An entry of one kind. */
export type EntryOf<Kind extends EntryBody['kind']> = Entry & { readonly body: Extract<EntryBody, { kind: Kind }> };

/** A wrench with what was put on it, under the short name that the tables use, and each time it was taken. */
export interface TaggedTool {
  readonly tag: string;
  readonly tool: Tool;
  readonly taken: readonly EntryOf<'tool-taken'>[];
}

/** A record read through once: everything that the parts of its document are made from. */
export interface RecordFacts {
  readonly file: RecordFile;
  readonly language: Language;
  readonly entries: readonly Entry[];
  readonly last: Entry;
  readonly sheet: JobSheet;
  readonly state: JobState;
  readonly people: readonly { readonly tag: string; readonly person: PersonRef }[];
  readonly tools: readonly TaggedTool[];
  /** What in the record is not as it was sealed. */
  readonly faults: readonly RecordFault[];
}

/** @throws when the entries do not begin with `opened` */
export function recordFacts(file: RecordFile, language: Language, sha256?: Sha256): RecordFacts {
  const { entries } = file;
  const state = fold(entries);
  return {
    file,
    language,
    entries,
    last: entries.at(-1)!,
    sheet: state.sheet,
    state,
    people: people(entries),
    tools: tools(entries),
    faults: recordFaults(file, sha256),
  };
}

export const isOf =
  <Kind extends EntryBody['kind']>(kind: Kind) =>
  (entry: Entry): entry is EntryOf<Kind> =>
    entry.body.kind === kind;

function people(entries: readonly Entry[]): RecordFacts['people'] {
  const found = new Map<string, PersonRef>();
  for (const { by, body } of entries) {
    for (const person of 'exception' in body && body.exception ? [by, body.exception.by] : [by]) {
      const key = canonical(person);
      if (!found.has(key)) found.set(key, person);
    }
  }
  return [...found.values()].map((person, index) => ({ tag: `P${index + 1}`, person }));
}

function tools(entries: readonly Entry[]): readonly TaggedTool[] {
  const taken = new Map<string, EntryOf<'tool-taken'>[]>();
  for (const entry of entries.filter(isOf('tool-taken'))) {
    const key = canonical(entry.body.tool);
    taken.set(key, [...(taken.get(key) ?? []), entry]);
  }
  return [...taken.values()].map((times, index) => ({ tag: `W${index + 1}`, tool: times[0]!.body.tool, taken: times }));
}

/** The tool that made a pull: the one last taken with that wrench for that joint before it. */
export function toolOfPull({ tools }: RecordFacts, entry: EntryOf<'pull'>): TaggedTool | undefined {
  const { wrenchId, cell } = entry.body.pull;
  const fits = (taken: EntryOf<'tool-taken'>) =>
    taken.seq < entry.seq && taken.body.tool.wrench.id === wrenchId && taken.body.jointRefs.includes(cell.jointRef);
  const lastTaken = (tool: TaggedTool) => tool.taken.findLast(fits)?.seq ?? 0;
  const candidates = tools.filter((tool) => lastTaken(tool) > 0);
  return candidates.toSorted((a, b) => lastTaken(b) - lastTaken(a))[0];
}

export const tagOfPerson = ({ people }: RecordFacts, person: PersonRef): string =>
  people.find((known) => canonical(known.person) === canonical(person))?.tag ?? person.name;

export const sayJoint = ({ ref, label }: JobJoint): string => `${ref} ${label}`;

export const sayCell = ({ language }: RecordFacts, { jointRef, stage, round, position }: CellRef): string =>
  say(language, 'record.cell', { joint: jointRef, stage, round, position });

/** An instant for a table cell, UTC as its column says: `2026-03-04 06:30:20`, not to be broken. */
export const shortTime = (iso: string): string => `${iso.slice(0, 10)}\u00a0${iso.slice(11, 19)}`;
