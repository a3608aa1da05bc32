import type { Outcome as Line } from '@clampwright/intake/file';

/** A batch is one transaction: large enough that flushing the disk does not rule, small enough for memory. */
const MOST_LINES = 1000;
const MOST_SAMPLES = 400_000;

const samplesIn = (line: Line): number => (line.kind === 'pull' ? (line.pull.trace?.timeS.length ?? 0) : 0);

/** Lines in batches, bounded in number and in the samples of their traces. */
export async function* inBatches(lines: AsyncIterable<Line>): AsyncGenerator<readonly Line[]> {
  let batch: Line[] = [];
  let samples = 0;
  for await (const line of lines) {
    batch.push(line);
    samples += samplesIn(line);
    if (batch.length < MOST_LINES && samples < MOST_SAMPLES) continue;
    yield batch;
    batch = [];
    samples = 0;
  }
  if (batch.length > 0) yield batch;
}
