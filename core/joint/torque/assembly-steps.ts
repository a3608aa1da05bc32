import { type StepShown, shown } from '../step-shown.ts';
import { type Edition, type ShankStress, TORSION_DIVISOR } from './shank-stress.ts';
import type { Friction, ThreadAndBearing } from './thread-and-bearing.ts';

interface Worked {
  readonly geometry: ThreadAndBearing;
  readonly friction: Friction;
  readonly preloadN: number;
  readonly prevailingTorqueNm: number;
  readonly shankTorqueNm: number;
  readonly bearingDiameterMm: number;
  readonly torqueNm: number;
  readonly stress: ShankStress;
  readonly edition: Edition;
  readonly yieldMPa?: number;
  /** The utilization that the preload was worked out from. */
  readonly asked?: number;
}

/** The working as an engineer writes it down, letters as in VDI 2230-1. */
export function assemblySteps(worked: Worked): readonly StepShown[] {
  return [
    bearingStep(worked),
    ...preloadStep(worked),
    torqueStep(worked),
    nutFactorStep(worked),
    ...stressSteps(worked),
  ];
}

const bearingStep = ({ geometry, bearingDiameterMm }: Worked): StepShown =>
  shown({
    symbol: 'D_Km',
    formula: '(d_w + d_h)/2',
    numbers: { d_w: geometry.bearingOuterMm, d_h: geometry.holeMm },
    value: bearingDiameterMm,
    unit: 'mm',
    source: 'ISO 16047:2005, mean bearing diameter',
  });

/** With a prevailing torque the preload is the root of a square; the stress below then shows that it fits. */
function preloadStep(worked: Worked): readonly StepShown[] {
  const { geometry, friction, yieldMPa, asked, edition } = worked;
  if (yieldMPa === undefined || asked === undefined || worked.prevailingTorqueNm > 0) return [];
  const factor = TORSION_DIVISOR[edition] / 8;
  return [
    shown({
      symbol: 'F_M',
      formula: `ν·R_p0,2·π/4·d_0²/√(1 + 3·(${factor}·d_2/d_0·(P/(π·d_2) + 1.155·μ_G))²)`,
      numbers: {
        ν: asked,
        'R_p0,2': yieldMPa,
        d_0: geometry.sectionDiameterMm,
        d_2: geometry.pitchDiameterMm,
        P: geometry.pitchMm,
        μ_G: friction.thread,
      },
      value: worked.preloadN,
      unit: 'N',
      source: `${edition}, assembly preload at a share of the yield strength`,
    }),
  ];
}

const torqueStep = ({ geometry, friction, ...worked }: Worked): StepShown =>
  shown({
    symbol: 'M_A',
    formula: `F_M·(P/(2·π) + 0.577·μ_G·d_2 + μ_K·D_Km/2)/1000${worked.prevailingTorqueNm > 0 ? ' + M_P' : ''}`,
    numbers: {
      F_M: worked.preloadN,
      P: geometry.pitchMm,
      μ_G: friction.thread,
      d_2: geometry.pitchDiameterMm,
      μ_K: friction.bearing,
      D_Km: worked.bearingDiameterMm,
      M_P: worked.prevailingTorqueNm,
    },
    value: worked.torqueNm,
    unit: 'N·m',
    source: 'ISO 16047:2005; VDI 2230-1:2015, R13',
  });

const nutFactorStep = ({ geometry, preloadN, torqueNm, prevailingTorqueNm }: Worked): StepShown =>
  shown({
    symbol: 'K',
    formula: `1000·${prevailingTorqueNm > 0 ? '(M_A − M_P)' : 'M_A'}/(F_M·d)`,
    numbers: { M_A: torqueNm, M_P: prevailingTorqueNm, F_M: preloadN, d: geometry.majorDiameterMm },
    value: (1000 * (torqueNm - prevailingTorqueNm)) / (preloadN * geometry.majorDiameterMm),
    unit: '',
    source: 'ISO 16047:2005, nut factor',
  });

const stressSteps = ({ geometry, stress, edition, ...worked }: Worked): readonly StepShown[] => [
  shown({
    symbol: 'σ_M',
    formula: '4·F_M/(π·d_0²)',
    numbers: { F_M: worked.preloadN, d_0: geometry.sectionDiameterMm },
    value: stress.tensionMPa,
    unit: 'MPa',
    source: 'VDI 2230-1:2015, R7',
  }),
  shown({
    symbol: 'τ_M',
    formula: `${TORSION_DIVISOR[edition]}·1000·M_G/(π·d_0³)`,
    numbers: { M_G: worked.shankTorqueNm, d_0: geometry.sectionDiameterMm },
    value: stress.torsionMPa,
    unit: 'MPa',
    source: `${edition}, torsion of the shank`,
  }),
  equivalentStressStep(stress, 'VDI 2230-1:2015, R7'),
];

/** Tension and torsion of the shank together, after von Mises. */
export const equivalentStressStep = ({ tensionMPa, torsionMPa, vonMisesMPa }: ShankStress, source: string): StepShown =>
  shown({
    symbol: 'σ_red',
    formula: '√(σ_M² + 3·τ_M²)',
    numbers: { σ_M: tensionMPa, τ_M: torsionMPa },
    value: vonMisesMPa,
    unit: 'MPa',
    source,
  });
