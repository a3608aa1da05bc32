import type { JointContent } from '../../joint/joint.ts';
import type { Tool } from '../../wrench/wrench.ts';
import { chain, headAfter, startOfChain } from '../chain.ts';
import type { Command, IncomingPull } from '../command.ts';
import { decide } from '../decide.ts';
import type { DecisionContext } from '../decision-context.ts';
import type { Entry, JobSheet, PersonRef } from '../entry.ts';
import { fold } from '../fold.ts';
import { uuidV7 } from '../identity.ts';
import { openJob } from '../open.ts';
import type { JobState } from '../state.ts';

/** A number of its own for each thing of a test, as an identity. */
export const testId = (n: number): string =>
  uuidV7(
    1_700_000_000_000 + n,
    Uint8Array.from({ length: 10 }, (_, i) => (n * 31 + i * 7) % 256),
  );

export const technician: PersonRef = { id: testId(9001), name: 'Technician', role: 'technician' };
export const lead: PersonRef = { id: testId(9002), name: 'Lead', role: 'lead' };
export const reader: PersonRef = { id: testId(9003), name: 'Reader', role: 'reader' };

/** Four bolts, torque 100 ± 5 N·m, then 30 to 40 degrees. */
export const sampleJoint: JointContent = {
  name: 'Sample',
  fastener: { thread: 'M12', propertyClass: '10.9', description: 'bolt', lubricant: 'oil', reuse: 'reusable' },
  layout: { kind: 'circle', count: 4, diameterMm: 120, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    {
      kind: 'torque',
      torque: {
        lowerNm: 95,
        targetNm: 100,
        upperNm: 105,
        typed: { form: 'plus-minus', target: '100', plusMinus: '5', unit: 'N·m' },
      },
      rounds: [{ share: 1, order: { method: 'star' } }],
    },
    {
      kind: 'angle',
      angle: {
        lowerDeg: 30,
        targetDeg: 35,
        upperDeg: 40,
        typed: { form: 'limits', lower: '30', upper: '40', unit: 'deg' },
      },
      angleFromNm: 100,
      speedLimitDegPerS: 30,
      rounds: [{ share: 1, order: { method: 'star' } }],
    },
  ],
  numbersSource: { kind: 'trial', text: 'made for a test' },
  cautions: [],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};

export const sampleTool: Tool = {
  wrench: {
    id: testId(8001),
    name: 'Wrench',
    serial: 'T-1',
    type: 'I',
    class: 'C',
    lowestNm: 20,
    highestNm: 200,
    resolutionNm: 0.1,
    angleResolutionDeg: 0.5,
    leverMm: 400,
    connection: { kind: 'typed' },
    calibration: {
      calibratedOn: '2026-01-10',
      dueOn: '2027-01-10',
      certificate: 'C-1',
      by: 'bench',
      maximumDeviationPercent: 1,
      expandedUncertaintyPercent: 1,
    },
  },
};

export const sampleSheet = (content: JointContent = sampleJoint): JobSheet => ({
  id: testId(7001),
  title: 'Sample job',
  asset: { id: testId(7002), name: 'Asset', location: '' },
  joints: [{ ref: 'J1', label: 'the joint', joint: { id: testId(7003), revision: 1, status: 'released', content } }],
  demo: false,
});

const minute = (n: number): string => new Date(Date.UTC(2026, 2, 1, 8, n)).toISOString();

/** A job in hand: commands go in one after the other, a minute apart, and must be accepted. */
export interface SampleJob {
  entries: readonly Entry[];
  state: JobState;
}

export function openedSample(content: JointContent = sampleJoint): SampleJob {
  const draft = openJob(sampleSheet(content), { id: testId(1), now: minute(0), by: lead });
  if (!draft.ok) throw new Error(JSON.stringify(draft.failure));
  const entries = chain(startOfChain(testId(7001)), [draft.value]);
  return { entries, state: fold(entries) };
}

export const contextFor = (job: SampleJob, more: Partial<DecisionContext> = {}): DecisionContext => ({
  entryId: testId(100 + job.state.lastSeq),
  now: minute(job.state.lastSeq),
  by: technician,
  tool: sampleTool,
  ...more,
});

/** Does a command that must be accepted; the job afterwards. */
export function done(job: SampleJob, command: Command, more: Partial<DecisionContext> = {}): SampleJob {
  const drafts = decide(job.state, command, contextFor(job, more));
  if (!drafts.ok) throw new Error(JSON.stringify(drafts.failure));
  const entries = [...job.entries, ...chain(headAfter(job.entries.at(-1)!), drafts.value)];
  return { entries, state: fold(entries) };
}

export const taking: Command = { kind: 'take-tool', wrenchId: testId(8001), jointRefs: ['J1'] };

/** A typed pull; the next cell unless a position is named. */
export const pullOf = (n: number, torqueNm: number, more: Partial<IncomingPull> = {}): IncomingPull => ({
  kind: 'record-pull',
  id: testId(n),
  jointRef: 'J1',
  source: { kind: 'typed' },
  takenAt: minute(5),
  shown: { torque: { text: String(torqueNm), unit: 'N·m' } },
  shownTorqueNm: torqueNm,
  ...more,
});

/** An angle pull; torque as it came out. */
export const turnOf = (n: number, angleDeg: number, more: Partial<IncomingPull> = {}): IncomingPull =>
  pullOf(n, 140, {
    shown: { torque: { text: '140', unit: 'N·m' }, angle: { text: String(angleDeg), unit: 'deg' } },
    shownAngleDeg: angleDeg,
    fastestDegPerS: 12,
    ...more,
  });
