import { CALCULATIONS, type CalculationName } from '@clampwright/core/calculations';
import { isRecord } from './is-record.ts';

/** The registry's own example of an input. */
export function exampleOf(name: CalculationName): Readonly<Record<string, unknown>> {
  const example: unknown = CALCULATIONS.find((calculation) => calculation.name === name)?.example;
  return isRecord(example) ? example : {};
}
