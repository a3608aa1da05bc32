import type { JobJoint } from '@clampwright/core/record';
import { assessTool, type Notice, type Objection, rankTools, type Tool, toolNotices } from '@clampwright/core/wrench';
import type { Toolbox } from '@clampwright/server/contract';
import { type ToolChoice, toolOf } from './tool-choice.ts';

/** How a tool suits one joint. */
export interface Fit {
  readonly jobJoint: JobJoint;
  readonly objections: readonly Objection[];
  readonly notices: readonly Notice[];
}

/** How a tool suits each of some joints on a date. */
export const assessFor = (tool: Tool, joints: readonly JobJoint[], onDate: string): readonly Fit[] =>
  joints.map((jobJoint) => ({
    jobJoint,
    objections: assessTool(tool, jobJoint.joint.content, onDate),
    notices: toolNotices(tool, jobJoint.joint.content, onDate),
  }));

/** A wrench at hand with what it leaves of the narrowest window of all joints. */
export interface RankedWrench {
  readonly tool: Tool;
  readonly shareLeft: number;
  /** Each with the joint that it speaks for. */
  readonly objections: readonly { readonly jobJoint: JobJoint; readonly objection: Objection }[];
}

/** The wrenches of the toolbox with what is put on them, the one that suits best first, those refused last. */
export function rankWrenches(
  toolbox: Toolbox,
  choice: ToolChoice,
  joints: readonly JobJoint[],
  onDate: string,
): readonly RankedWrench[] {
  const tools = toolbox.wrenches.flatMap(({ id }) => toolOf({ ...choice, wrenchId: id }, toolbox) ?? []);
  const byJoint = joints.map((jobJoint) => ({ jobJoint, ranked: rankTools(tools, jobJoint.joint.content, onDate) }));
  return tools
    .map((tool) => {
      const each = byJoint.flatMap(({ jobJoint, ranked }) => {
        const found = ranked.find((one) => one.tool === tool);
        return found ? [{ jobJoint, ...found }] : [];
      });
      return {
        tool,
        shareLeft: Math.min(1, ...each.map(({ shareLeft }) => shareLeft)),
        objections: each.flatMap(({ jobJoint, objections }) =>
          objections.map((objection) => ({ jobJoint, objection })),
        ),
      };
    })
    .toSorted((a, b) => Number(a.objections.length > 0) - Number(b.objections.length > 0) || b.shareLeft - a.shareLeft);
}
