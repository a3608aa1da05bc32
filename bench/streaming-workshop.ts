import { setTimeout as pause } from 'node:timers/promises';
import { sha256Hex, uuidV8 } from '@clampwright/core/record';
import { z } from 'zod';
import { type Served, served } from './served.ts';
import type { StreamingWrench } from './wrench-streams.ts';

/** A served workshop where each wrench on its terminal is taken for a job of its own. */
export interface StreamingWorkshop extends Served {
  readonly cookie: string;
  readonly jobIds: readonly string[];
  /** Pulls that were stored, and what was refused or not understood. */
  readonly told: () => Promise<{ readonly taken: number; readonly wrong: number }>;
}

const PIN = '2468';
const identity = (word: string): string => uuidV8(sha256Hex(`streaming ${word}`));
const ASSET = { id: identity('tower'), name: 'Tower 3', location: 'lower section' };
const STAGE = {
  kind: 'torque',
  torque: {
    lowerNm: 38,
    targetNm: 42,
    upperNm: 46,
    typed: { form: 'plus-minus', target: '42', plusMinus: '4', unit: 'N·m' },
  },
  rounds: [{ share: 1, order: { method: 'circular' } }],
};
const JOINT = {
  name: 'Ring of the big wheel',
  fastener: { thread: 'M10', propertyClass: '8.8', description: 'hexagon bolt', lubricant: 'dry', reuse: 'reusable' },
  layout: { kind: 'circle', count: 200, diameterMm: 5000, firstAngleDeg: 0, direction: 'clockwise' },
  numbersSource: { kind: 'trial', text: 'invented' },
  cautions: [],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};
const wrenchOf = (serial: string) => ({
  id: identity(serial),
  name: `Wrench ${serial}`,
  serial,
  type: 'I',
  class: 'C',
  lowestNm: 10,
  highestNm: 100,
  resolutionNm: 0.1,
  angleResolutionDeg: 0.1,
  leverMm: 400,
  connection: { kind: 'typed' },
  calibration: {
    calibratedOn: '2026-01-10',
    dueOn: '2030-01-10',
    certificate: 'KC-26-014',
    by: 'Valley laboratory',
    maximumDeviationPercent: 1.2,
    expandedUncertaintyPercent: 0.8,
  },
});

/** @param stages each gives every wrench another 200 pulls to make */
export async function streamingWorkshop(
  wrenches: readonly StreamingWrench[],
  stages: number,
): Promise<StreamingWorkshop> {
  const server = await served();
  const { ask, cookie } = await leadAt(server.url);
  const jointId = identity('ring');
  await ask('/joints', { id: jointId, content: { ...JOINT, stages: Array.from({ length: stages }, () => STAGE) } });
  await ask(`/joints/${jointId}/release`, {});
  const jobIds: string[] = [];
  for (const { serial, pty } of wrenches) {
    const wrench = wrenchOf(serial);
    const id = identity(`job ${serial}`);
    await ask('/toolbox/wrenches', wrench);
    await ask('/jobs', {
      id,
      title: `Ring ${serial}`,
      asset: ASSET,
      joints: [{ jointId, revision: 1, label: 'Ring' }],
    });
    await ask(`/jobs/${id}/commands`, { command: { kind: 'take-tool', wrenchId: wrench.id, jointRefs: ['J1'] } });
    const way = { kind: 'serial', path: pty.path, lines: 'Clampwright' };
    await ask('/devices', { device: { id: identity(`port ${serial}`), name: serial, wrenchId: wrench.id, way } });
    jobIds.push(id);
  }
  const standings = async () => shownSchema.parse(await ask('/devices')).map(({ standing }) => standing);
  while ((await standings()).some(({ state }) => state !== 'connected')) await pause(50);
  return { ...server, cookie: cookie(), jobIds, told: async () => summed(await standings()) };
}

const standingSchema = z.looseObject({
  state: z.string(),
  taken: z.number(),
  refused: z.number(),
  unreadable: z.number(),
});
const shownSchema = z.array(z.looseObject({ standing: standingSchema }));

const summed = (standings: readonly z.infer<typeof standingSchema>[]) => ({
  taken: standings.reduce((sum, { taken }) => sum + taken, 0),
  wrong: standings.reduce((sum, { refused, unreadable }) => sum + refused + unreadable, 0),
});

async function leadAt(url: string) {
  let cookie = '';
  const ask = async (path: string, body?: unknown): Promise<unknown> => {
    const response = await fetch(`${url}/api/v1${path}`, {
      headers: { 'content-type': 'application/json', cookie },
      ...(body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }),
    });
    cookie = response.headers.get('set-cookie')?.split(';')[0] ?? cookie;
    if (!response.ok) throw new Error(`${path}: ${await response.text()}`);
    return response.json();
  };
  const people = z.array(z.looseObject({ id: z.string(), role: z.string() })).parse(await ask('/people'));
  await ask('/session', { personId: people.find(({ role }) => role === 'lead')?.id, pin: PIN });
  return { ask, cookie: () => cookie };
}
