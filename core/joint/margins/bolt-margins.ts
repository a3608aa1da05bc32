import { readPropertyClass } from '../../fastener/property-class.ts';
import { remark } from '../../language/mechanics/remark.ts';
import { twistOf } from '../angle/stretch.ts';
import { threadArmMm } from '../angle/turned-joint.ts';
import type { CheckedJoint } from './checked-joint.ts';
import type { Forces } from './forces.ts';
import { type Checked, margin, notChecked } from './margin.ts';

const GUIDELINE = 'VDI 2230-1:2015';

/** The section that a bolt fails in first: its thread, or a shank thinner than that. */
export function weakestSection({ request, thread, data }: CheckedJoint): {
  readonly areaMm2: number;
  readonly diameterMm: number;
} {
  const threadMm = Math.sqrt((4 * data.stressAreaMm2) / Math.PI);
  const ownShankMm = thread.own?.shankDiameterMm ?? Infinity;
  const diameterMm = Math.min(threadMm, ownShankMm, ...request.shank.map((section) => section.diameterMm));
  return { diameterMm, areaMm2: (Math.PI / 4) * diameterMm ** 2 };
}

/** σ_red over σ at assembly. */
export function assemblyTwist(checked: CheckedJoint): number {
  return twistOf(weakestSection(checked).diameterMm, threadArmMm(checked.turned.geometry, checked.threadFriction));
}

/** The bolt against yield, proof and fatigue. */
export const boltMargins = (checked: CheckedJoint, forces: Forces): readonly Checked[] => [
  atAssembly(checked, forces),
  ...proofLoad(checked, forces),
  inService(checked, forces),
  ...alternating(checked),
];

const atAssembly = (checked: CheckedJoint, { assembly }: Forces): Checked =>
  margin({
    check: 'yield-at-assembly',
    actual: (assembly.greatestN / weakestSection(checked).areaMm2) * assemblyTwist(checked),
    allowed: checked.request.utilization * checked.strength.yieldMPa,
    unit: 'MPa',
    clause: `${GUIDELINE}, R7`,
    note: remark('note-at-assembly', { utilizationShare: checked.request.utilization }),
  });

function proofLoad({ request, thread, data }: CheckedJoint, { assembly }: Forces): readonly Checked[] {
  const read = request.propertyClass === undefined ? undefined : readPropertyClass(request.propertyClass, thread);
  const proofMPa = read?.ok === true ? read.value.proofStressMPa : undefined;
  if (proofMPa === undefined || read?.ok !== true) return [];
  return [
    margin({
      check: 'proof-load',
      actual: assembly.greatestN,
      allowed: proofMPa * data.stressAreaMm2,
      unit: 'N',
      clause: `${read.value.standard}, proof load`,
      note: remark('note-proof-load'),
    }),
  ];
}

/** Half of the torsion is taken to have gone after assembly. */
const TORSION_LEFT = 0.5;

function inService(checked: CheckedJoint, { assembly, boltMaxN }: Forces): Checked {
  const { areaMm2, diameterMm } = weakestSection(checked);
  const axialMPa = boltMaxN / areaMm2;
  const threadTorqueNmm = assembly.greatestN * threadArmMm(checked.turned.geometry, checked.threadFriction);
  const torsionMPa = (16 * threadTorqueNmm) / (Math.PI * diameterMm ** 3);
  return margin({
    check: 'yield-in-service',
    actual: Math.sqrt(axialMPa ** 2 + 3 * (TORSION_LEFT * torsionMPa) ** 2),
    allowed: checked.strength.yieldMPa,
    unit: 'MPa',
    clause: `${GUIDELINE}, R8`,
    note: remark('note-in-service'),
  });
}

/** Sizes in which the formula of the endurance limit holds. */
const ENDURANCE_MM = { least: 6, greatest: 40 };

function alternating({ request, thread, data, compliance }: CheckedJoint): readonly Checked[] {
  const { axialLoadN, axialLoadLowN } = request;
  if (axialLoadLowN === undefined || axialLoadLowN >= axialLoadN) return [];
  const { majorDiameterMm } = thread;
  if (majorDiameterMm < ENDURANCE_MM.least || majorDiameterMm > ENDURANCE_MM.greatest)
    return [notChecked('alternating-load', 'thread', remark('endurance-range'))];
  return [
    margin({
      check: 'alternating-load',
      actual: (compliance.loadFactor * (axialLoadN - axialLoadLowN)) / (2 * data.stressAreaMm2),
      allowed: 0.85 * (150 / majorDiameterMm + 45),
      unit: 'MPa',
      needed: 1.2,
      clause: `${GUIDELINE}, R9 (from memory)`,
      note: remark('note-alternating'),
    }),
  ];
}
