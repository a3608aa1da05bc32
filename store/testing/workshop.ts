import type { OwnRow } from '@clampwright/core/fastener';
import type { JointContent, JointRevision } from '@clampwright/core/joint';
import {
  type Command,
  chain,
  decide,
  type Entry,
  type IncomingPull,
  type JobSheet,
  type PersonRef,
  sha256Hex,
  startOfChain,
  uuidV8,
} from '@clampwright/core/record';
import type { Tool, Wrench } from '@clampwright/core/wrench';
import type { Decide } from '../jobs/decided.ts';

/* A small job of the invented workshop, for tests and benchmarks. Everything follows from numbers: no clock, no chance. */

/** The same word gives the same identity. */
export const identity = (word: string): string => uuidV8(sha256Hex(word));

const FIRST_SHIFT_MS = Date.UTC(2026, 2, 2, 6);

/** So many seconds into the first shift. */
export const instant = (second: number): string => new Date(FIRST_SHIFT_MS + second * 1000).toISOString();

export const technician: PersonRef = { id: identity('technician'), name: 'Ilse Marbach', role: 'technician' };
export const lead: PersonRef = { id: identity('lead'), name: 'Tomas Venn', role: 'lead' };

export const wrench: Wrench = {
  id: identity('wrench'),
  name: 'Bench wrench 20-200',
  serial: 'KH-0200',
  type: 'I',
  class: 'C',
  lowestNm: 20,
  highestNm: 200,
  resolutionNm: 0.1,
  angleResolutionDeg: 0.5,
  leverMm: 450,
  connection: { kind: 'typed' },
};

/** A stud of the workshop's own. */
export const ownStud = (id: string, name: string): OwnRow => ({
  id,
  kind: 'material',
  name,
  source: 'Inspection certificate of the lot',
  yieldStrengthMPa: 700,
  tensileStrengthMPa: 860,
  by: { id: lead.id, name: lead.name },
  addedAt: instant(0),
});

const order = { method: 'star' } as const;

/** Six bolts of a sheave hub, snug, then torque. */
export const hubContent: JointContent = {
  name: 'Sheave hub',
  fastener: {
    thread: 'M12',
    propertyClass: '10.9',
    description: 'hexagon bolt',
    lubricant: 'oiled',
    reuse: 'reusable',
  },
  layout: { kind: 'circle', count: 6, diameterMm: 180, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    {
      kind: 'snug',
      torque: {
        lowerNm: 25,
        targetNm: 30,
        upperNm: 35,
        typed: { form: 'limits', lower: '25', upper: '35', unit: 'N·m' },
      },
      rounds: [{ share: 1, order }],
    },
    {
      kind: 'torque',
      torque: {
        lowerNm: 90,
        targetNm: 100,
        upperNm: 110,
        typed: { form: 'percent', target: '100', percent: '10', unit: 'N·m' },
      },
      rounds: [{ share: 1, order }],
    },
  ],
  numbersSource: { kind: 'trial', text: 'Kestrelhorn valley workshop, trial of 2 March' },
  cautions: ['Secure the rope before the hub is touched.'],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
  retorque: { after: 500, unit: 'h', note: 'after running in' },
};

const hubRevision: JointRevision = { id: identity('hub'), revision: 1, status: 'released', content: hubContent };

/** A job on two hubs. */
export const hubSheet = (word: string, demo = false): JobSheet => ({
  id: identity(word),
  title: `Hubs of ${word}`,
  asset: { id: identity(`asset of ${word}`), name: 'Tower 3', location: 'Kestrelhorn Ropeway' },
  joints: ['J1', 'J2'].map((ref) => ({ ref, label: `Hub ${ref}`, joint: hubRevision })),
  demo,
});

const tool: Tool = { wrench };

/** The first entries of a job: opened, wrench taken. */
export function firstEntries(sheet: JobSheet): readonly Entry[] {
  return chain(startOfChain(sheet.id), [
    { id: identity(`${sheet.id} opened`), at: instant(0), by: lead, body: { kind: 'opened', sheet } },
    {
      id: identity(`${sheet.id} tool`),
      at: instant(1),
      by: technician,
      body: { kind: 'tool-taken', tool, jointRefs: ['J1', 'J2'], objections: [] },
    },
  ]);
}

/** The n-th pull of a job, on the position whose turn it is in a plain walk over both hubs. */
export function pullNumber(jobId: string, n: number, change: Partial<IncomingPull> = {}): IncomingPull {
  const torqueNm = 30 + (n % 7) / 10;
  return {
    kind: 'record-pull',
    id: identity(`${jobId} pull ${n}`),
    jointRef: n % 12 < 6 ? 'J1' : 'J2',
    position: (n % 6) + 1,
    stage: 1,
    round: 1,
    source: { kind: 'file', detail: `line ${n}` },
    takenAt: instant(10 + n),
    shown: { torque: { text: torqueNm.toFixed(1), unit: 'N·m' } },
    shownTorqueNm: torqueNm,
    ...change,
  };
}

/** Decides a command of the technician, arriving when it was made. */
export const deciding =
  (command: Command, second: number, by: PersonRef = technician): Decide =>
  (state, known) => {
    const entryId = command.kind === 'record-pull' ? command.id : identity(`${state.jobId} ${command.kind} ${second}`);
    return decide(state, command, { entryId, now: instant(second), by, known: known.get(entryId) });
  };
