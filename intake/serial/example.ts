import { EXAMPLE_JOINT, EXAMPLE_TOOL } from '../simulated/example.ts';
import { looseFastener, modelFor, type SimulatedPull, simulatePull } from '../simulated/index.ts';
import type { PullStamp } from './write.ts';

/** The n-th pull of an invented wrench, for tests and examples. */
export function examplePull(number: number): { readonly pull: SimulatedPull; readonly stamp: PullStamp } {
  const model = modelFor(EXAMPLE_JOINT, EXAMPLE_TOOL);
  if (!model.ok) throw new Error('the example has a model');
  const fastener = looseFastener(model.value.joint, number);
  const pull = simulatePull({ model: model.value, aim: { torqueNm: 60 }, fault: 'none', seed: number, fastener });
  const last = String(number).padStart(12, '0');
  const minute = String(number % 60).padStart(2, '0');
  const takenAt = `2026-05-04T09:${minute}:33.120Z`;
  return { pull, stamp: { pull: number, id: `01973c3e-6a10-7000-8000-${last}`, takenAt, serial: 'KH-0417' } };
}
