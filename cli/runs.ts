import type { Outcome } from '@clampwright/server';
import { type ExitCode, exitCodeOf, failureText } from './say.ts';

type Run<Args extends readonly unknown[]> = (...args: Args) => Promise<Outcome<ExitCode>>;

/**
 * An action of the command line: loads the command when it is wanted and runs it. What comes of it is told here and
 * nowhere else: the exit code, and a refusal on standard error.
 */
export function runs<Args extends readonly unknown[]>(
  load: () => Promise<Run<Args>>,
  tell: typeof failureText = failureText,
): (...args: Args) => Promise<void> {
  return async (...args) => {
    const run = await load();
    const done = await run(...args);
    if (!done.ok) process.stderr.write(`${tell(done.failure)}\n`);
    process.exitCode = done.ok ? done.value : exitCodeOf(done.failure);
  };
}

/** A reader that has seen enough, such as `head`, is no fault. */
export function outliveReader(out: NodeJS.WriteStream): void {
  out.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
  });
}
