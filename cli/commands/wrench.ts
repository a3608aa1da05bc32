import { randomBytes } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import { type Failure, invalid, ok, type Result } from '@clampwright/core/failure';
import type { JointContent } from '@clampwright/core/joint';
import { uuidV7 } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { type PullStamp, simulatedOnPty } from '@clampwright/intake/serial';
import {
  FAULTS,
  type Fault,
  looseFastener,
  modelFor,
  type SimulatedPull,
  simulatePull,
} from '@clampwright/intake/simulated';
import { endWith } from '../say.ts';

interface Wanted {
  readonly torque: string;
  readonly angle?: string;
  readonly from?: string;
  readonly fault: string;
  readonly pulls: string;
  readonly pause: string;
  readonly seed: string;
}

interface Plan {
  readonly torqueNm: number;
  readonly angleDeg: number | undefined;
  readonly fromNm: number;
  readonly fault: Fault;
  readonly pulls: number;
  readonly pauseS: number;
  readonly seed: number;
}

/** `clampwright wrench simulate`: the simulated wrench over a pseudo-terminal, pull after pull, until it is interrupted. */
export async function simulate(wanted: Wanted): Promise<void> {
  const plan = planFrom(wanted);
  if (!plan.ok) return endWith(plan.failure);
  const terminal = await simulatedOnPty();
  if (!terminal.ok) return endWith(terminal.failure);
  process.stdout.write(`The wrench speaks at ${terminal.value.path}\n`);
  process.once('SIGINT', () => void terminal.value.close().then(() => process.exit(0)));
  const refused = await pullOn(plan.value, (pull, stamp) => terminal.value.send(pull, stamp, 'live'));
  await terminal.value.close();
  if (refused) endWith(refused);
}

type Send = (pull: SimulatedPull, stamp: PullStamp) => Promise<Result<void>>;

async function pullOn(plan: Plan, send: Send): Promise<Failure | undefined> {
  const model = modelFor(jointFor(plan), toolFor(plan));
  if (!model.ok) return model.failure;
  for (let number = 1; number <= plan.pulls; number++) {
    await pause(1000 * plan.pauseS);
    const aim =
      plan.angleDeg === undefined ? { torqueNm: plan.torqueNm } : { angleDeg: plan.angleDeg, angleFromNm: plan.fromNm };
    const pull = simulatePull({
      model: model.value,
      aim,
      fault: plan.fault,
      seed: plan.seed + number,
      fastener: looseFastener(model.value.joint, plan.seed * 1000 + number),
    });
    const id = uuidV7(Date.now(), randomBytes(10));
    const sent = await send(pull, { pull: number, id, takenAt: new Date().toISOString(), serial: SERIAL });
    if (!sent.ok) return sent.failure;
    process.stdout.write(`pull ${number}: ${pull.shownTorqueNm} N·m, ${pull.shownAngleDeg}°\n`);
  }
  return undefined;
}

function planFrom(wanted: Wanted): Result<Plan> {
  const figures = {
    torque: Number(wanted.torque),
    pulls: Number(wanted.pulls),
    pause: Number(wanted.pause),
    seed: Number(wanted.seed),
  };
  for (const [name, figure] of Object.entries(figures)) {
    if (!Number.isFinite(figure) || figure < 0)
      return invalid(`--${name}`, `${figure} is no such figure`, 'a number, 0 or more');
  }
  const angleDeg = wanted.angle === undefined ? undefined : Number(wanted.angle);
  if (angleDeg !== undefined && !(angleDeg > 0))
    return invalid('--angle', `${wanted.angle} is no angle`, 'degrees, more than 0');
  const fault = FAULTS.find((known) => known === wanted.fault);
  if (!fault) return invalid('--fault', `there is no fault ${wanted.fault}`, FAULTS.join(', '));
  const fromNm = wanted.from === undefined ? figures.torque / 2 : Number(wanted.from);
  return ok({
    torqueNm: figures.torque,
    angleDeg,
    fromNm,
    fault,
    pulls: figures.pulls,
    pauseS: figures.pause,
    seed: figures.seed,
  });
}

const SERIAL = 'SIMULATED-1';
const typed = { form: 'limits', lower: '', upper: '', unit: 'N·m' } as const;

/** A joint that gives way as its targets ask. */
function jointFor({ torqueNm, angleDeg, fromNm }: Plan): JointContent {
  const torque = { lowerNm: 0.9 * torqueNm, targetNm: torqueNm, upperNm: 1.1 * torqueNm, typed };
  const rounds: JointContent['stages'][number]['rounds'] = [{ share: 1, order: { method: 'circular' } }];
  const angle =
    angleDeg === undefined
      ? {}
      : {
          angle: { lowerDeg: 0.9 * angleDeg, targetDeg: angleDeg, upperDeg: 1.1 * angleDeg, typed },
          angleFromNm: fromNm,
        };
  return {
    name: 'simulated',
    fastener: { thread: 'M12', propertyClass: '10.9', description: '', lubricant: '', reuse: 'reusable' },
    layout: { kind: 'line', count: 1, pitchMm: 10 },
    stages: [{ kind: angleDeg === undefined ? 'torque' : 'torque-and-angle', torque, ...angle, rounds }],
    numbersSource: { kind: 'trial', text: 'simulated' },
    cautions: [],
    rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
    decisionRule: { kind: 'simple' },
    torqueUnit: 'N·m',
  };
}

const toolFor = ({ torqueNm }: Plan): Tool => ({
  wrench: {
    id: uuidV7(0, new Uint8Array(10)),
    name: 'Simulated wrench',
    serial: SERIAL,
    type: 'I',
    class: 'C',
    lowestNm: 0.05 * torqueNm,
    highestNm: 1.6 * torqueNm,
    resolutionNm: 0.001 * torqueNm,
    angleResolutionDeg: 0.5,
    leverMm: 400,
    connection: { kind: 'simulated', seed: 1 },
  },
});
