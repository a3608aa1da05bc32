import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import type { Warning } from '../joint/warning.ts';
import type { Calibration, Comparison } from './calibration.ts';
import { type EvaluatedCalibration, evaluateCalibration } from './evaluate-calibration.ts';
import type { ErrorPoint } from './recall.ts';
import { usableReference } from './reference-standard.ts';
import { type CalibratedPoint, type CalibrationSummary, DIRECTIONS, type Direction, type Wrench } from './wrench.ts';

/** What one run says in one direction. */
export interface JudgedRun {
  readonly direction: Direction;
  readonly evaluated: EvaluatedCalibration;
}

/** A calibration with all that follows from its readings. */
export interface JudgedCalibration {
  readonly found: readonly JudgedRun[];
  /** Undefined where the wrench was not adjusted: it was left as it was found. */
  readonly left: readonly JudgedRun[] | undefined;
  readonly isFoundGood: boolean;
  readonly isLeftGood: boolean;
  /** What is kept with the wrench. */
  readonly summary: CalibrationSummary;
  readonly warnings: readonly Warning[];
}

/**
 * Judges a whole calibration before it is kept.
 *
 * @param today ISO 8601 day
 * @returns refused by field: a day to come or before the wrench was made, a reference overdue or too small, readings
 * that cannot be evaluated
 */
export function judgeCalibration(calibration: Calibration, wrench: Wrench, today: string): Result<JudgedCalibration> {
  const flaw = dateFlaw(calibration, wrench, today);
  if (flaw) return flaw;
  const torquesNm = calibration.asFound.points.map(({ targetNm }) => targetNm);
  const usable = usableReference(calibration.reference, calibration.calibratedOn, torquesNm);
  if (!usable.ok) return usable;
  const found = judgeComparison(calibration.asFound, wrench, calibration, 'asFound');
  if (!found.ok) return found;
  const left = calibration.asLeft && judgeComparison(calibration.asLeft, wrench, calibration, 'asLeft');
  if (left && !left.ok) return left;
  const standing = left?.value ?? found.value;
  return ok({
    found: found.value,
    left: left?.value,
    isFoundGood: conform(found.value),
    isLeftGood: conform(standing),
    summary: summaryOf(calibration, standing),
    warnings: standing.flatMap(({ evaluated }) => evaluated.warnings),
  });
}

const conform = (runs: readonly JudgedRun[]): boolean => runs.every(({ evaluated }) => evaluated.conforms);

function dateFlaw(
  { calibratedOn, dueOn }: Calibration,
  { madeOn }: Wrench,
  today: string,
): ReturnType<typeof invalid> | undefined {
  if (calibratedOn > today) return invalid('calibratedOn', `${calibratedOn} has not come yet`, `a day up to ${today}`);
  if (madeOn !== undefined && calibratedOn < madeOn)
    return invalid(
      'calibratedOn',
      `the wrench was made on ${madeOn}, after ${calibratedOn}`,
      `a day from ${madeOn} on`,
    );
  if (dueOn <= calibratedOn)
    return invalid('dueOn', `${dueOn} does not lie after the calibration`, `a day after ${calibratedOn}`);
  return undefined;
}

/**
 * One run, direction by direction.
 *
 * @param place of the run, such as `asFound`: where a refused field lies
 */
export function judgeComparison(
  { points, spreads }: Comparison,
  { type, class: name, highestNm, resolutionNm }: Wrench,
  { reference }: Pick<Calibration, 'reference'>,
  place: string,
): Result<readonly JudgedRun[]> {
  const runs: JudgedRun[] = [];
  for (const direction of DIRECTIONS) {
    const indices = points.flatMap((point, index) => (point.direction === direction ? [index] : []));
    if (indices.length === 0) continue;
    const evaluated = evaluateCalibration({
      type,
      class: name,
      maxTorqueNm: highestNm,
      resolutionNm,
      points: indices.flatMap((index) => points[index] ?? []),
      referenceUncertaintyPercent: reference.expandedUncertaintyPercent,
      referenceBiasPercent: reference.biasPercent,
      ...spreads,
    });
    if (!evaluated.ok) return atPlace(evaluated, place, indices);
    runs.push({ direction, evaluated: evaluated.value });
  }
  return ok(runs);
}

/** A field such as `points[0]` of one direction, told by its place in the whole. */
function atPlace(refused: Extract<Result<never>, { ok: false }>, place: string, indices: readonly number[]) {
  const { failure } = refused;
  if (failure.kind !== 'invalid') return refused;
  const field = failure.field.replace(/^points\[(\d+)\]/, (_, index) => `${place}.points[${indices[Number(index)]}]`);
  return failed({ ...failure, field });
}

function summaryOf(
  { id, calibratedOn, dueOn, dueAfterPulls, certificate, by }: Calibration,
  standing: readonly JudgedRun[],
): CalibrationSummary {
  const points = standing.flatMap(calibratedPoints);
  const deviations = standing.flatMap(({ evaluated }) => evaluated.points.flatMap((point) => point.deviationsPercent));
  return {
    calibratedOn,
    dueOn,
    ...(dueAfterPulls === undefined ? {} : { dueAfterPulls }),
    certificate,
    by,
    maximumDeviationPercent: Math.max(...deviations.map(Math.abs)),
    expandedUncertaintyPercent: Math.max(...points.map((point) => point.expandedUncertaintyPercent)),
    points,
    calibrationId: id,
    ...(conform(standing) ? {} : { conforms: false }),
  };
}

const calibratedPoints = ({ direction, evaluated }: JudgedRun): readonly CalibratedPoint[] =>
  evaluated.points.map(({ targetNm, meanDeviationPercent, expandedUncertaintyPercent }) => ({
    torqueNm: targetNm,
    direction,
    deviationPercent: meanDeviationPercent,
    expandedUncertaintyPercent,
  }));

/** The errors of a run as a recall needs them; a pull does not tell its direction, so the greater one counts. */
export function errorPoints(runs: readonly JudgedRun[]): ErrorPoint[] {
  const worst = new Map<number, ErrorPoint>();
  for (const { targetNm, meanDeviationPercent, standardUncertaintyPercent } of runs.flatMap(
    ({ evaluated }) => evaluated.points,
  )) {
    const before = worst.get(targetNm);
    if (before && Math.abs(before.deviationPercent) >= Math.abs(meanDeviationPercent)) continue;
    worst.set(targetNm, { torqueNm: targetNm, deviationPercent: meanDeviationPercent, standardUncertaintyPercent });
  }
  return [...worst.values()];
}
