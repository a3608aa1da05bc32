import type { Entry } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { type PullChange, pullChange } from './pull-row.ts';

/**
 * Follows the entries of one job, in order, and tells what each does to the pulls by wrench and time.
 *
 * @param before tools that were taken for each joint before these entries
 */
export function pullChanges(
  before: Iterable<readonly [string, readonly Tool[]]> = [],
): (entry: Entry) => PullChange | undefined {
  const taken = new Map(before);
  return (entry) => {
    const { body } = entry;
    if (body.kind === 'tool-taken') {
      for (const ref of body.jointRefs) taken.set(ref, [...(taken.get(ref) ?? []), body.tool]);
    }
    return pullChange(entry, (jointRef) => taken.get(jointRef) ?? []);
  };
}
