import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Result } from '@clampwright/core/failure';
import type { Outcome } from '../api/problem.ts';
import type { CalcQuestion } from './answer-to.ts';
import { Turns } from './turns.ts';

/** A thread begins as plain Node does; where the rest runs from source, it still is the built file. */
const THREAD = new URL(
  import.meta.url.endsWith('.ts') ? '../dist/calc/calc-thread.js' : 'calc-thread.js',
  import.meta.url,
);

/** One processor stays with those who tighten. */
const turns = new Turns(Math.max(1, availableParallelism() - 1));

/**
 * Calculates in a thread of its own, so that nobody who works on a joint waits for a long search meanwhile. Threads are
 * few; who asks for one more waits for its turn.
 *
 * @param signal ends the thread when nobody waits for the answer any more
 */
export async function answeredBeside(question: CalcQuestion, signal: AbortSignal): Promise<Outcome<unknown>> {
  const giveBack = await turns.take();
  try {
    return signal.aborted ? GIVEN_UP : await inThread(question, signal);
  } finally {
    giveBack();
  }
}

const GIVEN_UP = {
  ok: false,
  failure: { kind: 'broken', message: 'The calculation was stopped: nobody waited for it any more.' },
} as const satisfies Outcome<unknown>;

function inThread(question: CalcQuestion, signal: AbortSignal): Promise<Outcome<unknown>> {
  return new Promise((resolve, reject) => {
    const thread = new Worker(THREAD, { execArgv: [] });
    thread.unref();
    const stop = () => void thread.terminate();
    signal.addEventListener('abort', stop, { once: true });
    thread.once('message', (answer: Result<unknown>) => resolve(answer));
    thread.once('error', reject);
    thread.once('exit', () => {
      signal.removeEventListener('abort', stop);
      resolve(GIVEN_UP);
    });
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin to name
    thread.postMessage(question);
  });
}
