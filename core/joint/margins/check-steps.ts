import { type StepShown, shown } from '../step-shown.ts';
import { assemblyTwist, weakestSection } from './bolt-margins.ts';
import type { CheckedJoint } from './checked-joint.ts';
import type { Forces } from './forces.ts';
import type { Margin } from './margin.ts';

const GUIDELINE = 'VDI 2230-1:2015';

/** The working of the forces, and each margin as a quotient. */
export function checkSteps(checked: CheckedJoint, forces: Forces, margins: readonly Margin[]): readonly StepShown[] {
  return [...forceSteps(checked, forces), assemblyStress(checked, forces), ...margins.map(marginStep)];
}

function forceSteps({ request, compliance }: CheckedJoint, forces: Forces): readonly StepShown[] {
  const { assembly, temperatureGainN: gainN } = forces;
  const numbers = {
    F_Mmax: assembly.greatestN,
    F_Mmin: assembly.leastN,
    α_A: assembly.factor,
    f_Z: forces.embeddingUm / 1000,
    δ_S: compliance.boltMmPerN,
    δ_P: compliance.partsMmPerN,
    F_Z: forces.embeddingLossN,
    F_loss: Math.max(0, -gainN),
    F_gain: Math.max(0, gainN),
    F_Vmin: forces.preloadMinN,
    F_Vmax: forces.preloadMaxN,
    Φ: compliance.loadFactor,
    F_A: request.axialLoadN,
  };
  const force = (symbol: string, formula: string, value: number, rule: string): StepShown =>
    shown({ symbol, formula, numbers, value, unit: 'N', source: `${GUIDELINE}, ${rule}` });
  return [
    force('F_Mmin', 'F_Mmax/α_A', assembly.leastN, 'R1 and R6'),
    force('F_Z', 'f_Z/(δ_S + δ_P)', forces.embeddingLossN, 'R4'),
    force('F_Vmin', 'F_Mmin − F_Z − F_loss', forces.preloadMinN, 'R4 and R5'),
    force('F_Vmax', 'F_Mmax + F_gain', forces.preloadMaxN, 'R4 and R6'),
    force('F_KRmin', 'F_Vmin − (1 − Φ)·F_A', forces.clampMinN, 'R5'),
    force('F_Smax', 'max(F_Vmax + Φ·F_A, F_A)', forces.boltMaxN, 'R8'),
  ];
}

const assemblyStress = (checked: CheckedJoint, { assembly }: Forces): StepShown =>
  shown({
    symbol: 'σ_redM',
    formula: 'k·F_Mmax/A',
    numbers: { k: assemblyTwist(checked), F_Mmax: assembly.greatestN, A: weakestSection(checked).areaMm2 },
    value: (assemblyTwist(checked) * assembly.greatestN) / weakestSection(checked).areaMm2,
    unit: 'MPa',
    source: `${GUIDELINE}, R7: k = √(1 + 3·(τ/σ)²)`,
  });

/** @source EN 1990:2002, letters: R what is borne, E what acts */
const marginStep = ({ check, actual, allowed, ratio, clause }: Margin): StepShown =>
  shown({
    symbol: `S ${check}`,
    formula: 'R/E',
    numbers: { R: allowed, E: actual },
    value: ratio,
    unit: '',
    source: clause,
  });
