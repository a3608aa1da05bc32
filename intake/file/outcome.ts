import type { Failure } from '@clampwright/core/failure';
import type { IncomingPull } from '@clampwright/core/record';

/** A line that is not taken, and why. */
export interface Refused {
  readonly kind: 'refused';
  readonly line: number;
  readonly field: string;
  readonly message: string;
}

/** What a line of the file came to; a curve is told by its first line. */
export type Outcome = { readonly kind: 'pull'; readonly line: number; readonly pull: IncomingPull } | Refused;

export const refused = (line: number, field: string, message: string): Refused => ({
  kind: 'refused',
  line,
  field,
  message,
});

/** What is wrong with a cell, told of its line. Cells are only ever invalid. */
export function refusedFor(line: number, failure: Failure): Refused {
  if (failure.kind !== 'invalid') throw new Error(`a cell of a file cannot be ${failure.kind}`);
  return refused(line, failure.field, failure.message);
}
