import { invalid, ok, type Result } from '../failure/failure.ts';
import type { StepShown } from '../joint/step-shown.ts';
import type { Warning } from '../joint/warning.ts';
import { remark } from '../language/mechanics/remark.ts';
import type { Contribution, Spread } from './budget.ts';
import { budgetSteps } from './budget-steps.ts';
import { type EvaluatedPoint, evaluatePoint } from './evaluate-point.ts';
import { calibrationPlan } from './plan.ts';
import { type ReadingsAt, readingsFlaw } from './readings-flaw.ts';
import { permissibleDeviationPercent, type ToolClass, type ToolType, toolClass } from './tool-class.ts';

export interface CalibrationReadings extends Readonly<Partial<Record<Spread, number | undefined>>> {
  readonly type: ToolType;
  readonly class: string;
  readonly maxTorqueNm: number;
  readonly resolutionNm: number;
  readonly points: readonly ReadingsAt[];
  readonly referenceUncertaintyPercent?: number | undefined;
  readonly referenceBiasPercent?: number | undefined;
}

export interface EvaluatedCalibration {
  readonly permissibleDeviationPercent: number;
  readonly points: readonly EvaluatedPoint[];
  readonly conforms: boolean;
  /** Of the point with the greatest relative uncertainty. */
  readonly budget: readonly Contribution[];
  readonly budgetAtNm: number;
  readonly warnings: readonly Warning[];
  readonly steps: readonly StepShown[];
}

/**
 * Deviations and uncertainty of a wrench from its readings beside a reference, in one direction.
 *
 * @returns refused where a reading is missing, zero, out of order or in another unit, or the class unknown; marked in
 * `warnings` where there are fewer repeats or points than the standard orders, or a contribution was not measured
 * @source ISO 6789-1:2017 and ISO 6789-2:2017 (from memory and secondary sources)
 */
export function evaluateCalibration(readings: CalibrationReadings): Result<EvaluatedCalibration> {
  const known = toolClass(readings.type, readings.class);
  if (!known.ok) return known;
  const flaw = flawOf(readings);
  if (flaw) return flaw;
  const permissiblePercent = permissibleDeviationPercent(known.value, readings.maxTorqueNm);
  const points = evaluated(readings, permissiblePercent);
  const widest = points.reduce((widest, point) =>
    point.standardUncertaintyPercent > widest.standardUncertaintyPercent ? point : widest,
  );
  return ok({
    permissibleDeviationPercent: permissiblePercent,
    points,
    conforms: points.every(({ conforms }) => conforms),
    budget: widest.budget,
    budgetAtNm: widest.targetNm,
    warnings: [...doubts(readings, known.value), ...assumptions(widest.budget)],
    steps: budgetSteps(widest, readings.referenceBiasPercent ?? 0),
  });
}

function evaluated(readings: CalibrationReadings, permissiblePercent: number): readonly EvaluatedPoint[] {
  const { reproducibility, outputInterface, driveInterface, leverVariation } = readings;
  const spreads = Object.fromEntries(
    Object.entries({ reproducibility, outputInterface, driveInterface, leverVariation }).filter(
      (entry): entry is [string, number] => entry[1] !== undefined,
    ),
  );
  const lowest = readings.points[0]?.referenceNm ?? [];
  const spreadsAtNm = lowest.reduce((sum, value) => sum + value, 0) / lowest.length;
  return readings.points.map((point) =>
    evaluatePoint(point, {
      permissiblePercent,
      resolutionNm: readings.resolutionNm,
      referenceUncertaintyPercent: readings.referenceUncertaintyPercent,
      referenceBiasPercent: readings.referenceBiasPercent ?? 0,
      spreads,
      spreadsAtNm,
    }),
  );
}

function flawOf({ points, maxTorqueNm }: CalibrationReadings): ReturnType<typeof invalid> | undefined {
  for (const [index, point] of points.entries()) {
    const field = `points[${index}]`;
    if (point.targetNm > maxTorqueNm)
      return invalid(`${field}.targetNm`, `${point.targetNm} N·m lies above the range`, `at most ${maxTorqueNm} N·m`);
    const before = points[index - 1];
    if (before && point.targetNm <= before.targetNm)
      return invalid(
        `${field}.targetNm`,
        `${point.targetNm} N·m after ${before.targetNm} N·m: out of order`,
        'targets that rise, each once',
      );
    const flaw = readingsFlaw(point, field);
    if (flaw) return flaw;
  }
  return undefined;
}

/** Less was done than the standard orders. */
function doubts({ type, maxTorqueNm, points }: CalibrationReadings, known: ToolClass): readonly Warning[] {
  const plan = calibrationPlan({ type, class: known.class, lowestNm: 0, highestNm: maxTorqueNm });
  if (!plan.ok) return [];
  const { repeats, targetsNm } = plan.value;
  const few = points.flatMap(({ referenceNm }, index) =>
    referenceNm.length < repeats
      ? [
          {
            field: `points[${index}].referenceNm`,
            ...remark('few-repeats', { count: referenceNm.length, wanted: repeats }),
          },
        ]
      : [],
  );
  const missing = targetsNm.filter((wanted) => !points.some(({ targetNm }) => isAbout(targetNm, wanted)));
  return [...few, ...missing.map((wanted) => ({ field: 'points', ...remark('no-point-at', { targetNm: wanted }) }))];
}

/** A scale does not always have a mark where a round share lies. */
const isAbout = (targetNm: number, wanted: number): boolean => Math.abs(targetNm / wanted - 1) <= 0.05;

const FIELDS: Readonly<Record<string, string>> = { reference: 'referenceUncertaintyPercent' };

const assumptions = (budget: readonly Contribution[]): readonly Warning[] =>
  budget.flatMap(({ source, value, assumed }) =>
    assumed ? [{ field: FIELDS[source] ?? source, ...remark('not-measured', { percent: value }) }] : [],
  );
