import { ok, type Result } from '@clampwright/core/failure';
import { transact } from '../engine.ts';
import { type Appender, noJob } from './append.ts';
import { type Intake, NOTHING, packedOf, type Tally, takeBatch, told } from './intake.ts';
import { movedJob } from './job.ts';
import { shelfOn } from './shelf.ts';
import { takeTogether } from './take-together.ts';

/**
 * Takes in a long list, one item decided after the other on the state that the ones before have left.
 * Memory is bounded by the batch. A failure of the medium ends it; batches kept until then stay.
 */
export function appendMany<Item>(
  at: Appender,
  jobId: string,
  batches: AsyncIterable<readonly Item[]>,
  intake: Intake<Item>,
): Promise<Result<Tally>> {
  const { keep = 'each-batch' } = intake;
  return keep === 'each-batch' ? takeBatchwise(at, jobId, batches, intake) : takeTogether(at, jobId, batches, intake);
}

async function takeBatchwise<Item>(
  { engine, folded, statements }: Appender,
  jobId: string,
  batches: AsyncIterable<readonly Item[]>,
  intake: Intake<Item>,
): Promise<Result<Tally>> {
  let tally = NOTHING;
  let isFirst = true;
  for await (const batch of batches) {
    if (!isFirst) await letOthersIn();
    isFirst = false;
    const traces = packedOf(batch, intake);
    const taken = await transact(engine, async (trx) => {
      const before = await folded.current(trx, jobId);
      if (!before) return noJob(jobId);
      const batchTaken = await takeBatch(shelfOn(trx, statements), before, batch, intake, traces);
      if (batchTaken.state !== before) await statements.moveJob(trx, movedJob(batchTaken.state));
      return ok(batchTaken);
    });
    if (!taken.ok) return taken;
    folded.keep(taken.value.state);
    tally = told(tally, taken.value, intake);
  }
  return ok(tally);
}

/** Long enough for other processes that ask for the lock every few milliseconds. */
const letOthersIn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));
