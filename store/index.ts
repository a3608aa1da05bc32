import { ok, type Result } from '@clampwright/core/failure';
import { openSqlite } from './sqlite/open.ts';
import { type Store, storeOn } from './store.ts';

export type { Care } from './care.ts';
export type { Demo, DemoState } from './demo.ts';
export type { Counts, Devices, KeptDevice } from './devices.ts';
export type { AppendOptions } from './jobs/append.ts';
export type { Appended, Decide, Known } from './jobs/decided.ts';
export type { EntryRange } from './jobs/entries.ts';
export type { Jobs } from './jobs/index.ts';
export type { Intake, Outcome, Tally } from './jobs/intake.ts';
export type { JobSummary, Retorque } from './jobs/job.ts';
export type { Changes } from './jobs/reading.ts';
export type { Traces } from './jobs/traces.ts';
export type { JointHistory, JointSummary, Joints } from './joints.ts';
export type { LineDescriptions } from './line-descriptions.ts';
export type { Log } from './log.ts';
export type { Mappings, NamedMapping } from './mappings.ts';
export type { NewPerson, People, Person, PersonWithPin } from './people.ts';
export type { Pulls, Span } from './pulls/index.ts';
export type { References } from './references.ts';
export type { Adding, Register } from './register.ts';
export type { Session, Sessions } from './sessions.ts';
export type { Settings } from './settings.ts';
export { sha256 } from './sha256.ts';
export type { SigningKey } from './signing-key.ts';
export type { Store } from './store.ts';
export type { Whereabouts, Wrenches } from './wrenches.ts';

/**
 * Opens the store of a data folder; folder and database are made where they are missing.
 *
 * @returns `unavailable`, with what to do, where the folder cannot be written, the disk is full, the file is not
 *          ours, is damaged, or was written by a newer version; then nothing was changed
 */
export async function openStore(folder: string): Promise<Result<Store>> {
  const engine = await openSqlite(folder);
  return engine.ok ? ok(storeOn(engine.value, folder)) : engine;
}
