import type { DecisionRule, JointContent } from '../joint/joint.ts';
import { acceptanceLimits } from '../verdict/acceptance-limits.ts';
import { type TorqueAim, torqueAims } from './aims.ts';
import { uncertaintyAtFastenerNm } from './uncertainty.ts';
import type { Tool } from './wrench.ts';

/** A joint that judges simply is looked at as if it guarded with U: a surer wrench is better there too. */
const GUARDED: DecisionRule = { kind: 'guarded', factor: 1 };

/**
 * What guarding on both sides leaves of a window, 0 to 1.
 *
 * @param expandedUncertaintyNm k = 2
 * @source JCGM 106:2012, 8.3: acceptance interval; its share as a measure of a tool is ours
 */
export function shareOfWindowLeft(widthNm: number, expandedUncertaintyNm: number, rule: DecisionRule): number {
  const window = { lower: 0, upper: widthNm };
  const limits = acceptanceLimits(window, expandedUncertaintyNm / 2, rule.kind === 'simple' ? GUARDED : rule);
  return limits.ok && widthNm > 0 ? 1 - (2 * limits.value.guardBand) / widthNm : 0;
}

/** Expanded uncertainty as the wrench shows it, adapter and extension counted in; undefined where nobody knows. */
export function uncertaintyOf(tool: Tool, { targetNm, factor }: TorqueAim): number | undefined {
  const uncertaintyNm = uncertaintyAtFastenerNm(targetNm, tool);
  return uncertaintyNm === undefined ? undefined : uncertaintyNm * factor;
}

/** What guarding leaves of the narrowest torque window of a joint, 0 to 1; 1 where it has none. */
export const shareLeft = (tool: Tool, content: JointContent): number =>
  torqueAims(content, tool).reduce((least, aim) => {
    const uncertaintyNm = uncertaintyOf(tool, aim);
    const left = uncertaintyNm === undefined ? 0 : shareOfWindowLeft(aim.widthNm, uncertaintyNm, content.decisionRule);
    return Math.min(least, left);
  }, 1);
