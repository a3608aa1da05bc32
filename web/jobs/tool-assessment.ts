import type { JobJoint } from '@clampwright/core/record';
import { assessTool, type Notice, type Objection, type Tool, toolNotices } from '@clampwright/core/wrench';
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

/** Identities of the wrenches that would be refused for some joint, with the adapter and extension that are chosen. */
export const refusedWrenches = (
  toolbox: Toolbox,
  choice: ToolChoice,
  joints: readonly JobJoint[],
  onDate: string,
): ReadonlySet<string> =>
  new Set(
    toolbox.wrenches
      .map(({ id }) => id)
      .filter((wrenchId) => {
        const tool = toolOf({ ...choice, wrenchId }, toolbox);
        return tool && assessFor(tool, joints, onDate).some(({ objections }) => objections.length > 0);
      }),
  );
