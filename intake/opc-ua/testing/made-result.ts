import type { AddressSpace } from 'node-opcua-address-space';
import type { ExtensionObject } from 'node-opcua-extension-object';
import variants from 'node-opcua-variant';
import { examplePull } from '../../serial/example.ts';
import { FINAL_TAG, QUANTITY, SINGLE_RESULT } from '../result-shape.ts';
import { IJT_BASE, MACHINERY_RESULT } from '../systems.ts';

const { DataType, Variant } = variants;

/** EUInformation of a unit by its common code (UNECE Recommendation 20). */
const units = (code: string, text: string) => ({
  namespaceUri: 'http://www.opcfoundation.org/UA/units/un/cefact',
  unitId: Array.from(code).reduce((id, letter) => id * 256 + letter.charCodeAt(0), 0),
  displayName: { text },
});
const NEWTON_METRE = units('NU', 'N·m');
const DEGREE = units('DD', '°');

/** The n-th result of the wrench, with its trace, as a joining system tells it. */
export function madeResult(space: AddressSpace, resultId: string, number: number): ExtensionObject {
  const { pull, stamp } = examplePull(number);
  const make = maker(space);
  const value = (measuredValue: number, quantity: number, engineeringUnits: object) =>
    make('ResultValueDataType', { measuredValue, physicalQuantity: quantity, valueTag: FINAL_TAG, engineeringUnits });
  const samples = (values: readonly number[], physicalQuantity: number, engineeringUnits?: object) => ({
    values: [...values],
    physicalQuantity,
    ...(engineeringUnits ? { engineeringUnits } : {}),
  });
  const { timeS, torqueNm, angleDeg } = pull.trace;
  const trace = {
    traceId: `trace of ${resultId}`,
    resultId,
    stepTraces: [
      {
        stepTraceId: '1',
        stepResultId: '1',
        numberOfTracePoints: timeS.length,
        startTimeOffset: 0,
        stepTraceContent: [
          samples(timeS, QUANTITY.time),
          samples(torqueNm, QUANTITY.torque, NEWTON_METRE),
          samples(angleDeg, QUANTITY.angle, DEGREE),
        ],
      },
    ],
  };
  const content = make('JoiningResultDataType', {
    overallResultValues: [
      value(pull.shownTorqueNm, QUANTITY.torque, NEWTON_METRE),
      value(pull.shownAngleDeg, QUANTITY.angle, DEGREE),
    ],
    trace,
  });
  return make('ResultDataType', {
    resultMetaData: make('JoiningResultMetaDataType', {
      resultId,
      sequenceNumber: [0, number],
      classification: SINGLE_RESULT,
      isSimulated: false,
      isPartial: false,
      creationTime: new Date(stamp.takenAt),
      associatedEntities: [{ name: 'tool', entityId: stamp.serial, entityType: 1 }],
    }),
    resultContent: [new Variant({ dataType: DataType.ExtensionObject, value: content })],
  });
}

/** Makes structures of the published models by their names. */
function maker(space: AddressSpace): (name: string, members: Record<string, unknown>) => ExtensionObject {
  const namespaces = [IJT_BASE, MACHINERY_RESULT].map((uri) => space.getNamespaceIndex(uri));
  return (name, members) => {
    const type = namespaces.map((index) => space.findDataType(name, index)).find((found) => found);
    if (!type) throw new Error(`the models have no ${name}`);
    return space.constructExtensionObject(type, members);
  };
}
