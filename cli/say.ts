import type { Refusal } from '@clampwright/server';

/** 0 done; 1 it could not be, or is not as it should be; 2 the input is wrong; 3 a record without a seal. */
export type ExitCode = 0 | 1 | 2 | 3;

export const exitCodeOf = ({ kind }: Refusal): ExitCode => (kind === 'invalid' ? 2 : 1);

const HINTS: Readonly<Record<string, string>> = { job: '`clampwright jobs` lists those that there are.' };

/** A refusal for a terminal: what is wrong, and below it what to do. */
export function failureText(failure: Refusal): string {
  switch (failure.kind) {
    case 'invalid':
      return `${failure.field}: ${failure.message}\n  wanted: ${failure.expected}`;
    case 'not-found':
      return [`There is no ${failure.what} ${failure.id}.`, HINTS[failure.what] ?? []].flat().join('\n  ');
    case 'forbidden':
      return `To ${failure.action} the role ${failure.needs} is needed.`;
    case 'unavailable':
      return `${failure.message}\n  ${failure.remedy}`;
    case 'conflict':
    case 'not-signed-in':
    case 'demonstration-only':
    case 'too-many-attempts':
    case 'too-many-listeners':
    case 'too-large':
    case 'foreign-origin':
    case 'broken':
      return failure.message;
  }
}

/** A refusal for a program. */
export const failureJson = (failure: Refusal): string => toJson({ error: failure });

export const toJson = (value: unknown): string => JSON.stringify(value, null, 2);

/** What was asked for, on standard output. */
export const answer = (text: string): void => void process.stdout.write(`${text}\n`);

/** What goes beside it, such as progress and what to do next, on standard error. */
export const remark = (text: string): void => void process.stderr.write(`${text}\n`);
