import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { setTimeout as pause } from 'node:timers/promises';
import { ok, type Result } from '@clampwright/core/failure';
import { uuidV7 } from '@clampwright/core/record';
import { simulatedOnPty, type WrenchOnPty } from '@clampwright/intake/serial';
import { type Fault, looseFastener, modelFor, type SimulatedModel, simulatePull } from '@clampwright/intake/simulated';
import { ending } from '../ending.ts';
import { answer } from '../say.ts';
import { SERIAL, simulatedJoint, simulatedTool } from '../simulated-work.ts';

interface Wanted {
  readonly torque: number;
  readonly angle?: number;
  readonly from?: number;
  readonly fault: Fault;
  readonly pulls?: number;
  readonly pause: number;
  readonly seed: number;
  readonly link?: string;
}

/** `clampwright wrench simulate`: the simulated wrench on a pseudo-terminal, until its pulls are made or it is ended. */
export async function simulate(wanted: Wanted): Promise<Result<0>> {
  const model = modelFor(simulatedJoint(targetOf(wanted)), simulatedTool(wanted.torque));
  if (!model.ok) return model;
  const terminal = await simulatedOnPty(wanted.link === undefined ? {} : { link: wanted.link });
  if (!terminal.ok) return terminal;
  answer(`The wrench speaks at ${terminal.value.path}`);
  const end = ending();
  const pulling = pullOn(wanted, model.value, terminal.value, end);
  await Promise.race([pulling, once(end, 'abort')]);
  await terminal.value.close();
  // A closed terminal takes nothing more, which ends the pull that was under way.
  const pulled = await pulling;
  return end.aborted || pulled.ok ? ok(0) : pulled;
}

const targetOf = ({ torque, angle, from = torque / 2 }: Wanted) => ({
  torqueNm: torque,
  ...(angle === undefined ? {} : { angleDeg: angle, angleFromNm: from }),
});

async function pullOn(
  wanted: Wanted,
  model: SimulatedModel,
  terminal: WrenchOnPty,
  end: AbortSignal,
): Promise<Result<void>> {
  const { angleDeg, angleFromNm, torqueNm } = targetOf(wanted);
  const aim = angleDeg === undefined ? { torqueNm } : { angleDeg, angleFromNm };
  const rest = () => pause(1000 * wanted.pause, undefined, { signal: end }).catch(() => undefined);
  await rest();
  for (let number = 1; !end.aborted && number <= (wanted.pulls ?? Number.POSITIVE_INFINITY); number++) {
    const fastener = looseFastener(model.joint, wanted.seed * 1000 + number);
    const pull = simulatePull({ model, aim, fault: wanted.fault, seed: wanted.seed + number, fastener });
    const id = uuidV7(Date.now(), randomBytes(10));
    const stamp = { pull: number, id, takenAt: new Date().toISOString(), serial: SERIAL };
    const sent = await terminal.send(pull, stamp, 'live');
    if (!sent.ok) return sent;
    answer(`pull ${number}: ${pull.shownTorqueNm} N·m, ${pull.shownAngleDeg}°`);
    // After the last one too: what its reader has not read yet goes with the terminal.
    await rest();
  }
  return ok(undefined);
}
