import { ok, type Result } from '@clampwright/core/failure';
import type { RecallShown } from '@clampwright/core/record';
import { type Assumption, followed, gravestFirst, type Recall, rejudged } from '@clampwright/core/wrench';
import type { Store } from '@clampwright/store';

type Kept = Pick<Store, 'care' | 'wrenches' | 'pulls'>;

/** The span of a recall as the store asks for it. */
export const spanOf = ({ goodAt, foundAt }: Recall) => ({ after: goodAt, to: foundAt });

/**
 * A recall with every pull judged again, the gravest first.
 *
 * @param assumption whose chances decide the order; left out: the greatest over all
 */
export async function recallShown(
  { care, wrenches, pulls }: Kept,
  id: string,
  assumption?: Assumption,
): Promise<Result<RecallShown>> {
  const recall = await care.recalls.get(id);
  if (!recall.ok) return recall;
  const wrench = await wrenches.get(recall.value.wrenchId);
  if (!wrench.ok) return wrench;
  const affected = await pulls.of(recall.value.wrenchId, spanOf(recall.value));
  if (!affected.ok) return affected;
  const rechecks = await care.rechecks.list(id);
  if (!rechecks.ok) return rechecks;
  const lines = followed(rejudged(recall.value, affected.value), rechecks.value);
  return ok({
    recall: recall.value,
    wrench: wrench.value,
    assumption,
    lines: assumption === undefined ? lines : lines.toSorted((a, b) => gravestFirst(a, b, assumption)),
  });
}
