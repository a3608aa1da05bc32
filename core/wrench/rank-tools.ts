import type { JointContent } from '../joint/joint.ts';
import { assessTool } from './assess.ts';
import type { Objection } from './objection.ts';
import { shareLeft } from './share-left.ts';
import type { Tool } from './wrench.ts';

/** A tool at hand with what would be left of the window. */
export interface RankedTool {
  readonly tool: Tool;
  /** Of the narrowest window, after guarding, 0 to 1; 0 where nothing is left, or nobody knows the uncertainty. */
  readonly shareLeft: number;
  readonly objections: readonly Objection[];
}

/**
 * Which of the tools at hand suits a joint best: those that nothing speaks against first, each group by the share of the
 * window that its uncertainty leaves.
 *
 * @param onDate ISO 8601, a day or an instant
 */
export const rankTools = (tools: readonly Tool[], content: JointContent, onDate: string): readonly RankedTool[] =>
  tools
    .map((tool) => ({ tool, shareLeft: shareLeft(tool, content), objections: assessTool(tool, content, onDate) }))
    .toSorted((a, b) => Number(a.objections.length > 0) - Number(b.objections.length > 0) || b.shareLeft - a.shareLeft);
