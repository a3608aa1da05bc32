import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import { checkJoint } from '../joint/check.ts';
import { refOf } from './decision-context.ts';
import type { EntryDraft, JobSheet, PersonRef } from './entry.ts';

/**
 * The first entry of a job. Only released joints without open contradictions can be worked on.
 *
 * @param context who opens it, when (UTC), and the identity of the entry
 */
export function openJob(
  sheet: JobSheet,
  context: { readonly id: string; readonly now: string; readonly by: PersonRef },
): Result<EntryDraft> {
  if (context.by.role !== 'lead') return failed({ kind: 'forbidden', action: 'make a job', needs: 'lead' });
  const refs = new Set(sheet.joints.map(({ ref }) => ref));
  if (refs.size !== sheet.joints.length)
    return invalid('joints', 'two joints of the job have the same reference', 'J1, J2 … each once');
  for (const [index, { joint }] of sheet.joints.entries()) {
    if (joint.status !== 'released') {
      return invalid(
        `joints[${index}]`,
        `revision ${joint.revision} of ${joint.content.name} is a draft`,
        'a released revision',
      );
    }
    const [contradiction] = checkJoint(joint.content);
    if (contradiction) return failed(contradiction);
  }
  return ok({ id: context.id, at: context.now, by: refOf(context.by), body: { kind: 'opened', sheet } });
}
