import { rootDiameterMm } from '../../fastener/profile.ts';
import type { Thread } from '../../fastener/thread.ts';
import type { JointType } from './deformation-cone.ts';
import { barMmPerN, circleMm2 } from './spring.ts';

/** What holds at the top: a hexagon head, a socket head, or a second nut on a stud. */
export type HeadForm = 'hexagon' | 'socket' | 'stud';

export interface ShankSection {
  readonly lengthMm: number;
  readonly diameterMm: number;
}

/** The bolt as it lies in the joint. */
export interface BoltInJoint {
  readonly thread: Thread;
  readonly headForm: HeadForm;
  /** From the head down, without thread; what is left of the grip is thread. */
  readonly shank: readonly ShankSection[];
  readonly gripMm: number;
  readonly jointType: JointType;
  readonly modulusMPa: number;
  /** Of the nut, or of the part that holds the tapped thread. */
  readonly nutModulusMPa: number;
}

/** One spring of the bolt. */
export interface BoltSection {
  readonly part: 'head' | 'shank' | 'thread' | 'engaged thread' | 'nut' | 'tapped part';
  readonly lengthMm: number;
  readonly diameterMm: number;
  readonly areaMm2: number;
  readonly modulusMPa: number;
  readonly complianceMmPerN: number;
}

type Part = Pick<BoltSection, 'part' | 'lengthMm' | 'diameterMm' | 'modulusMPa'>;

const section = (part: Part): BoltSection => {
  const areaMm2 = circleMm2(part.diameterMm);
  return { ...part, areaMm2, complianceMmPerN: barMmPerN(part.lengthMm, areaMm2, part.modulusMPa) };
};

/**
 * The springs of a bolt, in a row from head to nut.
 *
 * @source VDI 2230-1:2015, 5.1.1.1: l_SK = 0.5 d (hexagon) or 0.4 d (socket), l_G = 0.5 d, l_M = 0.4 d with a nut
 *         and 0.33 d in a tapped part, thread over the area of d3
 */
export function boltSections(bolt: BoltInJoint): readonly BoltSection[] {
  return [...headParts(bolt), ...gripParts(bolt), ...nutParts(bolt)].map(section);
}

function headParts(bolt: BoltInJoint): readonly Part[] {
  const { headForm, thread, modulusMPa } = bolt;
  if (headForm === 'stud') return nutParts({ ...bolt, jointType: 'through' }).toReversed();
  const diameterMm = thread.majorDiameterMm;
  return [{ part: 'head', lengthMm: (headForm === 'socket' ? 0.4 : 0.5) * diameterMm, diameterMm, modulusMPa }];
}

function gripParts({ shank, gripMm, thread, modulusMPa }: BoltInJoint): readonly Part[] {
  const threadMm = freeThreadMm(shank, gripMm);
  return [
    ...shank.map((one) => ({ ...one, part: 'shank', modulusMPa }) as const),
    ...(threadMm > 0
      ? [{ part: 'thread', lengthMm: threadMm, diameterMm: rootDiameterMm(thread), modulusMPa } as const]
      : []),
  ];
}

/** What the shank leaves of the grip; binary fractions do not count as thread. */
export function freeThreadMm(shank: readonly ShankSection[], gripMm: number): number {
  const leftMm = gripMm - shank.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
  return leftMm > 1e-9 * gripMm ? leftMm : 0;
}

function nutParts({ thread, jointType, modulusMPa, nutModulusMPa }: BoltInJoint): readonly Part[] {
  const { majorDiameterMm } = thread;
  const isTapped = jointType === 'tapped';
  return [
    { part: 'engaged thread', lengthMm: 0.5 * majorDiameterMm, diameterMm: rootDiameterMm(thread), modulusMPa },
    {
      part: isTapped ? 'tapped part' : 'nut',
      lengthMm: (isTapped ? 0.33 : 0.4) * majorDiameterMm,
      diameterMm: majorDiameterMm,
      modulusMPa: nutModulusMPa,
    },
  ];
}
