import { type StepShown, shown } from '../step-shown.ts';
import { equivalentStressStep } from '../torque/assembly-steps.ts';
import type { Edition, ShankStress } from '../torque/shank-stress.ts';
import { type Friction, meanBearingDiameterMm, type ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import type { Contribution } from './by-propagation.ts';
import type { PreloadTold } from './preload-quantities.ts';
import { valueOf } from './told.ts';

/** What a preload was worked out from, and what came of it. */
interface Worked {
  readonly told: PreloadTold & { readonly edition: Edition; readonly sameLubricant: boolean };
  readonly geometry: ThreadAndBearing;
  readonly friction: Friction;
  readonly preloadN: number;
  readonly stress: ShankStress;
  readonly standardUncertaintyN: number;
  readonly contributions: readonly Contribution[];
}

/** The working as an engineer writes it down. */
export function preloadSteps({ told, geometry, friction, preloadN, stress, ...scatter }: Worked): readonly StepShown[] {
  return [
    told.nutFactor === undefined ? longStep(told, geometry, friction, preloadN) : shortStep(told, geometry, preloadN),
    equivalentStressStep(stress, `${told.edition}, stress in the shank`),
    ...scatterStep(told.sameLubricant, scatter.standardUncertaintyN, scatter.contributions),
  ];
}

function longStep(told: PreloadTold, geometry: ThreadAndBearing, friction: Friction, preloadN: number): StepShown {
  const prevailingNm = valueOf(told.prevailingTorqueNm);
  return shown({
    symbol: 'F_M',
    formula: `1000·${prevailingNm > 0 ? '(M_A − M_P)' : 'M_A'}/(P/(2·π) + 0.577·μ_G·d_2 + μ_K·D_Km/2)`,
    numbers: {
      M_A: valueOf(told.torqueNm),
      M_P: prevailingNm,
      P: geometry.pitchMm,
      μ_G: friction.thread,
      d_2: geometry.pitchDiameterMm,
      μ_K: friction.bearing,
      D_Km: meanBearingDiameterMm(geometry),
    },
    value: preloadN,
    unit: 'N',
    source: 'ISO 16047:2005, solved for the preload',
  });
}

function shortStep(told: PreloadTold, geometry: ThreadAndBearing, preloadN: number): StepShown {
  const prevailingNm = valueOf(told.prevailingTorqueNm);
  return shown({
    symbol: 'F_M',
    formula: `1000·${prevailingNm > 0 ? '(M_A − M_P)' : 'M_A'}/(K·d)`,
    numbers: {
      M_A: valueOf(told.torqueNm),
      M_P: prevailingNm,
      K: valueOf(told.nutFactor ?? 0),
      d: geometry.majorDiameterMm,
    },
    value: preloadN,
    unit: 'N',
    source: 'ISO 16047:2005, nut factor',
  });
}

/** Frictions of one lubricant add up before they are squared. */
function scatterStep(
  sameLubricant: boolean,
  standardUncertaintyN: number,
  contributions: readonly Contribution[],
): readonly StepShown[] {
  if (contributions.length === 0) return [];
  const letterOf = (index: number): string => `u_${index + 1}`;
  const isFriction = ({ quantity }: Contribution): boolean => quantity.endsWith('Friction');
  const frictions = sameLubricant ? contributions.filter(isFriction) : [];
  const terms = contributions.flatMap((one, index) => (frictions.includes(one) ? [] : [`${letterOf(index)}²`]));
  const summed = frictions.map((one) => letterOf(contributions.indexOf(one))).join(' + ');
  return [
    shown({
      symbol: 'u(F_M)',
      formula: `√(${[...terms, ...(summed === '' ? [] : [`(${summed})²`])].join(' + ')})`,
      numbers: Object.fromEntries(contributions.map(({ contributionN }, index) => [letterOf(index), contributionN])),
      value: standardUncertaintyN,
      unit: 'N',
      source: 'JCGM 100:2008, 5.1.2 and 5.2.2',
    }),
  ];
}
