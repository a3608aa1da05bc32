import { convert } from '@clampwright/core/quantity';
import type { Trace } from '@clampwright/core/record';
import { QUANTITY, type StepTrace, type TraceContent } from './result-shape.ts';
import { isInMilliseconds, unitMeant } from './units.ts';

const MS = 1000;

/**
 * The trace of a result: the samples of its steps one after the other.
 *
 * @returns undefined where torque or angle is not told for every sample, in a unit that is known
 */
export function traceOf(steps: readonly StepTrace[]): Trace | undefined {
  const trace: Trace = { timeS: [], angleDeg: [], torqueNm: [] };
  for (const step of steps.toSorted((a, b) => (a.startTimeOffset ?? 0) - (b.startTimeOffset ?? 0))) {
    if (!addStep(trace, step)) return undefined;
  }
  return trace.timeS.length >= 2 ? trace : undefined;
}

function addStep({ timeS, angleDeg, torqueNm }: Trace, step: StepTrace): boolean {
  const count = step.numberOfTracePoints;
  const torques = samplesOf(step, 'torque', count);
  const angles = samplesOf(step, 'angle', count);
  const times = timesOf(step, count);
  if (!torques || !angles || !times) return false;
  const startS = (step.startTimeOffset ?? 0) / MS;
  for (let i = 0; i < count; i++) {
    timeS.push(startS + times[i]!);
    angleDeg.push(angles[i]!);
    torqueNm.push(torques[i]!);
  }
  return true;
}

const TARGETS = { torque: 'N·m', angle: 'deg' } as const;

function samplesOf(step: StepTrace, quantity: 'torque' | 'angle', count: number): readonly number[] | undefined {
  const content = contentOf(step, quantity);
  if (content?.values.length !== count) return undefined;
  const unit = unitMeant(content.engineeringUnits ?? {}, quantity);
  const one = unit && convert(1, unit, TARGETS[quantity]);
  return one?.ok ? Array.from(content.values, (value) => value * one.value) : undefined;
}

/** Seconds since the step began: as told (in seconds, unless the unit says milliseconds), or by the sampling interval. */
function timesOf(step: StepTrace, count: number): readonly number[] | undefined {
  const told = contentOf(step, 'time');
  if (told?.values.length === count) {
    const perSecond = isInMilliseconds(told.engineeringUnits ?? {}) ? MS : 1;
    return Array.from(told.values, (value) => value / perSecond);
  }
  const { samplingInterval } = step;
  if (!samplingInterval || samplingInterval < 0) return undefined;
  return Array.from({ length: count }, (_, i) => (i * samplingInterval) / MS);
}

const contentOf = (step: StepTrace, quantity: keyof typeof QUANTITY): TraceContent | undefined =>
  step.stepTraceContent?.find(({ physicalQuantity }) => physicalQuantity === QUANTITY[quantity]);
