import { SerialPort } from 'serialport';
import { type LineEvent, READER_START, readLines } from './reader.ts';

/** What comes from a wrench on a serial port, besides its lines how the connection stands. */
export type SerialEvent =
  | LineEvent
  | { readonly kind: 'connected' }
  | { readonly kind: 'lost'; readonly detail: string };

export interface SerialWrench {
  /** Ends the connection and every further attempt at it. */
  readonly close: () => Promise<void>;
}

export interface SerialOptions {
  readonly baudRate?: number;
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
  const { baudRate = 115_200, firstPauseMs = 250, longestPauseMs = 10_000 } = options;
  let closed = false;
  let pauseMs = firstPauseMs;
  let toldDetail: string | undefined;
  let retry: NodeJS.Timeout | undefined;
  let connection = connect();

  function connect(): Connection {
    let reader = READER_START;
    return connectTo(path, baudRate, {
      opened: () => {
        toldDetail = undefined;
        onEvent({ kind: 'connected' });
      },
      bytes: (chunk) => {
        if (closed) return;
        pauseMs = firstPauseMs;
        const read = readLines(reader, chunk);
        reader = read.state;
        for (const event of read.events) onEvent(event);
      },
      ended: (detail) => {
        if (closed) return;
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
    close: () => {
      closed = true;
      clearTimeout(retry);
      return connection.close();
    },
  };
}

interface Connection {
  readonly close: () => Promise<void>;
}

interface Heard {
  readonly opened: () => void;
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
      heard.opened();
    });
  });
  port.on('data', heard.bytes);
  void ending.then(heard.ended);
  return {
    close: async () => {
      closing = true;
      if (port.isOpen) port.close();
      await ending;
    },
  };
}
