import type { AddressSpace, UAEventType, UAObject } from 'node-opcua-address-space';
import type { ExtensionObject } from 'node-opcua-extension-object';
import type { Variant as VariantValue } from 'node-opcua-variant';
import variants from 'node-opcua-variant';
import { IJT_BASE, MACHINERY_RESULT } from '../systems.ts';
import { madeResult } from './made-result.ts';

const { DataType, Variant, VariantArrayType } = variants;

/** A joining system of the test server. */
export interface TestSystem {
  /** Makes the n-th result of the system, keeps it, and tells it as an event; gives its identity. */
  readonly tighten: (number: number) => string;
  /** Identities of results that a client has acknowledged. */
  readonly acknowledged: ReadonlySet<string>;
}

/** How a system lets missed results be had. */
export type Recovery = 'acknowledging' | 'listing';

type Answer = (inputs: readonly VariantValue[]) => VariantValue[];

/** Adds a joining system after the published type. */
export function addTestSystem(space: AddressSpace, name: string, recovery: Recovery, event: UAEventType): TestSystem {
  const type = space.findObjectType('JoiningSystemType', space.getNamespaceIndex(IJT_BASE));
  if (!type) throw new Error('the model has joining systems');
  const system = type.instantiate({ browseName: name, organizedBy: space.rootFolder.objects });
  const kept = new Map<string, ExtensionObject>();
  const acknowledged = new Set<string>();
  const tell = (result: ExtensionObject): void => {
    system.raiseEvent(event, {
      sourceName: { dataType: DataType.String, value: name },
      result: { dataType: DataType.ExtensionObject, value: result },
    });
  };
  const answers = recovery === 'acknowledging' ? acknowledging(kept, acknowledged, tell) : listing(kept);
  addResultManagement(space, system, answers);
  return {
    acknowledged,
    tighten: (number) => {
      const id = `${name}-${number}`;
      const result = madeResult(space, id, number);
      kept.set(id, result);
      tell(result);
      return id;
    },
  };
}

function addResultManagement(space: AddressSpace, system: UAObject, answers: Readonly<Record<string, Answer>>): void {
  const type = space.findObjectType('JoiningSystemResultManagementType', space.getNamespaceIndex(IJT_BASE));
  if (!type) throw new Error('the model has a management of results');
  const results = type.instantiate({
    browseName: { name: 'ResultManagement', namespaceIndex: space.getNamespaceIndex(MACHINERY_RESULT) },
    componentOf: system,
    optionals: Object.keys(answers),
  });
  for (const method of results.getMethods()) {
    const answer = answers[method.browseName.name ?? ''];
    if (answer) method.bindMethod((inputs, _context, callback) => callback(null, { outputArguments: answer(inputs) }));
  }
}

function acknowledging(
  kept: ReadonlyMap<string, ExtensionObject>,
  acknowledged: Set<string>,
  tell: (result: ExtensionObject) => void,
): Record<string, Answer> {
  return {
    AcknowledgeResults: ([ids]) => {
      for (const id of namesIn(ids)) acknowledged.add(id);
      return [new Variant({ dataType: DataType.Int32, arrayType: VariantArrayType.Array, value: [] }), int32(0)];
    },
    RequestUnacknowledgedResults: () => {
      const open = [...kept].filter(([id]) => !acknowledged.has(id));
      for (const [, result] of open) tell(result);
      return [
        new Variant({ dataType: DataType.Double, value: 0 }),
        new Variant({ dataType: DataType.UInt32, value: open.length }),
        new Variant({ dataType: DataType.Int64, arrayType: VariantArrayType.Scalar, value: [0, 0] }),
        text('sent as events'),
      ];
    },
  };
}

const listing = (kept: ReadonlyMap<string, ExtensionObject>): Record<string, Answer> => ({
  GetResultIdListFiltered: () => [
    handle(),
    new Variant({ dataType: DataType.String, arrayType: VariantArrayType.Array, value: [...kept.keys()] }),
    int32(0),
  ],
  GetResultById: ([id]) => [
    handle(),
    new Variant({ dataType: DataType.ExtensionObject, value: kept.get(String(id?.value)) }),
    int32(0),
  ],
});

const int32 = (value: number) => new Variant({ dataType: DataType.Int32, value });
const handle = () => new Variant({ dataType: DataType.UInt32, value: 1 });
const text = (value: string) => new Variant({ dataType: DataType.String, value });

function namesIn(ids: VariantValue | undefined): readonly string[] {
  const value: unknown = ids?.value;
  return Array.isArray(value) ? value.filter((id) => typeof id === 'string') : [];
}
