import { ok, type Result } from '@clampwright/core/failure';
import { careSpans, type Found, type Wrench } from '@clampwright/core/wrench';
import type { Store } from '@clampwright/store';

/** How a wrench was found so far, with the pulls in between. */
export async function historyOf(wrench: Wrench, store: Store): Promise<Result<readonly Found[]>> {
  const { wrenches, care, pulls } = store;
  const summaries = await wrenches.calibrations(wrench.id);
  if (!summaries.ok) return summaries;
  const calibrations = await care.calibrations.list(wrench.id);
  if (!calibrations.ok) return calibrations;
  const checks = await care.checks.list(wrench.id);
  if (!checks.ok) return checks;
  const history: Found[] = [];
  const known = { wrench, summaries: summaries.value, calibrations: calibrations.value, checks: checks.value };
  for (const { after, to, found } of careSpans(known)) {
    const counted = await pulls.count(wrench.id, { after, to });
    if (!counted.ok) return counted;
    history.push(counted.value > 0 ? { ...found, pulls: counted.value } : found);
  }
  return ok(history);
}

/** The histories of every wrench of the same type and class. */
export async function historyOfKind(like: Wrench, store: Store): Promise<Result<readonly Found[]>> {
  const all = await store.wrenches.list();
  if (!all.ok) return all;
  const gathered: Found[] = [];
  for (const wrench of all.value.filter((one) => one.type === like.type && one.class === like.class)) {
    const history = await historyOf(wrench, store);
    if (!history.ok) return history;
    gathered.push(...history.value);
  }
  return ok(gathered);
}
