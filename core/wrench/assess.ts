import type { DecisionRule, JointContent } from '../joint/joint.ts';
import { wrenchSetting } from '../procedure/setting.ts';
import { type TorqueAim, tightening, torqueAims } from './aims.ts';
import { daysToCalibration } from './calibration-state.ts';
import type { Objection } from './objection.ts';
import { shareOfWindowLeft, uncertaintyOf } from './share-left.ts';
import type { Tool } from './wrench.ts';

type Rule = (tool: Tool, content: JointContent, onDate: string) => readonly Objection[];

const RULES: readonly Rule[] = [calibrationStands, adapterIsPossible, angleIsShown, angleIsFineEnough, torquesFit];

/**
 * What speaks against taking a tool for a joint.
 *
 * @param onDate ISO 8601, a day or an instant
 * @returns empty when it may be taken; otherwise each objection once a stage, at the first round that it touches
 */
export const assessTool = (tool: Tool, content: JointContent, onDate: string): readonly Objection[] =>
  RULES.flatMap((rule) => rule(tool, content, onDate));

function calibrationStands({ wrench }: Tool, _: JointContent, onDate: string): readonly Objection[] {
  const daysLeft = daysToCalibration(wrench, onDate);
  if (!wrench.calibration || daysLeft === undefined) return [{ code: 'never-calibrated' }];
  if (wrench.calibration.conforms === false)
    return [{ code: 'found-off', calibratedOn: wrench.calibration.calibratedOn }];
  if (daysLeft >= 0) return [];
  return [{ code: 'calibration-overdue', dueOn: wrench.calibration.dueOn, daysOver: -daysLeft }];
}

function adapterIsPossible({ wrench, adapter }: Tool): readonly Objection[] {
  if (!adapter || wrenchSetting(1, wrench.leverMm, adapter).ok) return [];
  const { lengthMm: adapterMm, angleDeg: adapterAngleDeg } = adapter;
  return [{ code: 'impossible-adapter', adapterMm, adapterAngleDeg, leverMm: wrench.leverMm }];
}

function angleIsShown({ wrench }: Tool, { stages }: JointContent): readonly Objection[] {
  if (wrench.angleResolutionDeg !== undefined) return [];
  return tightening(stages).flatMap(({ stage, angle }) => (angle ? [{ code: 'shows-no-angle', stage }] : []));
}

/** The last binary digits of a product never refuse a wrench that fits exactly. */
const LAST_DIGITS = 1e-12;

/** A display should resolve a tenth of the window (common practice). */
const COARSEST_SHARE = 0.1;

const isCoarse = (resolution: number, width: number): boolean =>
  resolution > width * COARSEST_SHARE * (1 + LAST_DIGITS);

function angleIsFineEnough({ wrench }: Tool, { stages }: JointContent): readonly Objection[] {
  const resolutionDeg = wrench.angleResolutionDeg;
  if (resolutionDeg === undefined) return [];
  return tightening(stages).flatMap(({ stage, angle }) => {
    const widthDeg = angle ? angle.upperDeg - angle.lowerDeg : Number.POSITIVE_INFINITY;
    return isCoarse(resolutionDeg, widthDeg) ? [{ code: 'angle-too-coarse', stage, resolutionDeg, widthDeg }] : [];
  });
}

function torquesFit(tool: Tool, content: JointContent): readonly Objection[] {
  const objections = torqueAims(content, tool).flatMap((aim) => againstTorque(tool, aim, content.decisionRule));
  const isFirst = ({ code, stage }: StageObjection, index: number) =>
    objections.findIndex((other) => other.code === code && other.stage === stage) === index;
  return objections.filter(isFirst);
}

type StageObjection = Extract<Objection, { round: number }>;

function againstTorque(tool: Tool, aim: TorqueAim, rule: DecisionRule): readonly StageObjection[] {
  const { stage, round, settingNm, widthNm } = aim;
  const { lowestNm, highestNm, resolutionNm } = tool.wrench;
  const at = { stage, round };
  if (settingNm < lowestNm * (1 - LAST_DIGITS)) return [{ code: 'below-range', ...at, settingNm, lowestNm }];
  if (settingNm > highestNm * (1 + LAST_DIGITS)) return [{ code: 'above-range', ...at, settingNm, highestNm }];
  const uncertaintyNm = uncertaintyOf(tool, aim);
  if (uncertaintyNm !== undefined && shareOfWindowLeft(widthNm, uncertaintyNm, rule) <= 0) {
    return [{ code: 'too-uncertain', ...at, expandedUncertaintyNm: uncertaintyNm, widthNm }];
  }
  return isCoarse(resolutionNm, widthNm) ? [{ code: 'torque-too-coarse', ...at, resolutionNm, widthNm }] : [];
}
