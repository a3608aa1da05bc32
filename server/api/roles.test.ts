import type { Role } from '@clampwright/core/failure';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  aWrench,
  bracketContent,
  identity,
  jobOnBracket,
  ROLES_AT_WORK,
  tower,
  typedPull,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';

type Who = Role | 'nobody';
interface Case {
  readonly what: string;
  readonly method: string;
  readonly path: string;
  readonly body?: unknown;
  readonly may: readonly Who[];
}

const NEVER = '01991f3c-0000-7000-8000-000000000000';
const EVERYBODY: readonly Who[] = ['nobody', ...ROLES_AT_WORK];
const command = (asked: unknown) => ({ command: asked });
const { calibration } = aWrench('0100');

const CASES: readonly Case[] = [
  { what: 'looks at jobs', method: 'GET', path: '/jobs', may: EVERYBODY },
  { what: 'looks at the toolbox', method: 'GET', path: '/toolbox', may: EVERYBODY },
  { what: 'reads a record', method: 'GET', path: '/jobs/JOB/record.json', may: EVERYBODY },
  {
    what: 'calculates',
    method: 'POST',
    path: '/calc/convert',
    body: { value: 1, from: 'N.m', to: 'lbf.ft' },
    may: EVERYBODY,
  },
  {
    what: 'records a pull',
    method: 'POST',
    path: '/jobs/JOB/commands',
    body: command(typedPull('roles', 42)),
    may: ['technician', 'lead'],
  },
  {
    what: 'writes a note',
    method: 'POST',
    path: '/jobs/JOB/commands',
    body: command({ kind: 'note', text: 'Rain since ten.' }),
    may: ['technician', 'lead'],
  },
  {
    what: 'accepts an exception',
    method: 'POST',
    path: '/jobs/JOB/commands',
    body: command({
      kind: 'accept',
      cell: { jointRef: 'J1', stage: 1, round: 1, position: 1 },
      reason: 'Accepted after inspection.',
    }),
    may: ['lead'],
  },
  {
    what: 'plays the simulated wrench',
    method: 'POST',
    path: '/jobs/JOB/simulate',
    body: { jointRef: 'J1' },
    may: ['technician', 'lead'],
  },
  {
    what: 'takes in a file',
    method: 'POST',
    path: '/jobs/JOB/imports?mode=preview&mapping=none',
    body: 'position;torque',
    may: ['technician', 'lead'],
  },
  { what: 'saves a mapping', method: 'POST', path: '/mappings', body: {}, may: ['technician', 'lead'] },
  {
    what: 'makes a job',
    method: 'POST',
    path: '/jobs',
    body: {
      id: NEVER,
      title: 'Again',
      asset: tower,
      joints: [{ jointId: identity('bracket'), revision: 1, label: 'Bracket' }],
    },
    may: ['lead'],
  },
  {
    what: 'writes a joint',
    method: 'POST',
    path: '/joints',
    body: { id: identity('bracket'), content: bracketContent },
    may: ['lead'],
  },
  { what: 'releases a joint', method: 'POST', path: `/joints/${identity('bracket')}/release`, may: ['lead'] },
  {
    what: 'adds a person',
    method: 'POST',
    path: '/people',
    body: { name: 'Ada Quill', role: 'technician', pin: '1234' },
    may: ['lead'],
  },
  { what: 'adds an asset', method: 'POST', path: '/assets', body: tower, may: ['lead'] },
  {
    what: 'adds an own row',
    method: 'POST',
    path: '/own-rows',
    body: {
      id: NEVER,
      kind: 'material',
      name: 'Stud',
      source: 'Certificate of the lot',
      yieldStrengthMPa: 700,
      tensileStrengthMPa: 860,
    },
    may: ['lead'],
  },
  { what: 'looks at own rows', method: 'GET', path: '/own-rows', may: EVERYBODY },
  { what: 'adds a wrench', method: 'POST', path: '/toolbox/wrenches', body: aWrench('0777'), may: ['lead', 'keeper'] },
  {
    what: 'adds an adapter',
    method: 'POST',
    path: '/toolbox/adapters',
    body: { id: NEVER, name: 'Crow foot 24', lengthMm: 40, angleDeg: 0 },
    may: ['lead', 'keeper'],
  },
  {
    what: 'adds an extension',
    method: 'POST',
    path: '/toolbox/extensions',
    body: { id: NEVER, name: 'Bar 250', lengthMm: 250 },
    may: ['lead', 'keeper'],
  },
  {
    what: 'enters a calibration',
    method: 'POST',
    path: `/toolbox/wrenches/${aWrench('0100').id}/calibrations`,
    body: calibration,
    may: ['keeper'],
  },
  { what: 'removes the demonstration', method: 'DELETE', path: '/demo', may: ['lead'] },
];

let shop: Workshop;
let jobId: string;
const cookies = new Map<Who, string>();
beforeAll(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop);
  for (const role of ROLES_AT_WORK) cookies.set(role, await shop.signIn(role));
});
afterAll(() => shop.close());

type Reception = 'let in' | 'told to sign in' | 'forbidden';

function receptionOf(status: number): Reception {
  if (status === 401) return 'told to sign in';
  return status === 403 ? 'forbidden' : 'let in';
}

function expected({ path, may }: Case, who: Who): Reception {
  if (may.includes(who)) return 'let in';
  // Who removes the demonstration depends on who else is there, so it asks nobody to sign in.
  return who === 'nobody' && path !== '/demo' ? 'told to sign in' : 'forbidden';
}

describe.each(CASES)('who $what', (asked) => {
  it.each(EVERYBODY)('%s', async (who) => {
    const { status } = await shop.ask(asked.method, asked.path.replace('JOB', jobId), asked.body, cookies.get(who));
    expect(receptionOf(status)).toBe(expected(asked, who));
  });
});
