import { invalid, ok, type Result } from '../../failure/failure.ts';
import { readMaterial } from '../../fastener/read-material.ts';
import { readThread } from '../../fastener/read-thread.ts';
import type { Remark } from '../../language/mechanics/remark.ts';
import type { ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import type { Warning } from '../warning.ts';
import type { BoltInJoint } from './bolt-sections.ts';
import { doubtsOf, faultOf, type GivenLayer } from './joint-faults.ts';
import type { Bearing } from './pressure-body.ts';
import type { ComplianceRequest } from './request.ts';
import { seatOf } from './seat.ts';

/** A joint whose dimensions do not contradict one another. */
export interface JointSprings {
  readonly bolt: BoltInJoint;
  /** From head to nut, with washers. */
  readonly layers: readonly GivenLayer[];
  readonly bearing: Bearing;
  readonly geometry: ThreadAndBearing;
  /** What was not given and where it was taken from. */
  readonly assumptions: readonly Remark[];
  readonly warnings: readonly Warning[];
}

/**
 * Reads the dimensions of a joint and refuses those that cannot be.
 *
 * @returns refused with field and reason: layers that do not add up, a grip too short for shank or thread, a bearing
 *          circle inside the hole, a hole that does not let the bolt through
 */
export function jointOf(request: ComplianceRequest): Result<JointSprings> {
  const thread = readThread(request.thread);
  if (!thread.ok) return thread;
  const { jointType, headForm, shank, washers } = request;
  const isTapped = jointType === 'tapped';
  const nutWasher = washers.findIndex(({ under }) => isTapped && under === 'nut');
  if (nutWasher >= 0) return invalid(`washers[${nutWasher}].under`, 'A tapped joint has no nut.', 'head');
  const seat = seatOf(request);
  if (!seat.ok) return seat;
  const { geometry, assumptions } = seat.value;
  const { bearingOuterMm: headMm, holeMm } = geometry;
  const read = layersOf(request, holeMm);
  if (!read.ok) return read;
  const layers = read.value;
  const gripMm = layers.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  const bearing = { headMm, nutMm: isTapped ? undefined : (request.nutBearingOuterMm ?? headMm) };
  const dimensions = {
    boltMm: thread.value.majorDiameterMm,
    shank,
    layers,
    gripMm,
    measuredMm: request.gripMm,
    engagementMm: request.engagementMm,
    holeMm,
    circles: circlesOf(bearing),
  };
  const fault = faultOf(dimensions);
  if (fault !== undefined) return fault;
  const { boltModulusMPa: modulusMPa, nutModulusMPa = modulusMPa } = request;
  const bolt = { thread: thread.value, headForm, shank, gripMm, jointType, modulusMPa, nutModulusMPa };
  return ok({ bolt, layers, bearing, geometry, assumptions, warnings: doubtsOf(dimensions) });
}

const circlesOf = ({ headMm, nutMm }: Bearing) => [
  { field: 'bearingOuterMm', outerMm: headMm },
  ...(nutMm === undefined ? [] : [{ field: 'nutBearingOuterMm', outerMm: nutMm }]),
];

type GivenPart = (ComplianceRequest['layers'] | ComplianceRequest['washers'])[number];

/** From head to nut; washers are given from the face that presses on them, so those of the nut are turned about. */
function layersOf({ layers, washers }: ComplianceRequest, holeMm: number): Result<readonly GivenLayer[]> {
  const rings = washers.map((given, index) => ({
    given,
    under: given.under,
    layer: { name: `washer under the ${given.under}`, field: `washers[${index}]`, isWasher: true },
  }));
  const plates = layers.map((given, index) => ({
    given,
    layer: { name: given.part ?? `part ${index + 1}`, field: `layers[${index}]`, isWasher: false },
  }));
  const under = (side: 'head' | 'nut') => rings.filter((ring) => ring.under === side);
  const read: GivenLayer[] = [];
  for (const { given, layer } of [...under('head'), ...plates, ...under('nut').toReversed()]) {
    const modulusMPa = modulusOf(given, layer.field);
    if (!modulusMPa.ok) return modulusMPa;
    read.push({ ...layer, ...dimensionsOf(given, layer.field, holeMm), modulusMPa: modulusMPa.value });
  }
  return ok(read);
}

const dimensionsOf = ({ thicknessMm, outerDiameterMm, holeMm }: GivenPart, field: string, jointHoleMm: number) => ({
  thicknessMm,
  outerMm: outerDiameterMm ?? Infinity,
  holeMm: holeMm ?? jointHoleMm,
  field: holeMm === undefined ? 'holeMm' : `${field}.holeMm`,
});

const STEEL_MPA = 205_000;

function modulusOf({ material, modulusMPa }: GivenPart, field: string): Result<number> {
  if (modulusMPa !== undefined || material === undefined) return ok(modulusMPa ?? STEEL_MPA);
  const row = readMaterial(material, `${field}.material`);
  return row.ok ? ok(row.value.elasticMPa) : row;
}
