import { type StepShown, shown } from '../step-shown.ts';
import type { BoltInJoint, BoltSection } from './bolt-sections.ts';
import type { DeformationCone } from './deformation-cone.ts';
import type { Piece } from './pressure-body.ts';

interface Worked {
  readonly bolt: BoltInJoint;
  readonly bolts: readonly BoltSection[];
  readonly parts: readonly Piece[];
  readonly cone: DeformationCone;
  readonly bearingMm: number;
  readonly loadIntroduction: number;
  readonly boltMmPerN: number;
  readonly partsMmPerN: number;
  readonly loadFactor: number;
}

const GUIDELINE = 'VDI 2230-1:2015';
const BOLT_SOURCE = `${GUIDELINE}, 5.1.1.1`;

/** The working of a compliance, in the order in which it is done by hand. */
export const complianceSteps = (worked: Worked): readonly StepShown[] => [
  ...inRow(
    worked.bolts.map((section, index) => boltStep(section, boltSymbol(section, index))),
    'δ_S',
    BOLT_SOURCE,
  ),
  ...(worked.cone.form === 'sleeve' ? [] : coneSteps(worked)),
  ...inRow(
    worked.parts.map((piece, index) => partStep(piece, `δ_P${index + 1}`)),
    'δ_P',
    `${GUIDELINE}, 5.1.2.1`,
  ),
  loadFactorStep(worked),
];

/** Springs in a row and their sum. */
function inRow(springs: readonly StepShown[], symbol: string, source: string): readonly StepShown[] {
  const numbers = Object.fromEntries(springs.map((spring) => [spring.symbol, spring.value]));
  const value = springs.reduce((sum, spring) => sum + spring.value, 0);
  const formula = springs.map((spring) => spring.symbol).join(' + ');
  return [...springs, shown({ symbol, formula, numbers, value, unit: 'mm/N', source })];
}

/** As the guideline names them; sections of the shank are numbered. */
function boltSymbol({ part }: BoltSection, index: number): string {
  switch (part) {
    case 'head':
      return 'δ_SK';
    case 'shank':
      return `δ_${index}`;
    case 'thread':
      return 'δ_Gew';
    case 'engaged thread':
      return 'δ_G';
    case 'nut':
    case 'tapped part':
      return 'δ_M';
  }
}

const boltStep = ({ lengthMm, areaMm2, modulusMPa, complianceMmPerN }: BoltSection, symbol: string): StepShown =>
  shown({
    symbol,
    formula: 'l/(E·A)',
    numbers: { l: lengthMm, E: modulusMPa, A: areaMm2 },
    value: complianceMmPerN,
    unit: 'mm/N',
    source: BOLT_SOURCE,
  });

function coneSteps({ cone, bolt, bearingMm }: Worked): readonly StepShown[] {
  const isTapped = bolt.jointType === 'tapped';
  const numbers = {
    l_K: bolt.gripMm,
    d_W: bearingMm,
    β_L: cone.slenderness,
    y: cone.width,
    tanφ: cone.tangent,
    w: isTapped ? 2 : 1,
  };
  return [
    shown({
      symbol: 'tan φ',
      formula: isTapped ? '0.348 + 0.013·ln(β_L) + 0.193·ln(y)' : '0.362 + 0.032·ln(β_L/2) + 0.153·ln(y)',
      numbers,
      value: cone.tangent,
      unit: '',
      source: `${GUIDELINE}, ${isTapped ? '(5.1/26)' : '(5.1/27)'}`,
    }),
    shown({
      symbol: 'D_A,Gr',
      formula: 'd_W + w·l_K·tanφ',
      numbers,
      value: cone.limitDiameterMm,
      unit: 'mm',
      source: `${GUIDELINE}, (5.1/23)`,
    }),
  ];
}

const CONE_FORMULA = 'ln((D_1 + d_h)·(D_2 − d_h)/((D_1 − d_h)·(D_2 + d_h)))/(π·E·d_h·tanφ)';

function partStep(
  { shape, lengthMm, fromMm, toMm, holeMm, modulusMPa, complianceMmPerN }: Piece,
  symbol: string,
): StepShown {
  const isCone = shape === 'cone';
  const tangent = isCone ? { tanφ: (toMm - fromMm) / (2 * lengthMm) } : {};
  return shown({
    symbol,
    formula: isCone ? CONE_FORMULA : '4·l/(π·E·(D_A² − d_h²))',
    numbers: { l: lengthMm, D_1: fromMm, D_2: toMm, D_A: toMm, d_h: holeMm, E: modulusMPa, ...tangent },
    value: complianceMmPerN,
    unit: 'mm/N',
    source: `${GUIDELINE}, ${isCone ? '(5.1/30)' : '(5.1/33)'}`,
  });
}

const loadFactorStep = ({ loadIntroduction, boltMmPerN, partsMmPerN, loadFactor }: Worked): StepShown =>
  shown({
    symbol: 'Φ_n',
    formula: 'n·δ_P/(δ_S + δ_P)',
    numbers: { n: loadIntroduction, δ_P: partsMmPerN, δ_S: boltMmPerN },
    value: loadFactor,
    unit: '',
    source: `${GUIDELINE}, (5.3/4) and (5.3/6)`,
  });
