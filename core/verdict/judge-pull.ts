import type { DecisionRule } from '../joint/joint.ts';
import { appliedTorque } from '../procedure/setting.ts';
import type { Step } from '../procedure/step.ts';
import { expandedUncertaintyNm } from '../wrench/uncertainty.ts';
import type { Tool } from '../wrench/wrench.ts';
import { judgeQuantities, type Quantity } from './judge-quantities.ts';
import type { Reason, Verdict } from './verdict.ts';

/** What reached the fastener. */
export interface PullReading {
  readonly torqueNm: number;
  readonly angleDeg?: number | undefined;
  readonly fastestDegPerS?: number | undefined;
}

export interface JudgingConditions {
  /** Turned in earlier attempts that stayed under and are carried on, degrees. */
  readonly carriedDeg: number;
  readonly tool: Tool;
  readonly decisionRule: DecisionRule;
}

/** A verdict with the windows and the uncertainty that it was given with. */
export interface PullJudgement {
  readonly verdict: Verdict;
  readonly reasons: Reason[];
  readonly torque?: { lowerNm: number; targetNm: number; upperNm: number };
  readonly angle?: { lowerDeg: number; targetDeg: number; upperDeg: number };
  readonly speedLimitDegPerS?: number;
  readonly carriedDeg?: number;
  readonly expandedUncertaintyNm?: number;
}

/**
 * Judges one pull against a step: torque, angle, both. An angle that was pulled faster than the joint allows
 * cannot be trusted, so it makes the verdict doubtful, never better.
 *
 * @source decision with guard band: JCGM 106:2012, 8.3; speed limit of angle pulls: common practice
 */
export function judgePull(step: Step, reading: PullReading, conditions: JudgingConditions): PullJudgement {
  if (step.kind === 'loosen')
    return { verdict: 'within', reasons: [{ code: 'loosening', quantity: 'torque', value: reading.torqueNm }] };
  const uncertaintyNm = uncertaintyAtFastenerNm(reading.torqueNm, conditions.tool);
  const judged = judgeQuantities(quantitiesOf(step, reading, conditions, uncertaintyNm ?? NOBODY_KNOWS));
  if (!judged.ok) throw new Error(`a step that cannot be judged: ${JSON.stringify(judged.failure)}`);
  const { verdict, reasons } = slowed(step, reading, judged.value);
  return {
    verdict,
    reasons,
    ...(step.torque
      ? { torque: { lowerNm: step.torque.lowerNm, targetNm: step.torque.targetNm, upperNm: step.torque.upperNm } }
      : {}),
    ...(step.angle
      ? { angle: { lowerDeg: step.angle.lowerDeg, targetDeg: step.angle.targetDeg, upperDeg: step.angle.upperDeg } }
      : {}),
    ...(step.speedLimitDegPerS === undefined ? {} : { speedLimitDegPerS: step.speedLimitDegPerS }),
    ...(conditions.carriedDeg > 0 && step.angle ? { carriedDeg: conditions.carriedDeg } : {}),
    ...(uncertaintyNm === undefined ? {} : { expandedUncertaintyNm: uncertaintyNm }),
  };
}

/** Without a calibration nothing inside is certain: the guard band reaches over the whole window. */
const NOBODY_KNOWS = Number.MAX_VALUE / 4;

/** Of the torque as the wrench showed it, carried over the adapter's lever. */
function uncertaintyAtFastenerNm(torqueNm: number, { wrench, adapter }: Tool): number | undefined {
  const lever = appliedTorque(1, wrench.leverMm, adapter);
  if (!lever.ok) throw new Error('a tool that was taken has a lever that is possible');
  const shownNm = expandedUncertaintyNm(wrench, torqueNm / lever.value.factor);
  return shownNm === undefined ? undefined : shownNm * lever.value.factor;
}

function quantitiesOf(
  step: Step,
  reading: PullReading,
  conditions: JudgingConditions,
  uncertaintyNm: number,
): readonly Quantity[] {
  const { decisionRule, carriedDeg } = conditions;
  const guardNm = decisionRule.kind === 'guarded' ? decisionRule.factor * uncertaintyNm : 0;
  const quantities: Quantity[] = [];
  if (step.torque)
    quantities.push({
      name: 'torque',
      value: reading.torqueNm,
      lower: step.torque.lowerNm,
      upper: step.torque.upperNm,
      guardBand: guardNm,
    });
  if (step.angle) {
    const turned = reading.angleDeg === undefined ? {} : { value: carriedDeg + reading.angleDeg };
    quantities.push({ name: 'angle', ...turned, lower: step.angle.lowerDeg, upper: step.angle.upperDeg });
  }
  return quantities;
}

/** Puts the speed limit on a judgement. */
function slowed(
  step: Step,
  reading: PullReading,
  judged: { verdict: Verdict; reasons: Reason[] },
): { verdict: Verdict; reasons: Reason[] } {
  const limit = step.speedLimitDegPerS;
  if (limit === undefined || !step.angle || reading.fastestDegPerS === undefined || reading.fastestDegPerS <= limit)
    return judged;
  const reasons: Reason[] = [
    ...judged.reasons,
    { code: 'too-fast', quantity: 'speed', value: reading.fastestDegPerS, limit },
  ];
  return { verdict: judged.verdict === 'within' ? 'doubtful' : judged.verdict, reasons };
}
