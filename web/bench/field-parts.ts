import type { Field } from './fields.ts';

/** Parts of a long form, in the order in which a joint is thought of. */
const PARTS = ['bolt', 'clamped', 'bearing', 'engagement', 'tightening', 'settling', 'loads'] as const;
type PartName = (typeof PARTS)[number];

const FIELDS_OF: Readonly<Record<PartName, readonly string[]>> = {
  bolt: [
    'thread',
    'propertyClass',
    'headForm',
    'shank',
    'yieldStrengthMPa',
    'tensileStrengthMPa',
    'boltModulusMPa',
    'boltLengthMm',
    'boltLaw',
    'uniformStrain',
    'plasticLengthMm',
    'boltExpansionPerK',
  ],
  clamped: ['jointType', 'layers', 'washers', 'gripMm', 'holeMm', 'loadIntroduction', 'boltMmPerN', 'partsMmPerN'],
  bearing: [
    'bearingOuterMm',
    'nutBearingOuterMm',
    'headPartGrade',
    'headPressureLimitMPa',
    'nutPartGrade',
    'nutPressureLimitMPa',
  ],
  engagement: [
    'engagementMm',
    'tappedDepthMm',
    'nutModulusMPa',
    'nutClass',
    'nutAcrossFlatsMm',
    'innerTensileMPa',
    'innerShearMPa',
  ],
  tightening: [
    'preloadN',
    'torqueNm',
    'preloadIs',
    'angleDeg',
    'snugTorqueNm',
    'snugPreloadN',
    'tighteningFactor',
    'tighteningMethod',
    'threadFriction',
    'bearingFriction',
    'frictionLow',
    'frictionHigh',
    'prevailingTorqueNm',
    'utilization',
    'turnOfNut',
    'slopedFaces',
    'toolParts',
  ],
  settling: ['embeddingUm', 'roughnessUm', 'boltRiseK', 'partsRiseK'],
  loads: [
    'axialLoadN',
    'axialLoadLowN',
    'shearLoadN',
    'slipFriction',
    'shearPlanes',
    'slipSafety',
    'clampNeededN',
    'gasketAreaMm2',
    'gasketSeatingMPa',
    'gasketServiceMPa',
    'gasketLimitMPa',
  ],
};

export interface FieldPart {
  readonly name: PartName;
  readonly fields: readonly Field[];
}

/** As many fields as are still found at a glance. */
const MOST_AT_ONCE = 24;

/**
 * Divides the fields of a form that is too long to be looked over.
 *
 * @returns parts that together hold every field once, or undefined where the form is short, or not about a joint
 */
export function partsOf(fields: readonly Field[]): readonly FieldPart[] | undefined {
  if (fields.length <= MOST_AT_ONCE) return undefined;
  const parts = PARTS.map((name) => ({
    name,
    fields: FIELDS_OF[name].flatMap((known) => fields.filter((field) => field.name === known)),
  })).filter((part) => part.fields.length > 0);
  const placed = parts.reduce((sum, part) => sum + part.fields.length, 0);
  return placed === fields.length ? parts : undefined;
}
