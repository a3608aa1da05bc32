import type { TraceFigures } from '../trace/expectation.ts';
import type { Tool } from '../wrench/wrench.ts';
import type { Sha256 } from './digest.ts';
import type { Entry, PersonRef, Pull } from './entry.ts';

/** What a decision needs of the world: who, when, and what has been looked up. */
export interface DecisionContext {
  /** Identity for the new entry; a pull brings its own. */
  readonly entryId: string;
  /** Server's time, UTC. */
  readonly now: string;
  readonly by: PersonRef;
  /** A lead whose PIN was checked at somebody else's screen. */
  readonly lead?: PersonRef | undefined;
  /** The tool that a `take-tool` names, looked up in the register. */
  readonly tool?: Tool | undefined;
  /** The pull that a `move-pull` names, as it was recorded. */
  readonly pulled?: Pull | undefined;
  /** The entry already stored under the identity of this command, if there is one. */
  readonly known?: Entry | undefined;
  /** Figures of accepted traces of the same joint revision in other jobs, by `stage/round`. */
  readonly learned?: Readonly<Record<string, readonly TraceFigures[]>> | undefined;
  /** SHA-256 of the platform, where it has one that answers at once: a long trace wants it. */
  readonly sha256?: Sha256 | undefined;
}

/** Only what a record may hold of a person, whatever else the caller's object carries. */
export const refOf = ({ id, name, role }: PersonRef): PersonRef => ({ id, name, role });

/** The lead whose word stands behind a command: the one who works, or the one who gave it at this screen. */
export const leadOf = (context: DecisionContext): PersonRef | undefined =>
  context.by.role === 'lead' ? refOf(context.by) : context.lead && refOf(context.lead);
