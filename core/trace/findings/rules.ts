import type { Finding } from '../finding.ts';
import type { Evidence } from '../judged-by.ts';
import { alreadyTight } from './already-tight.ts';
import { slippedSocket, twoPulls } from './breaks.ts';
import { crossedThread } from './crossed-thread.ts';
import { overRun } from './over-run.ts';
import { bottomed, tooSoft } from './rate.ts';
import { jerked, pulledTooFast } from './speed.ts';
import { stickSlip } from './stick-slip.ts';
import { stripping } from './stripping.ts';
import { yielded } from './yielded.ts';

/** Every rule that looks at a tightening curve; to add one, add its file and a line here. */
const RULES: readonly ((evidence: Evidence) => Finding | undefined)[] = [
  crossedThread,
  stripping,
  alreadyTight,
  bottomed,
  tooSoft,
  yielded,
  overRun,
  pulledTooFast,
  jerked,
  slippedSocket,
  twoPulls,
  stickSlip,
];

/** What the curve says against the pull, in the order of the rules. One cause is told once. */
export function findingsOf(evidence: Evidence): readonly Finding[] {
  const found = RULES.flatMap((rule) => rule(evidence) ?? []);
  return found.filter(({ kind }) => !found.some((other) => HIDES[other.kind]?.includes(kind)));
}

/** What follows from something worse is not told beside it. */
const HIDES: Partial<Record<Finding['kind'], readonly Finding['kind'][]>> = {
  stripping: ['yielded', 'too-soft', 'bottomed'],
  'crossed-thread': ['too-soft', 'yielded', 'stick-slip'],
  'already-tight': ['bottomed', 'too-soft', 'yielded'],
  yielded: ['too-soft'],
  'slipped-socket': ['stripping', 'yielded', 'two-pulls', 'jerked', 'pulled-too-fast'],
};
