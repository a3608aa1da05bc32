import { failed, invalid, ok, type Result } from '@clampwright/core/failure';
import {
  type Calibration,
  errorPoints,
  type JudgedCalibration,
  judgeCalibration,
  type Recall,
  type Wrench,
} from '@clampwright/core/wrench';
import type { Store } from '@clampwright/store';
import type { NewRecall } from '../api/contract.ts';

/**
 * A recall as it is opened: from the last calibration that left the wrench good, or from its first pull, to the moment
 * in which it was found off or dropped.
 */
export async function recallFrom(
  { care, wrenches }: Pick<Store, 'care' | 'wrenches'>,
  { id, calibrationId, dropped }: NewRecall,
  raised: Pick<Recall, 'raisedAt' | 'by'>,
): Promise<Result<Recall>> {
  const calibration = await care.calibrations.get(calibrationId);
  if (!calibration.ok) return calibration;
  const { wrenchId, asFound } = calibration.value;
  const wrench = await wrenches.get(wrenchId);
  if (!wrench.ok) return wrench;
  const judged = judgeCalibration(calibration.value, wrench.value, raised.raisedAt.slice(0, 10));
  if (!judged.ok) return judged;
  if (judged.value.isFoundGood && !dropped)
    return failed({
      kind: 'conflict',
      message: 'This calibration found the wrench good; there is nothing to recall unless it was dropped.',
      current: null,
    });
  if (dropped && dropped.at > asFound.at)
    return invalid('dropped.at', 'it was dropped after it was calibrated', `a time up to ${asFound.at}`);
  const all = await care.calibrations.list(wrenchId);
  if (!all.ok) return all;
  const good = lastGood(all.value, wrench.value, asFound.at);
  const summaries = await wrenches.calibrations(wrenchId);
  if (!summaries.ok) return summaries;
  const paperDays = summaries.value
    .filter(
      ({ calibrationId: whole, calibratedOn }) => whole === undefined && calibratedOn < calibration.value.calibratedOn,
    )
    .map(({ calibratedOn }) => calibratedOn)
    .toSorted();
  const paperAt = paperDays.at(-1) === undefined ? undefined : `${paperDays.at(-1)}T00:00:00.000Z`;
  const goodAt = [good?.at, paperAt]
    .filter((at) => at !== undefined)
    .toSorted()
    .at(-1);
  return ok({
    id,
    wrenchId,
    ...raised,
    cause: dropped ? { kind: 'dropped', what: dropped.what } : { kind: 'found-off', calibrationId },
    ...(goodAt === undefined ? {} : { goodAt }),
    foundAt: asFound.at,
    before: good && good.at === goodAt ? errorPoints(good.runs) : [],
    found: errorPoints(judged.value.found),
  });
}

interface GoodCalibration {
  readonly at: string;
  readonly runs: JudgedCalibration['found'];
}

/** The last one before an instant that left the wrench good. */
function lastGood(all: readonly Calibration[], wrench: Wrench, before: string): GoodCalibration | undefined {
  return all
    .filter(({ asFound }) => asFound.at < before)
    .flatMap((calibration) => {
      const judged = judgeCalibration(calibration, wrench, before.slice(0, 10));
      if (!judged.ok || !judged.value.isLeftGood) return [];
      const { at } = calibration.asLeft ?? calibration.asFound;
      return [{ at, runs: judged.value.left ?? judged.value.found }];
    })
    .at(-1);
}
