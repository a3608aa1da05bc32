import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import { type ReferenceStandard, referenceStandardSchema } from '@clampwright/core/wrench';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import type { Adding } from './register.ts';
import { flag } from './tables.ts';

/** Reference standards with each of their certificates; none is ever changed. */
export interface References {
  /** Adds a reference, or a newer certificate of one that is there. The same twice is kept once. */
  keep(reference: ReferenceStandard, adding?: Adding): Promise<Result<ReferenceStandard>>;
  /** Each with its newest certificate, by name. */
  list(): Promise<Result<readonly ReferenceStandard[]>>;
  get(id: string): Promise<Result<ReferenceStandard>>;
  /** Each certificate of a reference, in the order in which they were added. */
  history(id: string): Promise<Result<readonly ReferenceStandard[]>>;
}

export function referencesOn(engine: Engine): References {
  const { reading } = engine;
  return {
    keep: (reference, adding) => transact(engine, (trx) => keep(trx, reference, adding)),
    list: () => attempt(engine, async () => ok(await newestOfEach(reading))),
    get: (id) => attempt(engine, async () => newestOf(id, await historyOf(reading, id))),
    history: (id) => attempt(engine, async () => ok(await historyOf(reading, id))),
  };
}

async function keep(
  trx: Transaction,
  reference: ReferenceStandard,
  { demo }: Adding = {},
): Promise<Result<ReferenceStandard>> {
  const before = await historyOf(trx, reference.id);
  if (before.some((stored) => canonical(stored) === canonical(reference))) return ok(reference);
  const other = (await newestOfEach(trx)).find(({ id, serial }) => serial === reference.serial && id !== reference.id);
  if (other)
    return failed({
      kind: 'conflict',
      message: `${other.name} has the serial number ${reference.serial} already.`,
      current: other,
    });
  await trx
    .insertInto('reference_standards')
    .values({ id: reference.id, number: before.length + 1, demo: flag(demo), content: canonical(reference) })
    .execute();
  return ok(reference);
}

async function historyOf(db: Database, id: string): Promise<readonly ReferenceStandard[]> {
  const rows = await db
    .selectFrom('reference_standards')
    .select('content')
    .where('id', '=', id)
    .orderBy('number')
    .execute();
  return rows.map(({ content }) => referenceStandardSchema.parse(JSON.parse(content)));
}

/** The newest by date of its certificate; of one day the last added. */
function newestOf(id: string, history: readonly ReferenceStandard[]): Result<ReferenceStandard> {
  const newest = history.toSorted((a, b) => (a.calibratedOn < b.calibratedOn ? -1 : 1)).at(-1);
  return newest ? ok(newest) : failed({ kind: 'not-found', what: 'reference', id });
}

async function newestOfEach(db: Database): Promise<readonly ReferenceStandard[]> {
  const rows = await db.selectFrom('reference_standards').select('content').orderBy('number').execute();
  const all = rows.map(({ content }) => referenceStandardSchema.parse(JSON.parse(content)));
  const newest = new Map(
    all.toSorted((a, b) => (a.calibratedOn < b.calibratedOn ? -1 : 1)).map((reference) => [reference.id, reference]),
  );
  return [...newest.values()].toSorted((a, b) => (a.name < b.name ? -1 : 1));
}
