import type { FileTaken, FileTaking } from '@clampwright/server';
import { table } from './table.ts';

type Result = FileTaken['result'];

/** What an import did: the answer, and what there is to remark beside it. */
export function importReport(
  result: Result,
  mode: FileTaking['mode'],
): { readonly said: string; readonly remarks: readonly string[] } {
  const counts = countsOf(result);
  const said = mode === 'preview' && result.preview.length > 0 ? `${previewOf(result)}\n\n${counts}` : counts;
  return { said, remarks: [...refusedOf(result), ...keptOf(result, mode)] };
}

function countsOf({ kept, added, already, refusedCount, verdicts }: Result): string {
  const judged = Object.entries(verdicts).map(([verdict, count]) => `${verdict} ${count}`);
  const counts = [`${kept ? 'added' : 'good '}    ${added}`, `already  ${already}`, `refused  ${refusedCount}`];
  return [...counts, ...(judged.length > 0 ? [`verdicts ${judged.join(', ')}`] : [])].join('\n');
}

function refusedOf({ refused, refusedCount }: Result): readonly string[] {
  const lines = refused.map(({ line, field, message }) => `line ${line}, ${field}: ${message}`);
  const more = refusedCount - refused.length;
  return more > 0 ? [...lines, `… and ${more} more lines`] : lines;
}

function keptOf({ kept }: Result, mode: FileTaking['mode']): readonly string[] {
  if (kept) return [];
  if (mode === 'preview') return ['A preview: nothing was kept.'];
  return ['Nothing was kept: mend the lines above, or take the others in with --mode good-lines.'];
}

const previewOf = ({ preview }: Result): string =>
  table(
    ['line', 'joint', 'stage', 'position', 'torque N·m', 'angle °', 'taken', 'verdict'],
    preview.map((pull) => [
      pull.line,
      pull.jointRef,
      pull.stage,
      pull.position,
      pull.torqueNm,
      pull.angleDeg ?? '',
      pull.takenAt,
      pull.verdict,
    ]),
  );
