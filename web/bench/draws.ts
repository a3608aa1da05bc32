import { type CalculationName, calculate } from '@clampwright/core/calculations';
import type { Result } from '@clampwright/core/failure';

/* What the page and its worker say to each other. */

export interface DrawRequest {
  readonly id: number;
  readonly name: CalculationName;
  readonly input: unknown;
}

export interface DrawAnswer {
  readonly id: number;
  readonly result: Result<unknown>;
}

/** Enough to see the shape, and few enough to be drawn within a frame. */
const DRAWS_WHILE_MOVING = 10_000;
/** As many as the calculation draws unless told. */
const DRAWS_AT_REST = 1_000_000;

const drawsAsked = (input: Readonly<Record<string, unknown>>): number =>
  typeof input['draws'] === 'number' ? input['draws'] : DRAWS_AT_REST;

/** The input with few draws, for while a slider is moved. */
export const withFewDraws = (input: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => ({
  ...input,
  draws: Math.min(drawsAsked(input), DRAWS_WHILE_MOVING),
});

/** Without drawing: the law of propagation alone, which also says whether the input is taken. */
export const withoutDraws = (input: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => ({
  ...input,
  draws: 0,
});

export const answerTo = ({ id, name, input }: DrawRequest): DrawAnswer => ({ id, result: calculate(name, input) });
