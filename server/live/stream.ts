import type { Listeners } from './listeners.ts';

/** Proxies and sleeping tablets drop what is silent for longer. */
const HEARTBEAT_MS = 15_000;
/** Events that may wait for a slow listener before it is let go. */
const MOST_WAITING = 256;

const HEADERS = {
  'content-type': 'text/event-stream',
  'cache-control': 'no-store',
  'x-accel-buffering': 'no',
} as const;

/**
 * What happens to a job, a device or a wrench as server-sent events.
 *
 * A listener that does not keep up misses torque figures first and is then let go; it comes back by itself and
 * fetches the entries it missed.
 *
 * @returns undefined when as many listen as may
 * @source WHATWG HTML, 9.2 (server-sent events)
 */
export function liveStream<Event extends Told>(
  id: string,
  listeners: Listeners<Event>,
  closing: AbortSignal,
  onEnd: () => void = () => undefined,
): Response | undefined {
  const line = new ListenerLine();
  const stop = listeners.listen(id, (event) => line.tell(event));
  if (!stop) return undefined;
  const beat = setInterval(() => line.write(': still here\n\n'), HEARTBEAT_MS);
  const hangUp = (): void => line.end();
  closing.addEventListener('abort', hangUp);
  line.onEnd = () => {
    clearInterval(beat);
    stop();
    onEnd();
    closing.removeEventListener('abort', hangUp);
  };
  if (closing.aborted) hangUp();
  return new Response(line.body, { headers: HEADERS });
}

interface Told {
  readonly kind: string;
}

/** The line to one listener, from the first word until either side hangs up. */
class ListenerLine {
  readonly body: ReadableStream<Uint8Array>;
  onEnd: (() => void) | undefined;
  #room: ReadableStreamDefaultController<Uint8Array> | undefined;
  readonly #encoder = new TextEncoder();

  constructor() {
    const source = {
      start: (room: ReadableStreamDefaultController<Uint8Array>) => {
        this.#room = room;
      },
      cancel: () => this.#ended(),
    };
    this.body = new ReadableStream(source, new CountQueuingStrategy({ highWaterMark: MOST_WAITING }));
    this.write(': listening\n\n');
  }

  tell(event: Told): void {
    const left = this.#room?.desiredSize ?? 0;
    if (event.kind === 'torque' && left < MOST_WAITING / 2) return;
    this.write(`data: ${JSON.stringify(event)}\n\n`);
  }

  write(text: string): void {
    if (!this.#room) return;
    if ((this.#room.desiredSize ?? 0) <= 0) this.end();
    else this.#room.enqueue(this.#encoder.encode(text));
  }

  end(): void {
    this.#room?.close();
    this.#ended();
  }

  #ended(): void {
    this.#room = undefined;
    this.onEnd?.();
    this.onEnd = undefined;
  }
}
