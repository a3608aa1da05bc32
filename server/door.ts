import { ok, type Result } from '@clampwright/core/failure';
import {
  type Command,
  type DecisionContext,
  decide,
  type EntryDraft,
  type JobState,
  type PersonRef,
  sealChain,
} from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { type AppendOptions, type Known, sha256 } from '@clampwright/store';
import type { CommandResult, Person } from './api/contract.ts';
import type { Outcome } from './api/problem.ts';
import { type Deps, newId } from './deps.ts';
import { mayWorkOn } from './guard/demo.ts';
import { type Learned, learnedFor } from './learned-traces.ts';

/** Who asks something of a job, and the lead who gave their word for it at the same screen. */
export interface Asking {
  readonly by: Person;
  readonly lead?: Person | undefined;
}

export const refOf = ({ id, name, role }: Person): PersonRef => ({ id, name, role });

/**
 * The one door into a job: whatever its source, a pull or another command is decided here, stored, and told to
 * whoever listens.
 */
export async function enter(
  deps: Deps,
  jobId: string,
  command: Command,
  asking: Asking,
): Promise<Outcome<CommandResult>> {
  const allowed = await mayEnter(deps, jobId, asking);
  if (!allowed.ok) return allowed;
  const tool = await toolNamed(deps, command);
  if (!tool.ok) return tool;
  const options = await optionsFor(deps, command);
  if (!options.ok) return options;
  const learned = await learnedFor(deps, jobId, command);
  if (!learned.ok) return learned;
  const found = { tool: tool.value, learned: learned.value };
  const decideOn = (state: JobState, known: Known) => decided(deps, state, command, known, asking, found);
  const appended = await deps.store.jobs.append(jobId, decideOn, options.value);
  if (!appended.ok) return appended;
  const { entries, already } = appended.value;
  if (!already) await afterwards(deps, jobId, command, asking, (entries[0]?.seq ?? 1) - 1);
  return ok({ entries: [...entries], already });
}

/** Whether the job is there, and these people may work on it. */
export async function mayEnter(
  { store }: Pick<Deps, 'store'>,
  jobId: string,
  { by, lead }: Asking,
): Promise<Outcome<undefined>> {
  const job = await store.jobs.get(jobId);
  return job.ok ? mayWorkOn(job.value, [by, lead]) : job;
}

/** What had to be looked up for a command. */
interface LookedUp {
  readonly tool?: Tool | undefined;
  readonly learned?: Learned | undefined;
}

/** What is appended for a command, given what is stored: time, identity and looked-up facts are put in here. */
export function decided(
  deps: Pick<Deps, 'now' | 'random'>,
  state: JobState,
  command: Command,
  known: Known,
  { by, lead }: Asking,
  found: LookedUp = {},
): Result<readonly EntryDraft[]> {
  const context: DecisionContext = {
    // a pull brings its identity; making one for each line of a long file would cost a twentieth of its time
    entryId: command.kind === 'record-pull' ? command.id : newId(deps),
    now: deps.now().toISOString(),
    by: refOf(by),
    lead: lead && refOf(lead),
    ...found,
    pulled: pulledIn(command, known),
    known: command.kind === 'record-pull' ? known.get(command.id) : undefined,
    sha256,
  };
  return decide(state, command, context);
}

/** Identities that a command speaks of, to be looked up where it is decided. */
export function namedIn(command: Command): readonly string[] {
  switch (command.kind) {
    case 'record-pull':
      return [command.id];
    case 'move-pull':
      return [command.pullId];
    case 'set-pull-aside':
    case 'take-tool':
    case 'rework':
    case 'accept':
    case 'note':
    case 'sign-off':
    case 'close':
      return [];
  }
}

function pulledIn(command: Command, known: Known): DecisionContext['pulled'] {
  const body = command.kind === 'move-pull' ? known.get(command.pullId)?.body : undefined;
  return body?.kind === 'pull' ? body.pull : undefined;
}

async function toolNamed({ store }: Deps, command: Command): Promise<Result<Tool | undefined>> {
  if (command.kind !== 'take-tool') return ok(undefined);
  const wrench = await store.wrenches.get(command.wrenchId);
  if (!wrench.ok) return wrench;
  const adapter = command.adapterId === undefined ? ok(undefined) : await store.adapters.get(command.adapterId);
  if (!adapter.ok) return adapter;
  const extension = command.extensionId === undefined ? ok(undefined) : await store.extensions.get(command.extensionId);
  if (!extension.ok) return extension;
  return ok({
    wrench: wrench.value,
    ...(adapter.value ? { adapter: adapter.value } : {}),
    ...(extension.value ? { extension: extension.value } : {}),
  });
}

async function optionsFor({ store, now }: Deps, command: Command): Promise<Result<AppendOptions>> {
  const lookUp = namedIn(command);
  if (command.kind === 'record-pull' && command.trace) return ok({ lookUp, traces: { [command.id]: command.trace } });
  if (command.kind !== 'close') return ok({ lookUp });
  const key = await store.signingKey();
  return key.ok ? ok({ lookUp, seal: (last) => sealChain(last, key.value.seed, now().toISOString()) }) : key;
}

async function afterwards(
  deps: Deps,
  jobId: string,
  command: Command,
  { by }: Asking,
  afterSeq: number,
): Promise<void> {
  deps.listeners.tell(jobId, { kind: 'entries', afterSeq });
  if (command.kind !== 'take-tool' && command.kind !== 'close') return;
  const jointRefs = command.kind === 'take-tool' ? command.jointRefs : [];
  const state = await deps.store.jobs.state(jobId);
  // What is stored stays acknowledged: a port that cannot be followed now is followed when the tool is taken again.
  if (state.ok) deps.ports.follow(state.value, { by, jointRefs, at: deps.now().toISOString() });
  else deps.logger.warn({ failure: state.failure, jobId }, 'ports not followed');
}
