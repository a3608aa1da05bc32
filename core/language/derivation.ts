import type { Derivation } from '../joint/derivation.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showTorque } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import { sayMechanics } from './mechanics/say.ts';
import { say } from './say.ts';

export interface Fact {
  readonly label: string;
  readonly value: string;
}

/** Beside its name in the registry, by which it can be worked out again. */
const nameOf = (calculation: string, language: Language): string =>
  calculation === 'assembly-torque'
    ? `${sayMechanics(language, 'derived.assembly-torque')} (${calculation})`
    : calculation;

/** What went into a derived target and what came out, for screen and record alike. */
export function sayDerivation(
  { input, output, ...derivation }: Pick<Derivation, 'calculation' | 'input' | 'output'>,
  unit: TorqueUnit,
  language: Language,
): readonly Fact[] {
  const percent = (share: number) => `${showNumber(share * 100, language, { decimals: 0 })}\u00a0%`;
  const kilonewtons = (forceN: number) => `${showNumber(forceN / 1000, language, { decimals: 1 })}\u00a0kN`;
  const { thread, propertyClass, yieldStrengthMPa } = input;
  return [
    { label: say(language, 'derived.calculation'), value: nameOf(derivation.calculation, language) },
    { label: say(language, 'record.fastener'), value: [thread, propertyClass].filter(Boolean).join(' ') },
    ...(yieldStrengthMPa === undefined
      ? []
      : [{ label: say(language, 'derived.yield'), value: `${showNumber(yieldStrengthMPa, language)}\u00a0MPa` }]),
    { label: say(language, 'derived.thread-friction'), value: showNumber(input.threadFriction, language) },
    { label: say(language, 'derived.bearing-friction'), value: showNumber(input.bearingFriction, language) },
    { label: say(language, 'derived.utilization'), value: percent(input.utilization) },
    { label: say(language, 'derived.factor'), value: showNumber(input.tighteningFactor, language) },
    { label: say(language, 'derived.torque'), value: showTorque(output.torqueNm, unit, language) },
    { label: say(language, 'derived.preload'), value: kilonewtons(output.preloadN) },
    { label: say(language, 'derived.least-preload'), value: kilonewtons(output.leastPreloadN) },
    { label: say(language, 'derived.nut-factor'), value: showNumber(output.nutFactor, language, { decimals: 3 }) },
    { label: say(language, 'derived.at-upper'), value: percent(output.utilizationAtUpper) },
  ];
}
