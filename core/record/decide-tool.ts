import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import { sayObjection } from '../language/objections.ts';
import { assessTool } from '../wrench/assess.ts';
import type { Command } from './command.ts';
import { type DecisionContext, leadOf } from './decision-context.ts';
import type { EntryBody } from './entry.ts';
import type { JobState } from './state.ts';

/** Takes a wrench with what is on it for some joints; what speaks against it needs the lead's exception. */
export function takeTool(
  state: JobState,
  command: Extract<Command, { kind: 'take-tool' }>,
  context: DecisionContext,
): Result<EntryBody> {
  const { tool } = context;
  if (!tool) return failed({ kind: 'not-found', what: 'wrench', id: command.wrenchId });
  const joints = state.sheet.joints.filter(({ ref }) => command.jointRefs.includes(ref));
  const unknown = command.jointRefs.find((ref) => !joints.some((joint) => joint.ref === ref));
  if (unknown !== undefined)
    return invalid(
      'jointRefs',
      `this job has no joint ${unknown}`,
      state.sheet.joints.map(({ ref }) => ref).join(', '),
    );
  const objections = [
    ...new Set(
      joints.flatMap(({ joint: { content } }) =>
        assessTool(tool, content, context.now).map((objection) => sayObjection(objection, 'en', content.torqueUnit)),
      ),
    ),
  ];
  const taken = { kind: 'tool-taken', tool, jointRefs: command.jointRefs, objections } as const;
  if (objections.length === 0) return ok(taken);
  const lead = leadOf(context);
  if (lead && command.exceptionReason)
    return ok({ ...taken, exception: { by: lead, reason: command.exceptionReason } });
  return failed({
    kind: 'conflict',
    message: `${tool.wrench.name} is refused: ${objections.join(' ')} Choose another wrench, or have the lead record an exception.`,
    current: { objections },
  });
}
