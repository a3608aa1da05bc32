import { readSync } from 'node:fs';
import type { SerialPort } from 'serialport';

type Bound = NonNullable<SerialPort['port']>;
type Terminal = Extract<Bound, { readonly poller: unknown }>;

/** What comes again by itself: nothing is there yet, or a signal came in between. */
const COMES_AGAIN: readonly unknown[] = ['EAGAIN', 'EWOULDBLOCK', 'EINTR'];

/**
 * Reads an open port so that its end is noticed. A terminal that was hung up, by unplugging for one, reads as nothing
 * at once and for ever; the library asks again each time, and so would never stop asking.
 *
 * Waits before it reads, and then reads without another thread: the port never blocks, and a line costs one call.
 *
 * @source termios(3), non-canonical mode, MIN above 0: a read that gives nothing is the end of the file
 */
export function readTerminal({ port: bound }: SerialPort): void {
  if (!bound || !isTerminal(bound)) return;
  bound.read = async (buffer, offset, length) => {
    for (;;) {
      await readable(bound);
      const bytesRead = readNow(bound, buffer, offset, length);
      if (bytesRead !== undefined) return { buffer, bytesRead };
    }
  };
}

const isTerminal = (bound: Bound): bound is Terminal => 'poller' in bound;

const readable = ({ poller }: Terminal): Promise<void> =>
  new Promise((resolve, reject) => poller.once('readable', (error) => (error ? reject(error) : resolve())));

/** @returns undefined where there was nothing to read after all */
function readNow({ fd }: Terminal, buffer: Buffer, offset: number, length: number): number | undefined {
  if (fd === null) throw Object.assign(new Error('the port was closed'), { canceled: true });
  const bytesRead = tried(() => readSync(fd, buffer, offset, length, null));
  if (bytesRead === 0) throw new Error('the terminal was hung up');
  return bytesRead;
}

function tried(read: () => number): number | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof Error && 'code' in error && COMES_AGAIN.includes(error.code)) return undefined;
    throw error;
  }
}
