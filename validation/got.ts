import { type CalculationName, calculate } from '@clampwright/core/calculations';
import type { Result } from '@clampwright/core/failure';

/** The value of a result; a refusal is thrown, and shows in the table as a miss. */
export function got<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(JSON.stringify(result.failure));
}

/** One field of what a calculation answers. */
export function fieldFrom(name: CalculationName, input: unknown, field: string): unknown {
  const answer = got(calculate(name, input));
  const fields = typeof answer === 'object' && answer !== null ? Object.entries(answer) : [];
  return fields.find(([key]) => key === field)?.[1];
}

/** One number out of what a calculation answers. */
export function numberFrom(name: CalculationName, input: unknown, field: string): number {
  const value = fieldFrom(name, input, field);
  if (typeof value !== 'number') throw new Error(`${name} gives no number ${field}`);
  return value;
}

/** `refused: FIELD` when a calculation refuses its input, `accepted` when it does not. */
export function refusal(name: CalculationName, input: unknown): string {
  const result = calculate(name, input);
  if (result.ok) return 'accepted';
  return result.failure.kind === 'invalid' ? `refused: ${result.failure.field}` : result.failure.kind;
}
