import type { Wrench } from '@clampwright/core/wrench';

const ROUND_STEPS = [1, 2, 5] as const;

/** A round torque inside the range of a wrench, N·m, to show what an adapter does to its setting. */
export function exampleTorqueNm({ lowestNm, highestNm }: Pick<Wrench, 'lowestNm' | 'highestNm'>): number {
  const middleNm = (lowestNm + highestNm) / 2;
  const decade = 10 ** Math.floor(Math.log10(middleNm));
  const rounded = ROUND_STEPS.map((step) => step * decade).filter((torqueNm) => torqueNm <= middleNm);
  const candidate = rounded.at(-1) ?? decade;
  return candidate >= lowestNm ? candidate : middleNm;
}
