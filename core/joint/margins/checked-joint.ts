import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { FastenerData } from '../../fastener/fastener.ts';
import { type NutClass, readNutClass } from '../../fastener/nut-class.ts';
import { readMaterial } from '../../fastener/read-material.ts';
import { readThread } from '../../fastener/read-thread.ts';
import type { Thread } from '../../fastener/thread.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { type BoltStrength, strengthOf } from '../angle/strength-of.ts';
import type { TurnedJoint } from '../angle/turned-joint.ts';
import { type Compliance, complianceOf } from '../compliance/compliance.ts';
import { seatOf } from '../compliance/seat.ts';
import type { ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import type { JointCheckRequest } from './request.ts';

/** Expansion of carbon steel, 1/K (table of materials). */
const STEEL_PER_K = 11.7e-6;
/** Upper end of friction class B; more friction means more torsion. */
const CAREFUL_FRICTION = 0.16;

/** A joint that is to be checked, read and looked up. */
export interface CheckedJoint {
  readonly request: JointCheckRequest;
  readonly thread: Thread;
  readonly data: FastenerData;
  readonly strength: BoltStrength;
  readonly compliance: Compliance;
  readonly turned: TurnedJoint;
  readonly threadFriction: number;
  readonly nutClass: NutClass | undefined;
  readonly layerExpansionsPerK: readonly number[];
  readonly boltExpansionPerK: number;
  readonly assumptions: readonly Remark[];
}

/** @returns refused with the field that is missing, unknown, or contradicts another */
export function checkedJointOf(request: JointCheckRequest): Result<CheckedJoint> {
  const thread = readThread(request.thread);
  if (!thread.ok) return thread;
  const strength = strengthOf(request, thread.value);
  if (!strength.ok) return strength;
  if (strength.value === undefined)
    return invalid('propertyClass', 'It is missing.', 'a class such as 8.8, or yield and tensile strength');
  const seat = seatOf(request);
  if (!seat.ok) return seat;
  const compliance = complianceOf(request);
  if (!compliance.ok) return compliance;
  const nut = request.nutClass === undefined ? ok(undefined) : readNutClass(request.nutClass, thread.value);
  if (!nut.ok) return nut;
  const expansions = expansionsOf(request);
  if (!expansions.ok) return expansions;
  return ok({
    request,
    thread: thread.value,
    strength: strength.value,
    compliance: compliance.value,
    turned: turnedJoint(seat.value.geometry, compliance.value),
    data: seat.value.data,
    threadFriction: request.threadFriction ?? CAREFUL_FRICTION,
    nutClass: nut.value,
    layerExpansionsPerK: expansions.value,
    boltExpansionPerK: request.boltExpansionPerK ?? STEEL_PER_K,
    assumptions: [...compliance.value.assumptions, ...takenForGranted(request)],
  });
}

const turnedJoint = (geometry: ThreadAndBearing, { boltMmPerN, partsMmPerN }: Compliance): TurnedJoint => ({
  geometry,
  prevailingNm: 0,
  elasticMmPerN: boltMmPerN + partsMmPerN,
  sections: [],
});

function expansionsOf({ layers }: JointCheckRequest): Result<readonly number[]> {
  const expansions: number[] = [];
  for (const [index, { material, expansionPerK }] of layers.entries()) {
    const read = material === undefined ? undefined : readMaterial(material, `layers[${index}].material`);
    if (read?.ok === false) return read;
    expansions.push(expansionPerK ?? read?.value.expansionPerK ?? STEEL_PER_K);
  }
  return ok(expansions);
}

function takenForGranted({
  threadFriction,
  embeddingUm,
  roughnessUm,
  boltRiseK,
  partsRiseK,
}: JointCheckRequest): readonly Remark[] {
  const isWarmed = boltRiseK !== 0 || partsRiseK !== 0;
  return [
    ...(threadFriction === undefined ? [remark('careful-friction', { friction: CAREFUL_FRICTION })] : []),
    ...(embeddingUm === undefined ? [remark('embedding-estimated', { roughnessUm })] : []),
    ...(isWarmed ? [remark('moduli-cold')] : []),
  ];
}
