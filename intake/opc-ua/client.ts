import { setTimeout } from 'node:timers/promises';
import type { OpcUaWay } from '@clampwright/core/device';
import { type Connected, connect, type NotConnected } from './connect.ts';
import type { ResultTaker } from './event.ts';
import { listenTo } from './listen.ts';

export interface OpcUaOptions {
  /** Where our certificate, its key and the trusted ones lie. */
  readonly folder: string;
  /** Pauses between attempts double from the first to the longest, ms. */
  readonly firstPauseMs?: number;
  readonly longestPauseMs?: number;
}

export interface JoiningSystemClient {
  /** Ends the connection and every further attempt at it, once what has arrived is dealt with. */
  readonly close: () => Promise<void>;
}

/**
 * Listens to the joining systems of an OPC UA server. A connection that is not to be had, or breaks, is tried again
 * after growing pauses; then the results that were missed are asked for.
 *
 * @source OPC 40450-1 (joining systems), OPC 40451-1 (tightening systems)
 */
export function openJoiningSystem(settings: OpcUaWay, taker: ResultTaker, options: OpcUaOptions): JoiningSystemClient {
  const { folder, firstPauseMs = 500, longestPauseMs = 30_000 } = options;
  const known = new Set<string>();
  const closing = new AbortController();

  const life = async (): Promise<void> => {
    let pauseMs = firstPauseMs;
    let told: string | undefined;
    while (!closing.signal.aborted) {
      const ended = await oneConnection(settings, folder, known, taker, closing.signal, () => {
        pauseMs = firstPauseMs;
        told = undefined;
      });
      if (closing.signal.aborted) return;
      if (ended.detail !== told) taker.tell({ kind: 'lost', ...ended });
      told = ended.detail;
      await pause(pauseMs, closing.signal);
      pauseMs = Math.min(2 * pauseMs, longestPauseMs);
    }
  };
  const lived = life();
  return {
    close: async () => {
      closing.abort();
      await lived;
    },
  };
}

const NO_SYSTEM = 'The server has no joining system (OPC 40450-1). Look at the address.';
const BROKEN = 'The connection broke.';

/** From connecting until either side ends it; tells why. */
async function oneConnection(
  settings: OpcUaWay,
  folder: string,
  known: Set<string>,
  taker: ResultTaker,
  closing: AbortSignal,
  connected: () => void,
): Promise<NotConnected> {
  const made = await connect(settings, folder, closing);
  if (!made.ok) return made.why;
  const { client, session } = made.value;
  const ended = endOf(made.value, closing);
  try {
    const listening = await Promise.race([listenTo(session, settings.endpointUrl, known, taker), ended]);
    if (!listening) return { detail: closing.aborted ? '' : (await isEnded(ended)) ? BROKEN : NO_SYSTEM };
    connected();
    taker.tell({ kind: 'connected', systems: listening.systems.map(({ name }) => name) });
    await ended;
    await listening.settled();
    return { detail: BROKEN };
  } catch (error) {
    return { detail: error instanceof Error ? error.message : String(error) };
  } finally {
    await session.close().catch(() => undefined);
    await client.disconnect();
  }
}

/** Done once the connection is gone, or is to be ended. */
function endOf({ client, session }: Connected, closing: AbortSignal): Promise<undefined> {
  const over = new AbortController();
  return new Promise((resolve) => {
    const end = (): void => {
      over.abort();
      resolve(undefined);
    };
    client.once('connection_lost', end);
    client.once('close', end);
    session.once('session_closed', end);
    closing.addEventListener('abort', end, { signal: over.signal });
    // It may have been ended while it was still connecting.
    if (closing.aborted) end();
  });
}

const isEnded = (ended: Promise<undefined>): Promise<boolean> =>
  Promise.race([ended.then(() => true), Promise.resolve().then(() => false)]);

const pause = (ms: number, closing: AbortSignal): Promise<void> =>
  setTimeout(ms, undefined, { signal: closing }).catch(() => undefined);
