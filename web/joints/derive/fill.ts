import type { DerivedTarget } from '@clampwright/core/joint';
import type { Language } from '@clampwright/core/quantity';
import { asTyped } from '../form/as-typed.ts';
import type { JointForm } from '../form/joint-form.ts';

/** What was worked out, and how its source is said. */
export interface Filling {
  readonly derived: DerivedTarget;
  readonly plusMinusPercent: number;
  readonly sourceText: string;
}

/** The joint with the window of a stage filled in, and the derivation as the source of its numbers. */
export function filledIn(form: JointForm, stageIndex: number, filling: Filling, language: Language): JointForm {
  const { derived, plusMinusPercent, sourceText } = filling;
  const { input, ownRows } = derived.derivation;
  const stages = form.stages.map((stage, index) =>
    index === stageIndex
      ? {
          ...stage,
          torque: {
            ...stage.torque,
            form: 'percent' as const,
            target: asTyped(derived.target, language),
            percent: asTyped(plusMinusPercent, language),
            unit: form.torqueUnit,
          },
        }
      : stage,
  );
  return {
    ...form,
    fastener: {
      ...form.fastener,
      thread: input.thread,
      propertyClass: input.propertyClass ?? '',
      ownBolt: ownRows.find((row) => row.kind === 'bolt'),
      ownMaterial: ownRows.find((row) => row.kind === 'material'),
    },
    stages,
    numbersSource: { kind: 'derived', text: sourceText, derivation: derived.derivation },
  };
}
