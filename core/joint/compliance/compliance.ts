import { ok, type Result } from '../../failure/failure.ts';
import { profileOf } from '../../fastener/profile.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import type { StepShown } from '../step-shown.ts';
import type { Warning } from '../warning.ts';
import { type BoltSection, boltSections } from './bolt-sections.ts';
import { type DeformationCone, deformationCone } from './deformation-cone.ts';
import { byExponentialFit, byFrusta } from './frusta.ts';
import { type JointSprings, jointOf } from './joint-of.ts';
import { inSeries, type Piece, pressureBody } from './pressure-body.ts';
import type { ComplianceRequest } from './request.ts';
import { complianceSteps } from './steps.ts';

/** How much of its row a spring gives way. */
type Shared<T> = T & { readonly shareOfWhole: number };

/** The same joint by another method. */
export interface OtherMethod {
  readonly boltMmPerN: number;
  readonly partsMmPerN: number;
  readonly loadFactor: number;
}

export interface Compliance {
  /** δ_S. */
  readonly boltMmPerN: number;
  /** δ_P. */
  readonly partsMmPerN: number;
  /** Φ_n = n·δ_P/(δ_S + δ_P), the share of an axial load that the bolt feels. */
  readonly loadFactor: number;
  readonly boltNPerMm: number;
  readonly partsNPerMm: number;
  /** Both in a row, as the nut feels them when it is turned. */
  readonly jointNPerMm: number;
  readonly gripMm: number;
  /** The head's bearing circle and the hole that were counted with. */
  readonly bearingOuterMm: number;
  readonly holeMm: number;
  readonly cone: DeformationCone;
  readonly boltSections: readonly Shared<BoltSection>[];
  readonly partSections: readonly Shared<Piece>[];
  readonly shigley: OtherMethod;
  /** Parts alone; only where all are of one modulus. */
  readonly exponentialFit?: { readonly material: string; readonly partsMmPerN: number };
  /** Shigley's figure over VDI's. */
  readonly comparison: { readonly bolt: number; readonly parts: number; readonly loadFactor: number };
  readonly assumptions: readonly Remark[];
  readonly warnings: readonly Warning[];
  readonly steps: readonly StepShown[];
}

/**
 * How bolt and clamped parts give way, by VDI 2230 and, beside it, after Shigley.
 *
 * @returns refused as `jointOf` refuses
 * @source VDI 2230-1:2015, 5.1 and 5.3; Shigley's Mechanical Engineering Design, 9th ed., 8-4 and 8-5
 */
export function complianceOf(request: ComplianceRequest): Result<Compliance> {
  const joint = jointOf(request);
  return joint.ok ? ok(work(joint.value, request)) : joint;
}

function work(joint: JointSprings, { loadIntroduction, tappedDepthMm, shank }: ComplianceRequest): Compliance {
  const { bolt, layers, bearing, warnings } = joint;
  const bolts = boltSections(bolt);
  const smallerMm = Math.min(bearing.headMm, bearing.nutMm ?? Infinity);
  const cone = deformationCone(bolt.jointType, bolt.gripMm, smallerMm, narrowestMm(joint));
  const parts = pressureBody(layers, bearing, cone.tangent);
  const ours = method(inSeries(bolts), inSeries(parts), loadIntroduction);
  const frusta = byFrusta(bolt, profileOf(bolt.thread).stressAreaMm2, layers, bearing, tappedDepthMm);
  const theirs = method(frusta.boltMmPerN, frusta.partsMmPerN, loadIntroduction);
  return {
    ...ours,
    boltNPerMm: 1 / ours.boltMmPerN,
    partsNPerMm: 1 / ours.partsMmPerN,
    jointNPerMm: 1 / (ours.boltMmPerN + ours.partsMmPerN),
    gripMm: bolt.gripMm,
    bearingOuterMm: joint.geometry.bearingOuterMm,
    holeMm: joint.geometry.holeMm,
    cone,
    boltSections: shared(bolts),
    partSections: shared(parts),
    shigley: theirs,
    ...oneMaterial(joint, frusta.gripMm),
    comparison: {
      bolt: theirs.boltMmPerN / ours.boltMmPerN,
      parts: theirs.partsMmPerN / ours.partsMmPerN,
      loadFactor: theirs.loadFactor / ours.loadFactor,
    },
    assumptions: assumptionsOf(joint, shank.length === 0),
    warnings,
    steps: complianceSteps({ bolts, parts, cone, bearingMm: smallerMm, bolt, loadIntroduction, ...ours }),
  };
}

const method = (boltMmPerN: number, partsMmPerN: number, loadIntroduction: number): OtherMethod => ({
  boltMmPerN,
  partsMmPerN,
  loadFactor: (loadIntroduction * partsMmPerN) / (boltMmPerN + partsMmPerN),
});

function shared<T extends { readonly complianceMmPerN: number }>(springs: readonly T[]): readonly Shared<T>[] {
  const wholeMmPerN = inSeries(springs);
  return springs.map((spring) => ({ ...spring, shareOfWhole: spring.complianceMmPerN / wholeMmPerN }));
}

/** D'_A of the clamped parts; washers do not count. */
const narrowestMm = ({ layers }: JointSprings): number =>
  Math.min(...layers.filter(({ isWasher }) => !isWasher).map(({ outerMm }) => outerMm));

function oneMaterial({ bolt, layers }: JointSprings, gripMm: number): Pick<Compliance, 'exponentialFit'> {
  const tapped = bolt.jointType === 'tapped' ? [bolt.nutModulusMPa] : [];
  const moduliMPa = new Set([...layers.map(({ modulusMPa }) => modulusMPa), ...tapped]);
  const [modulusMPa] = moduliMPa;
  if (modulusMPa === undefined || moduliMPa.size > 1) return {};
  return { exponentialFit: byExponentialFit(modulusMPa, bolt.thread.majorDiameterMm, gripMm) };
}

function assumptionsOf(joint: JointSprings, isAllThread: boolean): readonly Remark[] {
  const isWide = narrowestMm(joint) === Infinity;
  return [
    remark('in-line'),
    ...joint.assumptions,
    ...(isAllThread ? [remark('all-thread')] : []),
    ...(isWide ? [remark('parts-as-cone')] : []),
  ];
}
