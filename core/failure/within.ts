import type { Failure } from './failure.ts';

/** A refusal told from further out: field `positions[2]` within `stages[0].order` is `stages[0].order.positions[2]`. */
export function within(outer: string, failure: Failure): Failure {
  if (failure.kind !== 'invalid') return failure;
  return { ...failure, field: `${outer}${failure.field.startsWith('[') ? '' : '.'}${failure.field}` };
}
