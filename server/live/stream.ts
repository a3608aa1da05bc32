import type { LiveEvent } from '../api/contract.ts';
import type { Listeners } from './listeners.ts';

/** Proxies and sleeping tablets drop what is silent for longer. */
const HEARTBEAT_MS = 15_000;
/** Events that wait for a slow listener before it is let go. */
const MOST_WAITING = 256;

const HEADERS = {
  'content-type': 'text/event-stream',
  'cache-control': 'no-store',
  'x-accel-buffering': 'no',
} as const;

/**
 * The live events of a job as server-sent events (WHATWG HTML, 9.2).
 *
 * A listener that does not keep up misses torque figures first and is then let go; it comes back by itself and
 * fetches the entries it missed.
 *
 * @returns undefined when as many listen as may
 */
export function liveStream(jobId: string, listeners: Listeners, closing: AbortSignal): Response | undefined {
  let leave = (): void => undefined;
  const encoder = new TextEncoder();
  let room: ReadableStreamDefaultController<Uint8Array> | undefined;

  const write = (text: string): void => {
    if (!room) return;
    if ((room.desiredSize ?? 0) <= 0) return leave();
    room.enqueue(encoder.encode(text));
  };
  const hear = (event: LiveEvent): void => {
    if (event.kind === 'torque' && (room?.desiredSize ?? 0) < MOST_WAITING / 2) return;
    write(`data: ${JSON.stringify(event)}\n\n`);
  };

  const stop = listeners.listen(jobId, hear);
  if (!stop) return undefined;
  const beat = setInterval(() => write(': still here\n\n'), HEARTBEAT_MS);
  const end = (): void => {
    clearInterval(beat);
    stop();
    closing.removeEventListener('abort', leave);
    room = undefined;
  };
  leave = () => {
    room?.close();
    end();
  };
  closing.addEventListener('abort', leave);
  const body = new ReadableStream<Uint8Array>(
    {
      start: (controller) => {
        room = controller;
        write(': listening\n\n');
      },
      cancel: end,
    },
    new CountQueuingStrategy({ highWaterMark: MOST_WAITING }),
  );
  return new Response(body, { headers: HEADERS });
}
