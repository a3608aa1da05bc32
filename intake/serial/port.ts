import { type LineDescription, type LineEvent, lineReader, OWN_LINES } from '@clampwright/core/line';
import { SerialPort } from 'serialport';
import { readTerminal } from './terminal-reads.ts';

/** What comes from a wrench on a serial port, besides its lines how the connection stands. */
export type SerialEvent =
  | LineEvent
  | { readonly kind: 'connected' }
  | { readonly kind: 'lost'; readonly detail: string };

export interface SerialWrench {
  /** Leaves what comes with the operating system until `resume`, so that a flood fills no memory here. */
  readonly pause: () => void;
  readonly resume: () => void;
  /** Ends the connection and every further attempt at it. */
  readonly close: () => Promise<void>;
}

export interface SerialOptions {
  readonly baudRate?: number;
  /** How the lines are read; left out: as the simulated wrench sends them. */
  readonly lines?: LineDescription;
  /** Names the device in the identities of pulls. */
  readonly origin?: string;
  /** Pauses between attempts double from the first to the longest, ms. */
  readonly firstPauseMs?: number;
  readonly longestPauseMs?: number;
}

/**
 * Listens to a wrench. A port that is not there, or goes away, is tried again after growing pauses.
 *
 * @param path    such as `/dev/ttyUSB0` or `COM3`
 * @param onEvent called for each event in the order of arrival; `lost` once for a loss, and again when the reason changes
 */
export function openSerial(
  path: string,
  onEvent: (event: SerialEvent) => void,
  options: SerialOptions = {},
): SerialWrench {
  const { baudRate = 115_200, firstPauseMs = 250, longestPauseMs = 10_000, lines = OWN_LINES, origin = path } = options;
  const reader = lineReader(lines, origin);
  const tellAll = (events: readonly LineEvent[]): void => events.forEach(onEvent);
  const silence = silenceAfter(lines, () => tellAll(reader.fallSilent()));
  let closed = false;
  let paused = false;
  let pauseMs = firstPauseMs;
  let toldDetail: string | undefined;
  let retry: NodeJS.Timeout | undefined;
  let connection = connect();

  function connect(): Connection {
    return connectTo(path, baudRate, {
      opened: (port) => {
        toldDetail = undefined;
        if (paused) port.pause();
        onEvent({ kind: 'connected' });
      },
      bytes: (chunk) => {
        if (closed) return;
        pauseMs = firstPauseMs;
        tellAll(reader.take(latin1(chunk)));
        silence.begin();
      },
      ended: (detail) => {
        silence.end();
        if (closed) return;
        tellAll(reader.breakOff());
        if (detail !== toldDetail) onEvent({ kind: 'lost', detail });
        toldDetail = detail;
        retry = setTimeout(() => {
          connection = connect();
        }, pauseMs);
        pauseMs = Math.min(2 * pauseMs, longestPauseMs);
      },
    });
  }

  return {
    pause: () => {
      paused = true;
      connection.port.pause();
    },
    resume: () => {
      paused = false;
      connection.port.resume();
    },
    close: () => {
      closed = true;
      clearTimeout(retry);
      return connection.close();
    },
  };
}

const latin1 = (chunk: Uint8Array): string =>
  Buffer.from(chunk.buffer, chunk.byteOffset, chunk.byteLength).toString('latin1');

/** Watches for the silence that ends a pull, where the description says that one does. */
function silenceAfter({ endOfPull }: LineDescription, fell: () => void) {
  let timer: NodeJS.Timeout | undefined;
  const end = (): void => clearTimeout(timer);
  const begin = (): void => {
    if (endOfPull.by !== 'silence') return;
    end();
    timer = setTimeout(fell, 1000 * endOfPull.seconds);
  };
  return { begin, end };
}

interface Connection {
  readonly port: SerialPort;
  readonly close: () => Promise<void>;
}

interface Heard {
  readonly opened: (port: SerialPort) => void;
  readonly bytes: (chunk: Uint8Array) => void;
  /** Once for each connection, also for one that never opened. */
  readonly ended: (detail: string) => void;
}

/** One life of a port. */
function connectTo(path: string, baudRate: number, heard: Heard): Connection {
  const port = new SerialPort({ path, baudRate, autoOpen: false });
  let closing = false;
  const ending = new Promise<string>((end) => {
    port.on('close', (error: Error | null) => end(error?.message ?? 'the port was closed'));
    port.on('error', (error) => end(error.message));
    port.open((error) => {
      if (error) return end(error.message);
      if (closing) return port.close();
      heard.opened(port);
    });
  });
  port.once('open', () => readTerminal(port));
  port.on('data', heard.bytes);
  void ending.then(heard.ended);
  return {
    port,
    close: async () => {
      closing = true;
      if (port.isOpen) port.close();
      await ending;
    },
  };
}
