import { parentPort } from 'node:worker_threads';
import { answerTo, type CalcQuestion } from './answer-to.ts';

/* A thread for one calculation: it answers and ends. */
parentPort?.once('message', (question: CalcQuestion) => {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin to name
  parentPort?.postMessage(answerTo(question));
});
