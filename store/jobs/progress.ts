import type { JobState } from '@clampwright/core/record';

export interface Progress {
  /** Cells that wait for nothing. */
  readonly done: number;
  readonly total: number;
}

type Row = JobState['joints'][number]['cells'][number];

/** An entry changes one row of cells and leaves the others as they are, so counts are kept by row. */
const doneByRow = new WeakMap<Row, number>();

function doneIn(row: Row): number {
  const known = doneByRow.get(row);
  if (known !== undefined) return known;
  const done = row.filter(({ need }) => need === 'nothing').length;
  doneByRow.set(row, done);
  return done;
}

/** Cells done and cells in all, over every joint of a job. */
export function progressOf(state: JobState): Progress {
  let done = 0;
  let total = 0;
  for (const joint of state.joints) {
    for (const row of joint.cells) {
      done += doneIn(row);
      total += row.length;
    }
  }
  return { done, total };
}
