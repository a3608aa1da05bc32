import { z } from 'zod';
import type { Result } from '../failure/failure.ts';
import type { OwnRow } from '../fastener/own-row.ts';
import { assemblyTorque } from './assembly-torque.ts';
import type { Calculation } from './calculation.ts';
import { calibrationInterval } from './calibration-interval.ts';
import { capability } from './capability.ts';
import { compliance } from './compliance.ts';
import { acceptanceLimits, conformity, decisionRisk } from './conformity.ts';
import { controlChart } from './control-chart.ts';
import { convert } from './convert.ts';
import { elasticInteraction } from './elastic-interaction.ts';
import { fastener } from './fastener.ts';
import { firstMovement } from './first-movement.ts';
import { friction } from './friction.ts';
import { interactionFit } from './interaction-fit.ts';
import { jointCheck } from './joint-check.ts';
import { orderSearch } from './order-search.ts';
import { withOwnRows } from './own-names.ts';
import { preload } from './preload.ts';
import { roundTargets } from './round-targets.ts';
import { tighteningAngle } from './tightening-angle.ts';
import { tighteningOrder } from './tightening-order.ts';
import { torquePlausibility } from './torque-plausibility.ts';
import { trace } from './trace.ts';
import { verdict } from './verdict.ts';
import { wrenchCalibration } from './wrench-calibration.ts';
import { appliedTorque, wrenchSetting } from './wrench-setting.ts';

/** Every calculation; to add one, add its file and a line here. */
export const CALCULATIONS = [
  convert,
  fastener,
  assemblyTorque,
  preload,
  friction,
  torquePlausibility,
  compliance,
  tighteningAngle,
  jointCheck,
  wrenchSetting,
  appliedTorque,
  tighteningOrder,
  elasticInteraction,
  roundTargets,
  orderSearch,
  interactionFit,
  verdict,
  wrenchCalibration,
  conformity,
  acceptanceLimits,
  decisionRisk,
  trace,
  firstMovement,
  capability,
  controlChart,
  calibrationInterval,
] as const satisfies readonly Calculation[];

export type CalculationName = (typeof CALCULATIONS)[number]['name'];

function entryOf(name: CalculationName): Calculation {
  const entry = CALCULATIONS.find((candidate) => candidate.name === name);
  if (!entry) throw new Error(`no calculation ${name}`);
  return entry;
}

/**
 * Runs a calculation on one input.
 *
 * @param input anything; refused with the field and what it wants unless the calculation's schema takes it
 * @param rows  the workshop's own, which the input may name; see `withOwnRows`
 */
export function calculate(name: CalculationName, input: unknown, rows: readonly OwnRow[] = []): Result<unknown> {
  const entry = entryOf(name);
  const told = withOwnRows(entry, input, rows);
  return told.ok ? entry.run(told.value) : told;
}

/** Runs a calculation on each input; `{ error }` stands in the place of each one that is refused. */
export const calculateMany = (
  name: CalculationName,
  inputs: readonly unknown[],
  rows: readonly OwnRow[] = [],
): readonly unknown[] =>
  inputs.map((input) => {
    const result = calculate(name, input, rows);
    return result.ok ? result.value : { error: result.failure };
  });

/** JSON Schema (2020-12) of what a calculation takes, made when it is asked for. */
export const inputJsonSchema = (name: CalculationName): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(entryOf(name).input, { io: 'input' });

/** JSON Schema (2020-12) of what a calculation gives. */
export const outputJsonSchema = (name: CalculationName): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(entryOf(name).output, { io: 'output' });
