import { appliedTorque } from '@clampwright/core/procedure';
import type { CellRef, Entry, Judgement } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import type { Selectable } from 'kysely';
import { z } from 'zod';
import type { PullsTable } from '../tables.ts';

export type PullRow = Selectable<PullsTable>;

const placedSchema = z.strictObject({
  joint_ref: z.string(),
  stage: z.number(),
  round: z.number(),
  position: z.number(),
  lower_nm: z.number().nullable(),
  upper_nm: z.number().nullable(),
  uncertainty_nm: z.number().nullable(),
});

const pullChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('add'),
    row: placedSchema.extend({
      wrench_id: z.string(),
      taken_at: z.string(),
      pull_id: z.string(),
      job_id: z.string(),
      torque_nm: z.number(),
      shown_nm: z.number(),
    }),
  }),
  z.strictObject({ kind: z.literal('move'), pullId: z.string(), placed: placedSchema }),
  z.strictObject({ kind: z.literal('drop'), pullId: z.string() }),
]);

/** What an entry does to the pulls by wrench and time. A pull that was set aside tightened nothing that is known. */
export type PullChange = z.infer<typeof pullChangeSchema>;

export const pullChangeFrom = (text: string): PullChange => pullChangeSchema.parse(JSON.parse(text));

/** Tools that were taken for a joint so far, the latest last. */
export type ToolsOf = (jointRef: string) => readonly Tool[];

/** @returns undefined where the entry touches no pull */
export function pullChange({ id, jobId, at, body }: Entry, toolsOf: ToolsOf): PullChange | undefined {
  switch (body.kind) {
    case 'pull': {
      const { cell, wrenchId, reading } = body.pull;
      const tool = toolsOf(cell.jointRef).findLast(({ wrench }) => wrench.id === wrenchId);
      const row = {
        ...keyOf({ id, at, body }),
        job_id: jobId,
        torque_nm: reading.torqueNm,
        shown_nm: reading.torqueNm / (tool ? leverFactor(tool) : 1),
        ...placedColumns(cell, body.judgement),
      };
      return { kind: 'add', row };
    }
    case 'pull-moved':
      return { kind: 'move', pullId: body.pullId, placed: placedColumns(body.to, body.judgement) };
    case 'pull-set-aside':
      return { kind: 'drop', pullId: body.pullId };
    case 'opened':
    case 'tool-taken':
    case 'reworked':
    case 'accepted':
    case 'noted':
    case 'signed-off':
    case 'closed':
      return undefined;
  }
}

/** Where the pull of an entry lies. A device whose clock runs ahead does not carry its pulls past a recall. */
export function keyOf({ id, at, body }: Pick<Entry, 'id' | 'at' | 'body'>) {
  if (body.kind !== 'pull') throw new Error(`entry ${id} is no pull`);
  const { wrenchId, takenAt } = body.pull;
  return { wrench_id: wrenchId, taken_at: takenAt < at ? takenAt : at, pull_id: id };
}

const placedColumns = (
  { jointRef, stage, round, position }: CellRef,
  { torque, expandedUncertaintyNm }: Judgement,
) => ({
  joint_ref: jointRef,
  stage,
  round,
  position,
  lower_nm: torque?.lowerNm ?? null,
  upper_nm: torque?.upperNm ?? null,
  uncertainty_nm: expandedUncertaintyNm ?? null,
});

function leverFactor({ wrench, adapter }: Tool): number {
  const lever = appliedTorque(1, wrench.leverMm, adapter);
  return lever.ok ? lever.value.factor : 1;
}
