import type { JobJoint } from '@clampwright/core/record';
import { assessTool, type Notice, type Objection, type Tool, toolNotices } from '@clampwright/core/wrench';

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
