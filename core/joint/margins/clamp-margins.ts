import { remark } from '../../language/mechanics/remark.ts';
import type { CheckedJoint } from './checked-joint.ts';
import type { Forces } from './forces.ts';
import { type Checked, margin, notChecked } from './margin.ts';
import { boltShearMPa } from './thread-margins.ts';

const GUIDELINE = 'VDI 2230-1:2015';

/** What the clamp force has to do: keep closed, hold across, seal. */
export const clampMargins = (checked: CheckedJoint, forces: Forces): readonly Checked[] => [
  ...closed(checked, forces),
  ...asked(checked, forces),
  ...slip(checked, forces),
  ...gasket(checked, forces),
];

function closed({ request }: CheckedJoint, { preloadMinN, unloadedN }: Forces): readonly Checked[] {
  if (request.axialLoadN === 0) return [];
  return [
    margin({
      check: 'stays-closed',
      actual: unloadedN,
      allowed: preloadMinN,
      unit: 'N',
      clause: `${GUIDELINE}, R2 and R5`,
      note: remark('note-stays-closed'),
    }),
  ];
}

function asked({ request }: CheckedJoint, { clampMinN }: Forces): readonly Checked[] {
  if (request.clampNeededN === undefined) return [];
  return [
    margin({
      check: 'clamp-force',
      actual: request.clampNeededN,
      allowed: clampMinN,
      unit: 'N',
      clause: `${GUIDELINE}, R2 and R5`,
      note: remark('note-clamp-asked'),
    }),
  ];
}

function slip(checked: CheckedJoint, { clampMinN }: Forces): readonly Checked[] {
  const { shearLoadN, slipFriction, shearPlanes, slipSafety } = checked.request;
  if (shearLoadN === 0) return [];
  const held =
    slipFriction === undefined
      ? notChecked('slip', 'slipFriction', remark('slip-friction-untold'))
      : margin({
          check: 'slip',
          actual: shearLoadN,
          allowed: Math.max(0, clampMinN) * slipFriction * shearPlanes,
          unit: 'N',
          needed: slipSafety,
          clause: `${GUIDELINE}, R12 (safety from memory)`,
          note: remark('note-slip-held'),
        });
  return [held, shear(checked)];
}

/** A bolt that has to bear the load across once the joint has slipped. */
function shear(checked: CheckedJoint): Checked {
  const { shearLoadN, shearPlanes } = checked.request;
  return margin({
    check: 'shear',
    actual: shearLoadN / shearPlanes / checked.data.stressAreaMm2,
    allowed: boltShearMPa(checked),
    unit: 'MPa',
    needed: 1.1,
    clause: `${GUIDELINE}, R12 (safety from memory)`,
    note: remark('note-shear'),
  });
}

function gasket({ request }: CheckedJoint, forces: Forces): readonly Checked[] {
  const { gasketAreaMm2, gasketSeatingMPa, gasketServiceMPa, gasketLimitMPa } = request;
  const stresses = [gasketSeatingMPa, gasketServiceMPa, gasketLimitMPa];
  if (gasketAreaMm2 === undefined) {
    const isTold = stresses.some((stressMPa) => stressMPa !== undefined);
    return isTold ? [notChecked('gasket-seating', 'gasketAreaMm2', remark('gasket-area-untold'))] : [];
  }
  const clause = 'ASME PCC-1, appendix O: gasket stress between seating and limit (from memory)';
  const settledN = forces.assembly.leastN - forces.embeddingLossN;
  return [
    ...(gasketSeatingMPa === undefined
      ? []
      : [
          margin({
            check: 'gasket-seating',
            actual: gasketSeatingMPa,
            allowed: settledN / gasketAreaMm2,
            unit: 'MPa',
            clause,
            note: remark('note-gasket-seating'),
          }),
        ]),
    ...(gasketServiceMPa === undefined
      ? []
      : [
          margin({
            check: 'gasket-in-service',
            actual: gasketServiceMPa,
            allowed: forces.clampMinN / gasketAreaMm2,
            unit: 'MPa',
            clause,
            note: remark('note-gasket-service'),
          }),
        ]),
    ...(gasketLimitMPa === undefined
      ? []
      : [
          margin({
            check: 'gasket-crushing',
            actual: forces.preloadMaxN / gasketAreaMm2,
            allowed: gasketLimitMPa,
            unit: 'MPa',
            clause,
            note: remark('note-greatest-preload'),
          }),
        ]),
  ];
}
