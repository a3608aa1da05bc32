import type { LineEvent, LineReader } from '@clampwright/core/line';
import type { WebPort } from './web-serial.ts';

/** What is heard of a wrench at this screen. */
export interface PluggedEar {
  readonly events: (events: readonly LineEvent[]) => void;
  readonly isThere: (isThere: boolean) => void;
}

const FIRST_PAUSE_MS = 250;
const LONGEST_PAUSE_MS = 10_000;

/** Reads a port until it is ended; one that goes away is taken up again after growing pauses. */
export async function listenToPort(
  port: WebPort,
  baudRate: number,
  reader: LineReader,
  ear: PluggedEar,
  ended: AbortSignal,
): Promise<void> {
  let pauseMs = FIRST_PAUSE_MS;
  while (!ended.aborted) {
    try {
      await port.open({ baudRate });
      ear.isThere(true);
      pauseMs = FIRST_PAUSE_MS;
      await readAll(port, (piece) => ear.events(reader.take(piece)), ended);
      await port.close();
    } catch {
      // Unplugged, or not back yet: said below, and tried again.
    }
    if (ended.aborted) return;
    ear.events(reader.breakOff());
    ear.isThere(false);
    await pause(pauseMs, ended);
    pauseMs = Math.min(2 * pauseMs, LONGEST_PAUSE_MS);
  }
}

async function readAll({ readable }: WebPort, take: (piece: string) => void, ended: AbortSignal): Promise<void> {
  if (!readable) return;
  const pieces = readable.getReader();
  const stop = (): void => void pieces.cancel().catch(() => undefined);
  ended.addEventListener('abort', stop);
  try {
    for (;;) {
      const { done, value } = await pieces.read();
      if (done) return;
      take(latin1(value));
    }
  } finally {
    ended.removeEventListener('abort', stop);
    pieces.releaseLock();
  }
}

/** Each byte a character. */
const latin1 = (bytes: Uint8Array): string => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');

const pause = (ms: number, ended: AbortSignal): Promise<void> =>
  new Promise((resolve) => {
    const timer = setTimeout(resolve, ms);
    ended.addEventListener('abort', () => {
      clearTimeout(timer);
      resolve();
    });
  });
