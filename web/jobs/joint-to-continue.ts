import type { JobState, JointState } from '@clampwright/core/record';

const lastSeqOf = (joint: JointState): number =>
  Math.max(0, ...joint.cells.flat().flatMap((cell) => cell.attempts.map((attempt) => attempt.seq)));

/** The unfinished joint that was worked on last, else the first unfinished one; undefined when all are done. */
export function jointToContinue(job: JobState): string | undefined {
  const unfinished = job.joints.filter((joint) => joint.next);
  const latest = unfinished.toSorted((a, b) => lastSeqOf(b) - lastSeqOf(a))[0];
  return latest?.ref;
}
