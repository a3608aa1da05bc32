import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import { type CalibrationSummary, calibrationSummarySchema, type Wrench, wrenchSchema } from '@clampwright/core/wrench';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import { type Adding, addTo, getFrom, type Kind, listOf, type Register } from './register.ts';

/** A wrench in the register carries its current calibration: the newest by date, of one day the last added. */
export interface Wrenches extends Register<Wrench> {
  /** Notes where a wrench is kept and who has it; left out: nobody knows. */
  hold(wrenchId: string, whereabouts: Whereabouts): Promise<Result<Wrench>>;
  /** Adds a calibration; none is ever changed, and the same one twice is kept once. */
  calibrate(wrenchId: string, calibration: CalibrationSummary): Promise<Result<Wrench>>;
  /** Every calibration in the order in which they were added. */
  calibrations(wrenchId: string): Promise<Result<readonly CalibrationSummary[]>>;
}

export type Whereabouts = Pick<Wrench, 'place' | 'heldBy'>;

/** Without its calibrations, which are kept beside it. */
const WRENCH: Kind<Wrench> = { table: 'wrenches', what: 'wrench', schema: wrenchSchema };

export function wrenchesOn(engine: Engine): Wrenches {
  const { reading } = engine;
  return {
    add: (wrench, adding) => transact(engine, (trx) => add(trx, wrench, adding)),
    list: () => attempt(engine, () => list(reading)),
    get: (id) => attempt(engine, () => get(reading, id)),
    hold: (id, whereabouts) => transact(engine, (trx) => hold(trx, id, whereabouts)),
    calibrate: (id, calibration) => transact(engine, (trx) => calibrate(trx, id, calibration)),
    calibrations: (id) => attempt(engine, () => calibrations(reading, id)),
  };
}

async function add(trx: Transaction, { calibration, ...wrench }: Wrench, adding?: Adding): Promise<Result<Wrench>> {
  const other = (await registered(trx)).find(({ id, serial }) => serial === wrench.serial && id !== wrench.id);
  if (other)
    return failed({
      kind: 'conflict',
      message: `${other.name} has the serial number ${wrench.serial} already.`,
      current: other,
    });
  const stored = await getFrom(trx, WRENCH, wrench.id);
  const added = await addTo(trx, WRENCH, stored.ok ? elsewhere(wrench, stored.value) : wrench, adding);
  return added.ok && calibration ? calibrate(trx, wrench.id, calibration) : added;
}

async function registered(db: Database): Promise<readonly Wrench[]> {
  const wrenches = await listOf(db, WRENCH);
  return wrenches.ok ? wrenches.value : [];
}

/** A wrench that was carried somewhere else is still the same. */
const elsewhere = ({ place: _place, heldBy: _heldBy, ...wrench }: Wrench, { place, heldBy }: Whereabouts): Wrench => ({
  ...wrench,
  ...(place === undefined ? {} : { place }),
  ...(heldBy === undefined ? {} : { heldBy }),
});

async function hold(trx: Transaction, id: string, whereabouts: Whereabouts): Promise<Result<Wrench>> {
  const wrench = await getFrom(trx, WRENCH, id);
  if (!wrench.ok) return wrench;
  const content = canonical(elsewhere(wrench.value, whereabouts));
  await trx.updateTable('wrenches').set({ content }).where('id', '=', id).execute();
  return get(trx, id);
}

export async function calibrate(
  trx: Transaction,
  wrenchId: string,
  calibration: CalibrationSummary,
): Promise<Result<Wrench>> {
  const wrench = await getFrom(trx, WRENCH, wrenchId);
  if (!wrench.ok) return wrench;
  const before = await calibrationsOf(trx, wrenchId);
  const summary = canonical(calibration);
  if (!before.some((stored) => canonical(stored) === summary)) {
    await trx
      .insertInto('calibrations')
      .values({ wrench_id: wrenchId, number: before.length + 1, calibrated_on: calibration.calibratedOn, summary })
      .execute();
  }
  return get(trx, wrenchId);
}

async function calibrationsOf(db: Database, wrenchId: string): Promise<readonly CalibrationSummary[]> {
  const rows = await db
    .selectFrom('calibrations')
    .select('summary')
    .where('wrench_id', '=', wrenchId)
    .orderBy('number')
    .execute();
  return rows.map(({ summary }) => calibrationFrom(summary));
}

async function calibrations(db: Database, wrenchId: string): Promise<Result<readonly CalibrationSummary[]>> {
  const wrench = await getFrom(db, WRENCH, wrenchId);
  return wrench.ok ? ok(await calibrationsOf(db, wrenchId)) : wrench;
}

async function get(db: Database, id: string): Promise<Result<Wrench>> {
  const wrench = await getFrom(db, WRENCH, id);
  if (!wrench.ok) return wrench;
  const current = await currentCalibrations(db, id);
  return ok(withCurrent(wrench.value, current));
}

async function list(db: Database): Promise<Result<readonly Wrench[]>> {
  const wrenches = await listOf(db, WRENCH);
  if (!wrenches.ok) return wrenches;
  const current = await currentCalibrations(db);
  return ok(wrenches.value.map((wrench) => withCurrent(wrench, current)));
}

function withCurrent(wrench: Wrench, current: ReadonlyMap<string, CalibrationSummary>): Wrench {
  const calibration = current.get(wrench.id);
  return calibration ? { ...wrench, calibration } : wrench;
}

/** By wrench; of one wrench, or of all. */
async function currentCalibrations(db: Database, wrenchId?: string): Promise<ReadonlyMap<string, CalibrationSummary>> {
  const query = db
    .selectFrom('calibrations')
    .select(['wrench_id', 'summary'])
    .orderBy('calibrated_on')
    .orderBy('number');
  const rows = await (wrenchId === undefined ? query : query.where('wrench_id', '=', wrenchId)).execute();
  return new Map(rows.map(({ wrench_id, summary }) => [wrench_id, calibrationFrom(summary)]));
}

const calibrationFrom = (summary: string): CalibrationSummary => calibrationSummarySchema.parse(JSON.parse(summary));
