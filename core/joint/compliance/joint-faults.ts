import { invalid } from '../../failure/failure.ts';
import { remark } from '../../language/mechanics/remark.ts';
import { showNumber } from '../../quantity/show-number.ts';
import type { Warning } from '../warning.ts';
import type { ShankSection } from './bolt-sections.ts';
import type { Layer } from './pressure-body.ts';

/** One part of the grip with the field in which it was given. */
export interface GivenLayer extends Layer {
  readonly field: string;
  readonly isWasher: boolean;
}

/** The dimensions of a joint as they were given. */
export interface Dimensions {
  readonly boltMm: number;
  readonly shank: readonly ShankSection[];
  readonly layers: readonly GivenLayer[];
  /** Sum of the layers. */
  readonly gripMm: number;
  /** The grip as measured. */
  readonly measuredMm: number | undefined;
  readonly engagementMm: number | undefined;
  readonly holeMm: number;
  readonly circles: readonly { readonly field: string; readonly outerMm: number }[];
}

export type Fault = ReturnType<typeof invalid> | undefined;

/** Layers measured one by one may miss the whole by so much. */
const SLACK_MM = 0.01;

const mm = (lengthMm: number): string => `${showNumber(Number(lengthMm.toPrecision(8)), 'en')} mm`;

const gripField = ({ measuredMm }: Dimensions): string => (measuredMm === undefined ? 'layers' : 'gripMm');

/** Each tells one kind of contradiction; a new one is a function and a line in `FAULTS`. */
function addsUp({ measuredMm, gripMm }: Dimensions): Fault {
  if (measuredMm === undefined || Math.abs(measuredMm - gripMm) <= SLACK_MM) return undefined;
  const message = `Layers and washers add up to ${mm(gripMm)}, the grip is ${mm(measuredMm)}.`;
  return invalid('layers', message, `layers and washers that add up to ${mm(measuredMm)}`);
}

function leavesShankRoom({ shank, gripMm }: Dimensions): Fault {
  const shankMm = shank.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
  if (shankMm <= gripMm + SLACK_MM) return undefined;
  const message = `The shank is ${mm(shankMm)} long, the grip ${mm(gripMm)}: the thread ends before the parts are clamped.`;
  return invalid('shank', message, `at most ${mm(gripMm)} of shank inside the grip`);
}

function leavesThreadRoom(joint: Dimensions): Fault {
  const leastMm = joint.boltMm / 2;
  if (joint.gripMm >= leastMm) return undefined;
  const message = `A grip of ${mm(joint.gripMm)} is shorter than the engaged thread that stretches with it (half the diameter).`;
  return invalid(gripField(joint), message, `a grip of at least ${mm(leastMm)}`);
}

function circleOutsideHole({ circles, holeMm }: Dimensions): Fault {
  const inside = circles.find(({ outerMm }) => outerMm <= holeMm);
  if (inside === undefined) return undefined;
  const message = `A bearing circle of ${mm(inside.outerMm)} lies inside the hole of ${mm(holeMm)}: nothing would hold.`;
  return invalid(inside.field, message, `more than ${mm(holeMm)}`);
}

function holesLetBoltThrough({ layers, shank, boltMm }: Dimensions): Fault {
  const thickestMm = Math.max(boltMm, ...shank.map(({ diameterMm }) => diameterMm));
  const narrow = layers.find(({ holeMm }) => holeMm < thickestMm);
  if (narrow === undefined) return undefined;
  const message = `A hole of ${mm(narrow.holeMm)} does not let a bolt of ${mm(thickestMm)} through.`;
  return invalid(narrow.field, message, `at least ${mm(thickestMm)}`);
}

function holesInsideCircle({ layers, circles }: Dimensions): Fault {
  const outersMm = [...circles, ...layers].map(({ outerMm }) => outerMm);
  const narrowestMm = Math.min(...outersMm);
  const wide = layers.find(({ holeMm }) => holeMm >= narrowestMm);
  if (wide === undefined) return undefined;
  const message = `A hole of ${mm(wide.holeMm)} leaves no ring inside the ${mm(narrowestMm)} over which the force comes in.`;
  return invalid(wide.field, message, `less than ${mm(narrowestMm)}`);
}

const FAULTS: readonly ((joint: Dimensions) => Fault)[] = [
  addsUp,
  leavesShankRoom,
  leavesThreadRoom,
  circleOutsideHole,
  holesLetBoltThrough,
  holesInsideCircle,
];

/** The first contradiction in the dimensions of a joint. */
export function faultOf(joint: Dimensions): Fault {
  for (const rule of FAULTS) {
    const fault = rule(joint);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

/** A usual nut is about so many diameters high (ISO 4032, from memory). */
const NUT_HEIGHT = 0.8;

/** What may be, but makes a poor joint or a doubtful figure. */
export function doubtsOf(joint: Dimensions): readonly Warning[] {
  const { gripMm, boltMm, engagementMm = NUT_HEIGHT * boltMm } = joint;
  if (gripMm >= engagementMm) return [];
  return [{ field: gripField(joint), ...remark('grip-short', { gripMm, engagementMm }) }];
}
