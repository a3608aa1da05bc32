import { type StepShown, shown } from '../step-shown.ts';
import { meanBearingDiameterMm, torqueArms, wholeArmMm } from '../torque/thread-and-bearing.ts';
import { stayingMm, yieldPreloadN } from './stretch.ts';
import { torqueNm } from './turned-joint.ts';
import type { Worked } from './worked.ts';

/** The working of an angle, in the order in which it is done by hand. */
export const angleSteps = (worked: Worked): readonly StepShown[] => [
  ...torqueSteps(worked),
  ...yieldSteps(worked),
  ...turnSteps(worked),
];

function torqueSteps({ tightening, preloadN }: Worked): readonly StepShown[] {
  const { joint, friction, snug, snugPreloadN } = tightening;
  if (friction === undefined) return [];
  const numbers = {
    P: joint.geometry.pitchMm,
    μ_G: friction.thread,
    d_2: joint.geometry.pitchDiameterMm,
    μ_K: friction.bearing,
    D_b: meanBearingDiameterMm(joint.geometry),
    a: wholeArmMm(torqueArms(joint.geometry, friction)),
    T_p: joint.prevailingNm,
    F: preloadN,
  };
  const ISO = 'ISO 16047:2005';
  const arm = 'P/(2·π) + μ_G·d_2/√3 + μ_K·D_b/2';
  const atSnug =
    'torqueNm' in snug
      ? [
          shown({
            symbol: 'F_s',
            formula: '1000·(T_s − T_p)/a',
            numbers: { ...numbers, T_s: snug.torqueNm },
            value: snugPreloadN,
            unit: 'N',
            source: ISO,
          }),
        ]
      : [];
  return [
    shown({ symbol: 'a', formula: arm, numbers, value: numbers.a, unit: 'mm', source: ISO }),
    ...atSnug,
    shown({
      symbol: 'T',
      formula: 'F·a/1000 + T_p',
      numbers,
      value: torqueNm(joint, friction, preloadN),
      unit: 'N·m',
      source: ISO,
    }),
  ];
}

function yieldSteps({ tightening, stretch }: Worked): readonly StepShown[] {
  const { strength } = tightening;
  const yieldN = yieldPreloadN(stretch);
  const weakest = stretch.sections.find(
    ({ areaMm2, twist }) => strength && (strength.yieldMPa * areaMm2) / twist === yieldN,
  );
  if (strength === undefined || weakest === undefined) return [];
  return [
    shown({
      symbol: 'F_y',
      formula: 'R_p·A/k',
      numbers: { R_p: strength.yieldMPa, A: weakest.areaMm2, k: weakest.twist },
      value: yieldN,
      unit: 'N',
      source: 'VDI 2230-1:2015, 5.5.2: k = √(1 + 3·(τ/σ)²), 1 without torsion',
    }),
  ];
}

function turnSteps({ tightening, stretch, preloadN, angleDeg }: Worked): readonly StepShown[] {
  const { joint, springs, snugPreloadN } = tightening;
  const plasticMm = stayingMm(stretch, preloadN) - stayingMm(stretch, snugPreloadN);
  const numbers = {
    P: joint.geometry.pitchMm,
    F: preloadN,
    F_s: snugPreloadN,
    δ_S: springs.boltMmPerN,
    δ_P: springs.partsMmPerN,
    f_pl: plasticMm,
  };
  const elasticMm = (preloadN - snugPreloadN) * joint.elasticMmPerN;
  return [
    shown({
      symbol: 'f_el',
      formula: '(F − F_s)·(δ_S + δ_P)',
      numbers,
      value: elasticMm,
      unit: 'mm',
      source: 'VDI 2230-1:2015, 5.1: compliances in a row',
    }),
    ...(plasticMm === 0
      ? []
      : [
          shown({
            symbol: 'f_pl',
            formula: 'Σ l·ε_pl(F·k/A)/k',
            numbers: {},
            value: plasticMm,
            unit: 'mm',
            source: LAW,
          }),
        ]),
    shown({
      symbol: 'θ',
      formula: plasticMm === 0 ? '360·f_el/P' : '360·(f_el + f_pl)/P',
      numbers: { ...numbers, f_el: elasticMm },
      value: angleDeg,
      unit: '°',
      source: 'the nut advances by its pitch each turn',
    }),
  ];
}

const LAW = 'law of the steel, an assumption (see there)';
