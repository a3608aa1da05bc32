import type { Verdict } from '../verdict/verdict.ts';
import { isLeftOut } from './closing.ts';
import type { CellState, JointState } from './state.ts';

/** What a position as a whole comes to; `none` while a step of it has no standing pull, `accepted` by a lead's word. */
export type PositionVerdict = Verdict | 'none' | 'accepted';

export const POSITION_VERDICTS = [
  'within',
  'under',
  'over',
  'doubtful',
  'accepted',
  'none',
] as const satisfies readonly PositionVerdict[];

/** From what weighs most to what weighs least: one bad stage is not made good by the next. */
const BY_WEIGHT = [
  'over',
  'under',
  'doubtful',
  'none',
  'accepted',
  'within',
] as const satisfies readonly PositionVerdict[];

/** Of each position, in order, the weightiest that stands on it over all steps. */
export function positionVerdicts({ cells, steps }: JointState): readonly PositionVerdict[] {
  const count = steps[0]?.order.length ?? 0;
  return Array.from({ length: count }, (_, index) => {
    const verdicts = cells.flatMap((row) => {
      const cell = row[index];
      return cell && isLeftOut(cell) ? [] : [cellVerdict(cell)];
    });
    return BY_WEIGHT.find((verdict) => verdicts.includes(verdict)) ?? 'none';
  });
}

function cellVerdict(cell: CellState | undefined): PositionVerdict {
  if (cell?.acceptedBy) return 'accepted';
  return cell?.verdict ?? 'none';
}
