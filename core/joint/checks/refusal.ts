import type { Failure } from '../../failure/failure.ts';
import type { Stage } from '../../procedure/procedure.ts';

export const refusal = (field: string, message: string, expected: string): Failure => ({
  kind: 'invalid',
  field,
  message,
  expected,
});

/** Runs a check over each stage, under the stage's path. */
export const inEachStage =
  (check: (stage: Stage, path: string) => readonly Failure[]) =>
  ({ stages }: { readonly stages: readonly Stage[] }): readonly Failure[] =>
    stages.flatMap((stage, index) => check(stage, `stages[${index}]`));
