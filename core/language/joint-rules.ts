import type { ConsequenceClass } from '../joint/consequence.ts';
import type { DecisionRule, FastenerSpec } from '../joint/joint.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showTorque } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import { say } from './say.ts';

/** Which pulls a joint lets count as within. */
export function sayRule(rule: DecisionRule, language: Language): string {
  switch (rule.kind) {
    case 'simple':
      return say(language, 'rule.simple');
    case 'guarded':
      return say(language, 'rule.guarded', { factor: showNumber(rule.factor, language) });
    case 'risk':
      return say(language, 'rule.risk', { percent: showNumber(rule.maximum * 100, language) });
  }
}

/** What follows when the joint fails. */
export const sayConsequence = (consequenceClass: ConsequenceClass, language: Language): string =>
  say(language, `consequence.${consequenceClass}`);

/** What takes torque before the fastener clamps, and how much at the most. */
export const sayPrevailing = (
  { by, highestNm }: NonNullable<FastenerSpec['prevailing']>,
  unit: TorqueUnit,
  language: Language,
): string => say(language, `prevailing.${by}`, { torque: showTorque(highestNm, unit, language) });

/** Stiffness of a fastener and what it clamps. */
export const sayStiffness = (stiffnessNPerMm: number, language: Language): string =>
  `${showNumber(Number(stiffnessNPerMm.toPrecision(4)), language)}\u00a0N/mm`;
