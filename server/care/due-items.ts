import { ok, type Result } from '@clampwright/core/failure';
import { careState, pullsBetween, type ReferenceStandard, referenceState, type Wrench } from '@clampwright/core/wrench';
import type { Store } from '@clampwright/store';
import type { DueItem } from '../api/contract.ts';

const URGENCY = ['off', 'overdue', 'never', 'soon', 'valid'] as const;

/** Everything that wants to be calibrated, also what does not yet, the most urgent first. */
export async function dueItems(
  { wrenches, references, pulls }: Pick<Store, 'wrenches' | 'references' | 'pulls'>,
  today: string,
): Promise<Result<readonly DueItem[]>> {
  const kept = await wrenches.list();
  if (!kept.ok) return kept;
  const standards = await references.list();
  if (!standards.ok) return standards;
  const items = standards.value.map((reference) => referenceItem(reference, today));
  for (const wrench of kept.value) {
    const since = await pulls.count(wrench.id, { after: wrench.calibration?.calibratedOn });
    if (!since.ok) return since;
    items.push(wrenchItem(wrench, today, since.value));
  }
  const rank = ({ state }: DueItem) => URGENCY.indexOf(state);
  return ok(items.toSorted((a, b) => rank(a) - rank(b) || ((a.dueOn ?? '') < (b.dueOn ?? '') ? -1 : 1)));
}

const referenceItem = (reference: ReferenceStandard, today: string): DueItem => ({
  kind: 'reference',
  id: reference.id,
  name: reference.name,
  serial: reference.serial,
  ...(reference.place === undefined ? {} : { place: reference.place }),
  certificate: reference.certificate,
  calibratedOn: reference.calibratedOn,
  dueOn: reference.dueOn,
  state: referenceState(reference, today),
});

function wrenchItem(wrench: Wrench, today: string, pullsSince: number): DueItem {
  const { id, name, serial, place, calibration } = wrench;
  return {
    kind: 'wrench',
    id,
    name,
    serial,
    ...(place === undefined ? {} : { place }),
    ...(calibration
      ? { certificate: calibration.certificate, calibratedOn: calibration.calibratedOn, dueOn: calibration.dueOn }
      : {}),
    state: careState(wrench, today, pullsSince),
    pullsSince,
    ...(calibration ? { dueAfterPulls: pullsBetween(wrench) } : {}),
  };
}
