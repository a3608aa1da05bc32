import type { z } from 'zod';
import type { Result } from '../failure/failure.ts';
import { parse } from '../failure/parse.ts';

/** What is written down of a calculation, once; command line, API and bench are made from it. */
interface Spec<Name extends string, Input, Typed, Output> {
  readonly name: Name;
  readonly title: string;
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
  /** Each field with `.describe()`: what it is, its unit and range. */
  readonly input: z.ZodType<Input, Typed>;
  readonly output: z.ZodType<Output>;
  readonly example: Typed;
  readonly isLong?: true;
  readonly work: (input: Input) => Result<Output>;
}

/** A calculation as its users see it: anything in, refused unless the schema takes it. */
export interface Calculation<Name extends string = string> {
  readonly name: Name;
  readonly title: string;
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  readonly example: unknown;
  /** May take seconds: whoever has others to answer meanwhile runs it beside. */
  readonly isLong?: true;
  readonly run: (input: unknown) => Result<unknown>;
}

/** Joins a calculation to its input schema, so that `work` sees only what the schema has read. */
export function calculation<const Name extends string, Input, Typed, Output>(
  spec: Spec<Name, Input, Typed, Output>,
): Calculation<Name> {
  const { work, ...told } = spec;
  const run = (input: unknown): Result<unknown> => {
    const read = parse(spec.input, input);
    return read.ok ? work(read.value) : read;
  };
  return { ...told, run };
}

/** Stands with every calculation whose figure may be aimed at. */
export const MAKER_FIRST =
  'The maker’s instructions and local codes come first; figures worked out here are estimates.';
