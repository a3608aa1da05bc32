import type { Entry } from '@clampwright/core/record';
import type { Outcome as Line } from '@clampwright/intake/file';
import type { Outcome as Entered, Tally } from '@clampwright/store';
import type { ImportResult } from '../api/contract.ts';
import { problemOf } from '../api/problem.ts';

const REFUSED_SHOWN = 100;
const PREVIEW_SHOWN = 50;

/** What is told of a file while it is taken in; its size does not grow with the file. */
export interface ImportTally {
  readonly tell: (line: Line, entered: Entered) => void;
  readonly result: (tally: Tally) => ImportResult;
  /** The first entry that was added. */
  readonly firstAdded: () => Entry | undefined;
}

export function importTally(): ImportTally {
  const refused: ImportResult['refused'] = [];
  const preview: ImportResult['preview'] = [];
  const verdicts: Record<string, number> = {};
  let lines = 0;
  let pulls = 0;
  let first: Entry | undefined;

  const tellRefused = (line: Line, entered: Extract<Entered, { kind: 'refused' }>): void => {
    if (refused.length >= REFUSED_SHOWN) return;
    const { field = 'pull', detail } = problemOf(entered.failure);
    const { message } =
      line.kind === 'refused'
        ? line
        : { message: entered.failure.kind === 'invalid' ? entered.failure.message : detail };
    refused.push({ line: line.line, field, message });
  };
  const tellEntered = (line: number, entry: Entry | undefined, added: boolean): void => {
    if (entry?.body.kind !== 'pull') return;
    const { pull, judgement } = entry.body;
    if (added) {
      first ??= entry;
      verdicts[judgement.verdict] = (verdicts[judgement.verdict] ?? 0) + 1;
    }
    if (preview.length >= PREVIEW_SHOWN) return;
    const { torqueNm, angleDeg = null } = pull.reading;
    preview.push({ line, ...pull.cell, torqueNm, angleDeg, takenAt: pull.takenAt, verdict: judgement.verdict });
  };

  return {
    tell: (line, entered) => {
      lines += 1;
      if (line.kind === 'pull') pulls += 1;
      if (entered.kind === 'refused') tellRefused(line, entered);
      else tellEntered(line.line, entered.entries[0], entered.kind === 'added');
    },
    result: ({ added, already, refused: refusedCount, kept }) => ({
      lines,
      pulls,
      added,
      already,
      refusedCount,
      kept,
      refused,
      verdicts,
      preview,
    }),
    firstAdded: () => first,
  };
}
