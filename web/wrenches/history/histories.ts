import {
  type Calibration,
  type DeviationOn,
  type Direction,
  type JudgedRun,
  judgeComparison,
  type Wrench,
} from '@clampwright/core/wrench';

/** How far a wrench was off at one torque in one direction, calibration by calibration. */
export interface HistoryAt {
  readonly torqueNm: number;
  readonly direction: Direction;
  /** As found, then as left where it was adjusted; in the order of time. */
  readonly deviations: readonly (DeviationOn & { readonly expandedUncertaintyPercent: number })[];
}

/** The history at each point that was ever looked at, the lowest torque first. */
export function histories(calibrations: readonly Calibration[], wrench: Wrench): readonly HistoryAt[] {
  const found = new Map<string, HistoryAt>();
  for (const calibration of calibrations) {
    for (const isAdjusted of [false, true]) {
      const comparison = isAdjusted ? calibration.asLeft : calibration.asFound;
      const judged = comparison && judgeComparison(comparison, wrench, calibration, '');
      for (const run of judged?.ok ? judged.value : []) add(found, run, calibration.calibratedOn, isAdjusted);
    }
  }
  return [...found.values()].toSorted((a, b) => a.torqueNm - b.torqueNm || (a.direction < b.direction ? 1 : -1));
}

function add(
  found: Map<string, HistoryAt>,
  { direction, evaluated }: JudgedRun,
  on: string,
  isAdjusted: boolean,
): void {
  for (const point of evaluated.points) {
    const key = `${direction} ${point.targetNm}`;
    const before = found.get(key)?.deviations ?? [];
    const deviation = {
      on,
      deviationPercent: point.meanDeviationPercent,
      standardUncertaintyPercent: point.standardUncertaintyPercent,
      expandedUncertaintyPercent: point.expandedUncertaintyPercent,
      isAdjusted,
    };
    found.set(key, { torqueNm: point.targetNm, direction, deviations: [...before, deviation] });
  }
}
