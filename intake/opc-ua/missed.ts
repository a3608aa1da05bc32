import type { ClientSession, NodeId, Variant as VariantValue } from 'node-opcua-client';
import { DataType, Variant, VariantArrayType } from './library.ts';
import type { JoiningSystem } from './systems.ts';

/** Most results that are fetched one by one after a broken connection. */
const MOST_LISTED = 1000;
/** How long the server is to keep a list for us, ms. */
const KEEP_MS = 10_000;

/**
 * Asks a system for the results that nobody here has kept yet. Where it counts acknowledgements it sends them as events;
 * otherwise they are fetched by their identities.
 *
 * @param isKnown whether a result was dealt with before
 * @param take    given each result that is fetched, as the method answered it
 * @source OPC 40450-1, 7.5 (RequestUnacknowledgedResults); OPC 40001-101, 7.2 (GetResultIdListFiltered, GetResultById)
 */
export async function askForMissed(
  session: ClientSession,
  system: JoiningSystem,
  isKnown: (resultId: string) => boolean,
  take: (result: VariantValue) => Promise<void>,
): Promise<void> {
  const { results, methods } = system;
  if (!results) return;
  if (methods.AcknowledgeResults && methods.RequestUnacknowledgedResults) {
    const all = [new Variant({ dataType: DataType.UInt32, value: 0 }), duration(0)];
    await call(session, results, methods.RequestUnacknowledgedResults, all);
    return;
  }
  const { GetResultIdListFiltered: list, GetResultById: byId } = methods;
  if (!list || !byId) return;
  const listed = await call(session, results, list, listArguments());
  const ids: unknown = listed[1]?.value;
  for (const resultId of Array.isArray(ids) ? ids : []) {
    if (typeof resultId !== 'string' || isKnown(resultId)) continue;
    const [handle, result] = await call(session, results, byId, [text(resultId), timeout()]);
    if (result) await take(result);
    await release(session, system, handle);
  }
  await release(session, system, listed[0]);
}

/** Tells a system that results are kept here, where it wants to know. */
export async function acknowledge(
  session: ClientSession,
  { results, methods }: JoiningSystem,
  resultIds: readonly string[],
): Promise<void> {
  if (!results || !methods.AcknowledgeResults) return;
  const ids = new Variant({ dataType: DataType.String, arrayType: VariantArrayType.Array, value: [...resultIds] });
  await call(session, results, methods.AcknowledgeResults, [ids]);
}

async function call(session: ClientSession, objectId: NodeId, methodId: NodeId, inputArguments: VariantValue[]) {
  const { statusCode, outputArguments } = await session.call({ objectId, methodId, inputArguments });
  if (statusCode.isNotGood()) throw new Error(`the joining system refused ${methodId.toString()}: ${statusCode.name}`);
  return outputArguments ?? [];
}

async function release(session: ClientSession, { results, methods }: JoiningSystem, handle?: VariantValue) {
  if (!results || !methods.ReleaseResultHandle || typeof handle?.value !== 'number') return;
  await call(session, results, methods.ReleaseResultHandle, [
    new Variant({ dataType: DataType.UInt32, value: handle.value }),
  ]);
}

const text = (value: string) => new Variant({ dataType: DataType.String, value });
const duration = (value: number) => new Variant({ dataType: DataType.Double, value });
const timeout = () => new Variant({ dataType: DataType.Int32, value: KEEP_MS });

/** Every result, the newest ones first come to it: no filter, no order, as servers differ in what they can do with them. */
const listArguments = () => [
  new Variant({ dataType: DataType.ExtensionObject, value: null }),
  new Variant({ dataType: DataType.ExtensionObject, arrayType: VariantArrayType.Array, value: [] }),
  new Variant({ dataType: DataType.UInt32, value: MOST_LISTED }),
  timeout(),
];
