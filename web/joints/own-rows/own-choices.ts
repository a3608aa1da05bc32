import { type OwnBolt, type OwnMaterial, type OwnRow, standingRows } from '@clampwright/core/fastener';

/** Rows of one kind to choose from: those that stand, and the one that was chosen before, should it be superseded. */
function choicesOf<Row extends OwnRow>(rows: readonly Row[], kept: Row | undefined): readonly Row[] {
  return kept && !rows.some(({ id }) => id === kept.id) ? [...rows, kept] : rows;
}

export const boltChoices = (rows: readonly OwnRow[], kept: OwnBolt | undefined): readonly OwnBolt[] =>
  choicesOf(
    standingRows(rows).flatMap((row) => (row.kind === 'bolt' ? [row] : [])),
    kept,
  );

export const materialChoices = (rows: readonly OwnRow[], kept: OwnMaterial | undefined): readonly OwnMaterial[] =>
  choicesOf(
    standingRows(rows).flatMap((row) => (row.kind === 'material' ? [row] : [])),
    kept,
  );

/** Whether another row took the place of one that was copied. */
export const isSuperseded = (rows: readonly OwnRow[], kept: OwnRow): boolean =>
  rows.some(({ supersedes }) => supersedes === kept.id);
