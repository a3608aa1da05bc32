import { HEX_NUTS } from '../../fastener/metric-faces.ts';
import { remark } from '../../language/mechanics/remark.ts';
import { weakestSection } from './bolt-margins.ts';
import type { CheckedJoint } from './checked-joint.ts';
import type { Forces } from './forces.ts';
import { type Checked, margin, notChecked } from './margin.ts';
import { type EngagedThread, neededEngagementMm, strippingLoad } from './stripping.ts';

/** Shear over tensile strength of bolts (VDI 2230-1:2015, table 7, from memory). */
const SHEAR_RATIOS: Readonly<Record<string, number>> = {
  '4.6': 0.7,
  '5.6': 0.7,
  '8.8': 0.65,
  '10.9': 0.62,
  '12.9': 0.6,
};
const SHEAR_RATIO = 0.6;

export const boltShearMPa = ({ strength }: CheckedJoint): number =>
  (SHEAR_RATIOS[strength.className ?? ''] ?? SHEAR_RATIO) * strength.tensileMPa;

const breakingLoadN = (checked: CheckedJoint): number => checked.strength.tensileMPa * weakestSection(checked).areaMm2;

/** Engaged thread against stripping, and the nut's class against the bolt's. */
export const threadMargins = (checked: CheckedJoint, forces: Forces): readonly Checked[] => [
  ...nutClassMargin(checked),
  ...strippingMargins(checked, forces),
];

function nutClassMargin(checked: CheckedJoint): readonly Checked[] {
  const { nutClass, strength, data } = checked;
  if (nutClass === undefined || checked.request.jointType === 'tapped') return [];
  return [
    margin({
      check: 'nut-class',
      actual: strength.tensileMPa * data.stressAreaMm2,
      allowed: nutClass.proofStressMPa * data.stressAreaMm2,
      unit: 'N',
      clause: 'ISO 898-2:1992, table 5 (from memory)',
      note: remark('note-nut-class', { nut: nutClass.name }),
    }),
  ];
}

function strippingMargins(checked: CheckedJoint, { assembly, boltMaxN }: Forces): readonly Checked[] {
  const inner = innerShearMPa(checked);
  if (inner === undefined) {
    const why = remark('inner-strength-untold');
    return [notChecked('thread-engagement', 'innerTensileMPa', why), notChecked('stripping', 'innerTensileMPa', why)];
  }
  const engagementMm = engagementOf(checked);
  if (engagementMm === undefined) {
    const why = remark('engagement-untold');
    return [notChecked('thread-engagement', 'engagementMm', why), notChecked('stripping', 'engagementMm', why)];
  }
  const thread = engagedThread(checked, inner);
  const stripping = strippingLoad(thread, engagementMm);
  return [
    margin({
      check: 'thread-engagement',
      actual: neededEngagementMm(thread, breakingLoadN(checked)),
      allowed: engagementMm,
      unit: 'mm',
      clause: 'VDI 2230-1:2015, R11, (5.5/48)',
      note: remark('note-engagement'),
    }),
    margin({
      check: 'stripping',
      actual: Math.max(assembly.greatestN, boltMaxN),
      allowed: stripping.loadN,
      unit: 'N',
      clause: 'VDI 2230-1:2015, (5.5/42) to (5.5/47)',
      note: remark('note-stripping', { thread: stripping.first }),
    }),
  ];
}

function innerShearMPa({ request }: CheckedJoint): number | undefined {
  if (request.innerShearMPa !== undefined) return request.innerShearMPa;
  return request.innerTensileMPa === undefined ? undefined : SHEAR_RATIO * request.innerTensileMPa;
}

/** Height and width of a usual hexagon nut of the size; none for inch threads. */
const usualNut = ({ thread }: CheckedJoint) =>
  thread.system === 'ISO metric' ? HEX_NUTS.find(({ threadMm }) => threadMm === thread.majorDiameterMm) : undefined;

function engagementOf(checked: CheckedJoint): number | undefined {
  if (checked.request.engagementMm !== undefined || checked.request.jointType === 'tapped')
    return checked.request.engagementMm;
  return usualNut(checked)?.heightMm;
}

/** A hexagon nut is about so many diameters wide (common practice). */
const NUT_WIDTH = 1.5;

function engagedThread(checked: CheckedJoint, innerShear: number): EngagedThread {
  const { thread, data, request } = checked;
  const { majorDiameterMm } = thread;
  const nutMm = request.nutAcrossFlatsMm ?? usualNut(checked)?.acrossFlatsMm ?? NUT_WIDTH * majorDiameterMm;
  return {
    majorMm: majorDiameterMm,
    pitchMm: thread.pitchMm,
    pitchDiameterMm: data.pitchDiameterMm,
    minorMm: data.minorDiameterMm,
    boltShearMPa: boltShearMPa(checked),
    innerShearMPa: innerShear,
    acrossFlatsMm: request.jointType === 'tapped' ? undefined : nutMm,
  };
}
