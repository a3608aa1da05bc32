import type { AddressSpace, UAEventType } from 'node-opcua-address-space';
import { IJT_BASE } from '../systems.ts';

/** The event by which the test server tells results: the published type is abstract, each server derives its own. */
export function addResultEvent(space: AddressSpace): UAEventType {
  const published = space.findEventType('JoiningSystemResultReadyEventType', space.getNamespaceIndex(IJT_BASE));
  if (!published) throw new Error('the model has an event for results');
  writeHeadOfTraceOnce(space);
  return space
    .getOwnNamespace()
    .addEventType({ browseName: 'KestrelhornResultReady', subtypeOf: published, isAbstract: false });
}

/**
 * The server library takes the inherited members of a trace for its own as well and writes them twice, where
 * OPC 10000-6, 5.2.6 has them once. A real server writes them once, so this one is made to.
 */
function writeHeadOfTraceOnce(space: AddressSpace): void {
  const type = space.findDataType('JoiningTraceDataType', space.getNamespaceIndex(IJT_BASE));
  if (!type) throw new Error('the model has traces');
  const { schema } = space.getExtensionObjectConstructor(type);
  schema.fields = schema.fields.filter(({ name }: { name: string }) => name === 'stepTraces');
}
