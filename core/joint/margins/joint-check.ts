import { invalid, ok, type Result } from '../../failure/failure.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { showNumber } from '../../quantity/show-number.ts';
import type { StepShown } from '../step-shown.ts';
import { classDoubts, frictionDoubts, nutDoubts } from '../torque/doubts.ts';
import type { Warning } from '../warning.ts';
import { assemblyTwist, boltMargins, weakestSection } from './bolt-margins.ts';
import { checkSteps } from './check-steps.ts';
import { type CheckedJoint, checkedJointOf } from './checked-joint.ts';
import { clampMargins } from './clamp-margins.ts';
import { type Forces, forcesIn } from './forces.ts';
import type { Checked, Margin, NotChecked } from './margin.ts';
import { pressureMargins } from './pressure-margins.ts';
import type { JointCheckRequest } from './request.ts';
import { threadMargins } from './thread-margins.ts';

export interface JointCheck {
  /** Whether every check that was made holds; never more than an estimate. */
  readonly holds: boolean;
  readonly assemblyMinN: number;
  readonly assemblyMaxN: number;
  readonly tighteningFactor: number;
  readonly embeddingUm: number;
  readonly embeddingLossN: number;
  readonly temperatureGainN: number;
  readonly preloadMinN: number;
  readonly preloadMaxN: number;
  readonly loadFactor: number;
  readonly clampMinN: number;
  readonly boltMaxN: number;
  readonly margins: readonly Margin[];
  readonly notChecked: readonly NotChecked[];
  readonly assumptions: readonly Remark[];
  readonly warnings: readonly Warning[];
  readonly steps: readonly StepShown[];
}

/**
 * A joint against all that may go wrong with it, each as a margin with its clause. Estimates: the maker's figure and
 * licensed practice come first.
 *
 * @returns refused with field and reason, also when the preload would break the bolt
 * @source VDI 2230-1:2015, R1 to R12, concentric joint of one bolt
 */
export function jointCheckOf(request: JointCheckRequest): Result<JointCheck> {
  const checked = checkedJointOf(request);
  if (!checked.ok) return checked;
  const forces = forcesIn(checked.value);
  if (!forces.ok) return forces;
  const fault = breaksAtAssembly(checked.value, forces.value);
  if (fault !== undefined) return fault;
  const pressures = pressureMargins(checked.value, forces.value);
  if (!pressures.ok) return pressures;
  const all = [
    ...boltMargins(checked.value, forces.value),
    ...pressures.value,
    ...threadMargins(checked.value, forces.value),
    ...clampMargins(checked.value, forces.value),
  ];
  return ok(told(checked.value, forces.value, all));
}

const newtons = (forceN: number): string => `${showNumber(Math.round(forceN), 'en')} N`;

function breaksAtAssembly(checked: CheckedJoint, { assembly }: Forces) {
  const breaksN = (checked.strength.tensileMPa * weakestSection(checked).areaMm2) / assemblyTwist(checked);
  if (assembly.greatestN <= breaksN) return undefined;
  return invalid(
    checked.request.torqueNm === undefined ? 'preloadN' : 'torqueNm',
    `Scatter brings the preload to ${newtons(assembly.greatestN)}, beyond the ${newtons(breaksN)} at which the bolt breaks while it is tightened.`,
    `a target whose greatest preload stays below ${newtons(breaksN)}`,
  );
}

function told(checked: CheckedJoint, forces: Forces, all: readonly Checked[]): JointCheck {
  const margins = all.flatMap((one) => ('margin' in one ? [one.margin] : []));
  const { assembly, unloadedN: _, ...rest } = forces;
  return {
    holds: margins.every(({ holds }) => holds),
    assemblyMinN: assembly.leastN,
    assemblyMaxN: assembly.greatestN,
    tighteningFactor: assembly.factor,
    ...rest,
    loadFactor: checked.compliance.loadFactor,
    margins,
    notChecked: all.flatMap((one) => ('missing' in one ? [one.missing] : [])),
    assumptions: [remark('estimate'), ...checked.assumptions, ...assembly.assumptions],
    warnings: doubts(checked, forces),
    steps: checkSteps(checked, forces, margins),
  };
}

function doubts(checked: CheckedJoint, forces: Forces): readonly Warning[] {
  const { compliance, data, nutClass, request, threadFriction } = checked;
  return [
    ...compliance.warnings,
    ...classDoubts(data),
    ...frictionDoubts('threadFriction', threadFriction),
    ...(request.jointType === 'tapped' ? [] : nutDoubts(nutClass, data, forces.assembly.greatestN)),
    ...opening(forces),
  ];
}

function opening({ preloadMinN, clampMinN }: Forces): readonly Warning[] {
  if (preloadMinN <= 0) return [{ field: 'tighteningFactor', ...remark('no-preload-left') }];
  return clampMinN > 0 ? [] : [{ field: 'axialLoadN', ...remark('may-open') }];
}
