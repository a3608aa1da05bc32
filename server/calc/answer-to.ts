import { type CalculationName, calculate, calculateMany } from '@clampwright/core/calculations';
import { ok, type Result } from '@clampwright/core/failure';
import type { OwnRow } from '@clampwright/core/fastener';

/** A calculation that is asked for; the input may name the workshop's own rows. */
export interface CalcQuestion {
  readonly name: CalculationName;
  readonly input: unknown;
  readonly rows: readonly OwnRow[];
}

/** One answer, or a list of them for a list of inputs. */
export const answerTo = ({ name, input, rows }: CalcQuestion): Result<unknown> =>
  Array.isArray(input) ? ok(calculateMany(name, input, rows)) : calculate(name, input, rows);
