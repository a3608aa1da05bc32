import type { DecisionRule } from '../joint/joint.ts';
import type { Step } from '../procedure/step.ts';
import { windUpDeg } from '../procedure/wind-up.ts';
import { uncertaintyAtFastenerNm, windUpUncertaintyDeg } from '../wrench/uncertainty.ts';
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
 * @source decision with guard band: JCGM 106:2012, 8.3, by chance 8.4; speed limit of angle pulls: common practice
 */
export function judgePull(step: Step, reading: PullReading, conditions: JudgingConditions): PullJudgement {
  if (step.kind === 'loosen')
    return { verdict: 'within', reasons: [{ code: 'loosening', quantity: 'torque', value: reading.torqueNm }] };
  const uncertaintyNm = uncertaintyAtFastenerNm(reading.torqueNm, conditions.tool);
  const judged = judgeQuantities(quantitiesOf(step, reading, conditions, uncertaintyNm));
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

function quantitiesOf(
  step: Step,
  reading: PullReading,
  conditions: JudgingConditions,
  uncertaintyNm: number | undefined,
): readonly Quantity[] {
  const { decisionRule, carriedDeg, tool } = conditions;
  const quantities: Quantity[] = [];
  if (step.torque)
    quantities.push({
      name: 'torque',
      value: reading.torqueNm,
      lower: step.torque.lowerNm,
      upper: step.torque.upperNm,
      ...ruled(decisionRule, uncertaintyNm),
    });
  if (step.angle) {
    const turned = reading.angleDeg === undefined ? {} : { value: carriedDeg + reading.angleDeg };
    const uncertaintyDeg = windUpUncertaintyDeg(windUpOf(step, reading, tool), tool);
    quantities.push({
      name: 'angle',
      ...turned,
      lower: step.angle.lowerDeg,
      upper: step.angle.upperDeg,
      ...(uncertaintyDeg > 0 ? ruled(decisionRule, 2 * uncertaintyDeg) : {}),
    });
  }
  return quantities;
}

/** What was taken off the angle for the twist of the extension. */
const windUpOf = ({ angleFromNm = 0 }: Step, { torqueNm }: PullReading, { extension }: Tool): number =>
  extension?.stiffnessNmPerDeg === undefined ? 0 : windUpDeg(torqueNm, angleFromNm, extension.stiffnessNmPerDeg);

/** What the joint's rule wants of a quantity, told its expanded uncertainty (k = 2). */
function ruled(
  rule: DecisionRule,
  expandedUncertainty: number | undefined,
): Pick<Quantity, 'guardBand' | 'standardUncertainty' | 'maximumRisk'> {
  if (rule.kind === 'simple') return {};
  if (expandedUncertainty === undefined) return { guardBand: NOBODY_KNOWS };
  const standardUncertainty = expandedUncertainty / 2;
  return rule.kind === 'guarded'
    ? { standardUncertainty, guardBand: rule.factor * expandedUncertainty }
    : { standardUncertainty, maximumRisk: rule.maximum };
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
