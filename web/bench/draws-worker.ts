import { answerTo, type DrawRequest } from './draws.ts';

/* Runs beside the page, so that a million draws hold up no finger. */
self.addEventListener('message', ({ data }: MessageEvent<DrawRequest>) => {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker answers its page alone
  self.postMessage(answerTo(data));
});
