import { type StepShown, shown } from '../joint/step-shown.ts';
import type { BudgetSource, Contribution } from './budget.ts';
import type { EvaluatedPoint } from './evaluate-point.ts';

const PART_1 = 'ISO 6789-1:2017, 5.1.5';
const PART_2 = 'ISO 6789-2:2017, clause 6';

/** The letters of the standard: relative standard uncertainty, and what it comes from. */
const LETTERS: Readonly<Record<BudgetSource, readonly [w: string, from: string]>> = {
  reference: ['w_md', 'W_md'],
  resolution: ['w_r', 'r'],
  reproducibility: ['w_rep', 'b_rep'],
  outputInterface: ['w_od', 'b_od'],
  driveInterface: ['w_int', 'b_int'],
  leverVariation: ['w_l', 'b_l'],
  repeatability: ['w_re', 's'],
};

/** The working of one point, line by line, as it can be checked by hand. */
export function budgetSteps(point: EvaluatedPoint, referenceBiasPercent: number): readonly StepShown[] {
  const { meanReferenceNm, meanDeviationPercent, standardUncertaintyPercent, expandedUncertaintyPercent } = point;
  const parts = Object.fromEntries(point.budget.map(({ source, contribution }) => [LETTERS[source][0], contribution]));
  return [
    {
      symbol: 'X̄_r',
      formula: 'ΣX_r/n',
      withNumbers: `n = ${point.deviationsPercent.length}`,
      value: meanReferenceNm,
      unit: 'N·m',
      source: PART_1,
    },
    {
      symbol: 'ā_s',
      formula: 'Σ((X_a − X_r)·100/X_r)/n',
      withNumbers: `(${point.deviationsPercent.map((one) => one.toFixed(3)).join(' + ')})/${point.deviationsPercent.length}`,
      value: meanDeviationPercent,
      unit: '%',
      source: PART_1,
    },
    ...point.budget.map((one) => contributionStep(one, point)),
    shown({
      symbol: 'w',
      formula: `√(${Object.keys(parts)
        .map((letter) => `${letter}²`)
        .join(' + ')})`,
      numbers: parts,
      value: standardUncertaintyPercent,
      unit: '%',
      source: 'JCGM 100:2008, 5.1.2',
    }),
    shown({
      symbol: 'W',
      formula: 'k·w',
      numbers: { k: 2, w: standardUncertaintyPercent },
      value: expandedUncertaintyPercent,
      unit: '%',
      source: PART_2,
    }),
    shown({
      symbol: 'W′',
      formula: '|a_m| + W + |b_ep|',
      numbers: { a_m: meanDeviationPercent, W: expandedUncertaintyPercent, b_ep: referenceBiasPercent },
      value: point.uncertaintyIntervalPercent,
      unit: '%',
      source: PART_2,
    }),
  ];
}

function contributionStep(
  { source, value, unit, contribution, assumed }: Contribution,
  { meanReferenceNm, deviationsPercent }: EvaluatedPoint,
): StepShown {
  const [symbol, from] = LETTERS[source];
  const said = assumed ? `${PART_2}; assumed, not measured` : PART_2;
  const step = { symbol, value: contribution, unit: '%', source: said };
  if (source === 'reference') return shown({ ...step, formula: `${from}/2`, numbers: { [from]: value } });
  if (source === 'repeatability')
    return shown({
      ...step,
      formula: `100·${from}/(√n·X_m)`,
      numbers: { [from]: value, n: deviationsPercent.length, X_m: meanReferenceNm },
    });
  if (unit === '%') return shown({ ...step, formula: `${from}/(2·√3)`, numbers: { [from]: value } });
  return shown({
    ...step,
    formula: `100·${from}/(2·√3·X_m)`,
    numbers: {
      [from]: value,
      X_m: contribution > 0 ? (value * 100) / (contribution * 2 * Math.sqrt(3)) : meanReferenceNm,
    },
  });
}
