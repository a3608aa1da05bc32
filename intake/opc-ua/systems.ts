import type { ClientSession, NodeId } from 'node-opcua-client';
import { browseAll } from './library.ts';

export const IJT_BASE = 'http://opcfoundation.org/UA/IJT/Base/';
export const MACHINERY_RESULT = 'http://opcfoundation.org/UA/Machinery/Result/';

/** JoiningSystemType in the node set of OPC 40450-1. */
const JOINING_SYSTEM_TYPE = 1005;

/** Methods by which missed results are had, under ResultManagement (OPC 40001-101, OPC 40450-1). */
const METHODS = [
  'AcknowledgeResults',
  'RequestUnacknowledgedResults',
  'GetResultIdListFiltered',
  'GetResultById',
  'ReleaseResultHandle',
] as const;
export type MethodName = (typeof METHODS)[number];

/** A joining system of a server, with what it can be asked. */
export interface JoiningSystem {
  readonly name: string;
  readonly results: NodeId | undefined;
  readonly methods: Readonly<Partial<Record<MethodName, NodeId>>>;
}

/** Where the models stand on this server; undefined where it has not got them. */
export interface Namespaces {
  readonly ijt: number;
  readonly result: number;
}

/** Objects below which systems are looked for: themselves, and one folder deeper (such as Machines, OPC 40001-1). */
const DEEPEST = 2;
const OBJECTS_FOLDER = 'ns=0;i=85';

/** The namespaces of the models on this server, by their addresses: their numbers are each server's own. */
export async function namespacesOf(session: ClientSession): Promise<Namespaces | undefined> {
  const names = await session.readNamespaceArray();
  const [ijt, result] = [names.indexOf(IJT_BASE), names.indexOf(MACHINERY_RESULT)];
  return ijt > 0 && result > 0 ? { ijt, result } : undefined;
}

/** Finds every joining system of a server by its type, whatever it is called. */
export async function findSystems(session: ClientSession, { ijt }: Namespaces): Promise<readonly JoiningSystem[]> {
  const types = await typesFrom(session, `ns=${ijt};i=${JOINING_SYSTEM_TYPE}`);
  const found: JoiningSystem[] = [];
  let nodes = [OBJECTS_FOLDER];
  for (let depth = 0; depth < DEEPEST; depth++) {
    const children = (await Promise.all(nodes.map((node) => childrenOf(session, node)))).flat();
    for (const child of children) {
      if (types.has(child.typeDefinition)) found.push(await systemAt(session, child));
    }
    nodes = children.filter((child) => !types.has(child.typeDefinition)).map(({ nodeId }) => nodeId.toString());
  }
  return found;
}

interface Child {
  readonly nodeId: NodeId;
  readonly name: string;
  readonly typeDefinition: string;
}

const NODE_CLASS = { object: 1, method: 4, objectType: 8 } as const;
const EVERYTHING = 63;

async function browsed(session: ClientSession, nodeId: string, referenceTypeId: string, nodeClassMask: number) {
  const description = {
    nodeId,
    browseDirection: 0,
    referenceTypeId,
    includeSubtypes: true,
    nodeClassMask,
    resultMask: EVERYTHING,
  };
  const result = await browseAll(session, description);
  return result.references ?? [];
}

const HIERARCHICAL = 'ns=0;i=33';
const HAS_SUBTYPE = 'ns=0;i=45';

async function childrenOf(session: ClientSession, nodeId: string): Promise<readonly Child[]> {
  const references = await browsed(session, nodeId, HIERARCHICAL, NODE_CLASS.object);
  return references.map((reference) => ({
    nodeId: reference.nodeId,
    name: reference.browseName.name ?? '',
    typeDefinition: reference.typeDefinition.toString(),
  }));
}

/** A type with all that are made from it. */
async function typesFrom(session: ClientSession, type: string): Promise<ReadonlySet<string>> {
  const below = await browsed(session, type, HAS_SUBTYPE, NODE_CLASS.objectType);
  const deeper = await Promise.all(below.map(({ nodeId }) => typesFrom(session, nodeId.toString())));
  return new Set([type, ...deeper.flatMap((types) => [...types])]);
}

async function systemAt(session: ClientSession, { nodeId, name }: Child): Promise<JoiningSystem> {
  const results = (await childrenOf(session, nodeId.toString())).find((child) => child.name === 'ResultManagement');
  if (!results) return { name, results: undefined, methods: {} };
  const references = await browsed(session, results.nodeId.toString(), HIERARCHICAL, NODE_CLASS.method);
  const methods: Partial<Record<MethodName, NodeId>> = {};
  for (const method of METHODS) {
    const reference = references.find(({ browseName }) => browseName.name === method);
    if (reference) methods[method] = reference.nodeId;
  }
  return { name, results: results.nodeId, methods };
}
