import { errorPoints, type Recall } from '@clampwright/core/wrench';
import { demoId } from '../identity.ts';
import { KEEPER } from '../people.ts';
import type { DemoCalibration } from './calibrations.ts';

/** The recall of the wrench that was found off: from its last good calibration to the day it was found. */
export function demoRecall(calibrations: readonly DemoCalibration[]): Recall {
  const found = calibrations.findLast(({ judged }) => !judged.isFoundGood);
  if (!found) throw new Error('one wrench of the demonstration was found off');
  const { wrenchId, asFound, id } = found.calibration;
  const good = calibrations.findLast(
    ({ calibration, judged }) =>
      calibration.wrenchId === wrenchId && judged.isLeftGood && calibration.asFound.at < asFound.at,
  );
  return {
    id: demoId('recall'),
    wrenchId,
    raisedAt: found.calibration.asLeft?.at ?? asFound.at,
    by: KEEPER.name,
    cause: { kind: 'found-off', calibrationId: id },
    ...(good ? { goodAt: good.calibration.asFound.at } : {}),
    foundAt: asFound.at,
    before: good ? errorPoints(good.judged.left ?? good.judged.found) : [],
    found: errorPoints(found.judged.found),
  };
}
