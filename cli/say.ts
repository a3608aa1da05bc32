import type { Failure } from '@clampwright/core/failure';

/** Exit codes: 1 something could not be done, 2 an input is wrong. */
export const exitCodeOf = (failure: Failure): number => (failure.kind === 'invalid' ? 2 : 1);

/** A failure in one or two lines for a terminal: what is wrong and what to do. */
export function failureText(failure: Failure): string {
  switch (failure.kind) {
    case 'invalid':
      return `${failure.field}: ${failure.message}\n  wanted: ${failure.expected}`;
    case 'not-found':
      return `There is no ${failure.what} ${failure.id}.`;
    case 'conflict':
      return failure.message;
    case 'forbidden':
      return `${failure.action} needs the role ${failure.needs}.`;
    case 'unavailable':
      return `${failure.message}\n  ${failure.remedy}`;
  }
}

/** Ends the command with a failure on standard error. */
export function endWith(failure: Failure): never {
  process.stderr.write(`${failureText(failure)}\n`);
  process.exit(exitCodeOf(failure));
}
