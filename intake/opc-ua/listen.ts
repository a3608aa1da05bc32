import type { ClientSession, Variant as VariantValue } from 'node-opcua-client';
import type { ResultTaker } from './event.ts';
import {
  AttributeIds,
  constructEventFilter,
  getExtraDataTypeManager,
  ofType,
  resolveDynamicExtensionObject,
  TimestampsToReturn,
} from './library.ts';
import { acknowledge, askForMissed } from './missed.ts';
import { readResult } from './result.ts';
import { findSystems, type JoiningSystem, namespacesOf } from './systems.ts';

/** ResultReadyEventType in the node set of OPC 40001-101; all result events of joining systems are made from it. */
const RESULT_READY_TYPE = 1002;
const SERVER_OBJECT = 'ns=0;i=2253';
const PUBLISHING_MS = 100;
/** Results that may wait at the server for one answer to be fetched. */
const QUEUE = 10_000;

/** What one session is about: its systems, and the order in which their results are dealt with. */
export interface Listening {
  readonly systems: readonly JoiningSystem[];
  /** Everything that has arrived so far is dealt with. */
  readonly settled: () => Promise<void>;
}

/**
 * Subscribes to the results of every joining system of a server, then asks for those that were missed.
 * Events come from the Server object, through which every event of a server passes (OPC 10000-5, 8.3.2).
 *
 * @param origin  names the server in the identities of pulls
 * @param known   identities of results that are kept; added to
 * @returns undefined when the server has no joining system
 */
export async function listenTo(
  session: ClientSession,
  origin: string,
  known: Set<string>,
  taker: ResultTaker,
): Promise<Listening | undefined> {
  const namespaces = await namespacesOf(session);
  const systems = namespaces ? await findSystems(session, namespaces) : [];
  if (!namespaces || systems.length === 0) return undefined;
  const types = await getExtraDataTypeManager(session);

  const dealWith = async (result: VariantValue): Promise<void> => {
    await resolveDynamicExtensionObject(session, result, types);
    const kept = await offered(result.value, origin, known, taker);
    if (kept === undefined) return;
    // Which of the systems it came from is not said; the others do not know it and may refuse.
    await Promise.allSettled(systems.map((system) => acknowledge(session, system, [kept])));
  };
  let settled: Promise<void> = Promise.resolve();
  const inTurn = (result: VariantValue): Promise<void> => {
    settled = settled.then(() => dealWith(result)).catch((error: unknown) => tellBroken(taker, error));
    return settled;
  };

  await subscribe(session, namespaces.result, (result) => void inTurn(result));
  for (const system of systems) {
    // A system that cannot tell what was missed still tells what comes.
    await askForMissed(session, system, (id) => known.has(id), inTurn).catch((error: unknown) =>
      tellBroken(taker, error),
    );
  }
  return { systems, settled: () => settled };
}

async function subscribe(session: ClientSession, ns: number, arrived: (result: VariantValue) => void): Promise<void> {
  const subscription = await session.createSubscription2({
    requestedPublishingInterval: PUBLISHING_MS,
    requestedLifetimeCount: 600,
    requestedMaxKeepAliveCount: 20,
    maxNotificationsPerPublish: 0,
    publishingEnabled: true,
    priority: 1,
  });
  const filter = constructEventFilter([`${ns}:Result`], ofType(`ns=${ns};i=${RESULT_READY_TYPE}`));
  const item = await subscription.monitor(
    { nodeId: SERVER_OBJECT, attributeId: AttributeIds.EventNotifier },
    { samplingInterval: 0, queueSize: QUEUE, discardOldest: false, filter },
    TimestampsToReturn.Neither,
  );
  item.on('changed', (fields: unknown) => {
    const result = Array.isArray(fields) ? fields[0] : undefined;
    if (isVariant(result)) arrived(result);
  });
}

const isVariant = (value: unknown): value is VariantValue =>
  typeof value === 'object' && value !== null && 'dataType' in value && 'value' in value;

/** Offers a result for keeping; its identity once there is nothing more to be done with it. */
async function offered(
  value: unknown,
  origin: string,
  known: Set<string>,
  taker: ResultTaker,
): Promise<string | undefined> {
  const result = readResult(value, origin);
  if (!result.ok) {
    const message = result.failure.kind === 'invalid' ? `${result.failure.field}: ${result.failure.message}` : '';
    taker.tell({ kind: 'unreadable', message, raw: rawOf(value) });
    return undefined;
  }
  const { resultId } = result.value;
  const isKept = result.value.kind === 'passed-over' || (await taker.take(result.value.pull, rawOf(value)));
  if (!isKept) return undefined;
  remember(known, resultId);
  return resultId;
}

/** More than a server lists at once; what is older is stored, and the store knows it again. */
const MOST_KNOWN = 10_000;

function remember(known: Set<string>, resultId: string): void {
  known.add(resultId);
  const [oldest] = known;
  if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
}

const LONGEST_RAW = 300;

/** The beginning of a result, for the screen. */
function rawOf(value: unknown): string {
  const text = JSON.stringify(value, (_, member: unknown) => (ArrayBuffer.isView(member) ? '…' : member)) ?? 'nothing';
  return text.slice(0, LONGEST_RAW);
}

function tellBroken(taker: ResultTaker, error: unknown): void {
  taker.tell({ kind: 'unreadable', message: error instanceof Error ? error.message : String(error), raw: '' });
}
