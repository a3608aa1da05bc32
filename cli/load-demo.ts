import { failed, ok, type Result } from '@clampwright/core/failure';
import { type Entry, type EntryDraft, sealChain } from '@clampwright/core/record';
import { DEMO_PIN, type Scenario, scenarioAt } from '@clampwright/demo';
import { hashPin } from '@clampwright/server';
import type { Store } from '@clampwright/store';

const DEMO = { demo: true } as const;

/**
 * Puts the invented workshop into a store, marked so that it can be removed again. Loading it twice, or after a
 * loading that broke off, adds nothing twice.
 *
 * @param now the moment around which its calibrations and jobs lie
 */
export async function loadDemo(store: Store, now: Date): Promise<Result<undefined>> {
  const scenario = scenarioAt(now);
  for (const part of [people, register, joints, jobs, care]) {
    const added = await part(store, scenario);
    if (!added.ok) return added;
  }
  return store.demo.finishLoading();
}

type Added = Promise<Result<undefined>>;

/** Does things one after the other until one is refused. */
async function all<T>(things: readonly T[], add: (thing: T) => Promise<Result<unknown>>): Added {
  for (const thing of things) {
    const added = await add(thing);
    if (!added.ok) return failed(added.failure);
  }
  return ok(undefined);
}

async function people(store: Store, scenario: Scenario): Added {
  const pinHash = await hashPin(DEMO_PIN);
  return all(scenario.people, (person) => store.people.add({ ...person, pinHash }, DEMO));
}

async function register(store: Store, scenario: Scenario): Added {
  const steps = [
    () => all(scenario.assets, (asset) => store.assets.add(asset, DEMO)),
    () => all(scenario.wrenches, (wrench) => store.wrenches.add(wrench, DEMO)),
    () => all(scenario.adapters, (adapter) => store.adapters.add(adapter, DEMO)),
    () => all(scenario.extensions, (extension) => store.extensions.add(extension, DEMO)),
  ];
  return all(steps, (step) => step());
}

/** Calibrations before the recall that came of one. */
async function care(store: Store, scenario: Scenario): Added {
  const { calibrations, checks, recalls } = store.care;
  const steps = [
    () => all(scenario.references, (reference) => store.references.keep(reference, DEMO)),
    () => all(scenario.calibrations, ({ calibration, summary }) => calibrations.append(calibration, summary)),
    () => all(scenario.checks, (check) => checks.append(check)),
    () => all(scenario.recalls, (recall) => recalls.append(recall)),
  ];
  return all(steps, (step) => step());
}

async function joints(store: Store, scenario: Scenario): Added {
  return all(scenario.joints, async ({ id, revision, content }) => {
    if ((await store.joints.get(id, revision)).ok) return ok(undefined);
    const draft = await store.joints.saveDraft(id, content, DEMO);
    return draft.ok ? store.joints.release(id, draft.value.revision) : draft;
  });
}

const draftOf = ({ id, at, by, body }: Entry): EntryDraft => ({ id, at, by, body });

async function jobs(store: Store, scenario: Scenario): Added {
  const key = await store.signingKey();
  if (!key.ok) return key;
  return all(scenario.jobs, async ({ sheet, entries, traces }) => {
    const [first, ...rest] = entries;
    const stored = await store.jobs.get(sheet.id);
    const opened = stored.ok ? stored : await store.jobs.open(first ? [first] : []);
    // More than its first entry: all of them went in together, or somebody works on it.
    if (!opened.ok || rest.length === 0 || (stored.ok && stored.value.lastSeq > 1)) return opened;
    return store.jobs.append(sheet.id, () => ok(rest.map(draftOf)), {
      traces,
      seal: (last) => sealChain(last, key.value.seed, last.at),
    });
  });
}
