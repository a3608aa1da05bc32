import { type Result } from '@clampwright/core/failure';
import type { FastenerSpec, JointContent } from '@clampwright/core/joint';
import {
  type Command,
  chain,
  decide,
  type JobSheet,
  openJob,
  sha256Hex,
  startOfChain,
  uuidV8,
} from '@clampwright/core/record';
import type { Wrench } from '@clampwright/core/wrench';
import { openStore, type Store } from '@clampwright/store';

/*
 * A workshop of its own with one job that the measured curves of intake/file/samples fit: eight self-forming screws,
 * 1.2 to 1.6 N·m as their README tells. For tests.
 */

/** The same word gives the same identity. */
export const identity = (word: string): string => uuidV8(sha256Hex(`curve job ${word}`));

export const LEAD = { id: identity('lead'), name: 'Tomas Venn', role: 'lead' } as const;
export const TECHNICIAN = { id: identity('technician'), name: 'Ilse Marbach', role: 'technician' } as const;
export const KEEPER = { id: identity('keeper'), name: 'Noor Brandt', role: 'keeper' } as const;
export const JOB = identity('job');

/** The screw without a word of what it takes before it clamps. */
export const PLAIN_SCREW: FastenerSpec = {
  thread: 'M4',
  description: 'self-forming screw 40 x 12',
  lubricant: 'dry',
  reuse: 'reusable',
};

/** 99 of 100 accepted curves of the published set at the first use of a hole stay under 0.82 N·m before they clamp. */
const FORMING: FastenerSpec = { ...PLAIN_SCREW, prevailing: { by: 'thread-forming', highestNm: 0.85 } };

const content: Omit<JointContent, 'fastener'> = {
  name: 'Lid of the wind gauge',
  layout: { kind: 'circle', count: 8, diameterMm: 90, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    {
      kind: 'torque',
      torque: {
        lowerNm: 1.2,
        targetNm: 1.4,
        upperNm: 1.6,
        typed: { form: 'plus-minus', target: '1.4', plusMinus: '0.2', unit: 'N·m' },
      },
      rounds: [{ share: 1, order: { method: 'circular' } }],
    },
  ],
  numbersSource: { kind: 'trial', text: 'window of the published curves' },
  cautions: [],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};

const wrench: Wrench = {
  id: identity('wrench'),
  name: 'Screwdriver 4',
  serial: 'KH-004',
  type: 'I',
  class: 'C',
  lowestNm: 0.2,
  highestNm: 4,
  resolutionNm: 0.001,
  angleResolutionDeg: 0.25,
  leverMm: 100,
  connection: { kind: 'typed' },
  calibration: {
    calibratedOn: '2026-01-10',
    dueOn: '2099-01-10',
    certificate: 'KC-26-004',
    by: 'Valley laboratory',
    maximumDeviationPercent: 1,
    expandedUncertaintyPercent: 0.8,
  },
};

const sheetWith = (fastener: FastenerSpec): JobSheet => ({
  id: JOB,
  title: 'New lid on the wind gauge of tower 5',
  asset: { id: identity('tower'), name: 'Tower 5', location: 'Kestrelhorn line' },
  joints: [
    {
      ref: 'J1',
      label: 'Lid',
      joint: { id: identity('joint'), revision: 1, status: 'released', content: { ...content, fastener } },
    },
  ],
  demo: false,
});

/** Puts people, wrench and job into the data folder, the wrench taken; the joint states that its screws form their thread. */
export async function curveJob(folder: string, fastener: FastenerSpec = FORMING): Promise<void> {
  const store = have(await openStore(folder));
  for (const person of [LEAD, TECHNICIAN, KEEPER]) have(await store.people.add({ ...person, pinHash: undefined }));
  have(await store.wrenches.add(wrench));
  const opened = have(
    openJob(sheetWith(fastener), { id: identity('opened'), now: '2026-03-02T06:00:00.000Z', by: LEAD }),
  );
  have(await store.jobs.open(chain(startOfChain(JOB), [opened])));
  await doOn(store, { kind: 'take-tool', wrenchId: wrench.id, jointRefs: ['J1'] });
  await store.close();
}

async function doOn(store: Store, command: Command): Promise<void> {
  const context = {
    entryId: identity(command.kind),
    now: '2026-03-02T06:01:00.000Z',
    by: TECHNICIAN,
    tool: { wrench },
  };
  have(await store.jobs.append(JOB, (state) => decide(state, command, context)));
}

/** The value of a result that a test takes for granted. */
export function have<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}
