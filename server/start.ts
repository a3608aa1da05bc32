import { randomBytes } from 'node:crypto';
import { setMaxListeners } from 'node:events';
import { invalid, ok, type Result } from '@clampwright/core/failure';
import type { Store } from '@clampwright/store';
import { type Logger, pino } from 'pino';
import { createApp } from './app.ts';
import type { Deps } from './deps.ts';
import { deviceRuns, startDevices } from './devices/device-runs.ts';
import { attempts } from './guard/attempts.ts';
import { isLocalHost } from './guard/local.ts';
import { listen, stopListening } from './listen.ts';
import { watchChanges } from './live/changes.ts';
import { listeners } from './live/listeners.ts';
import { hearing } from './wrenches/hear.ts';
import { wrenchPorts } from './wrenches/ports.ts';
import { resumePorts } from './wrenches/resume.ts';

/** Where it is found unless another port is asked for, or this one is taken. */
export const DEFAULT_PORT = 4700;

export interface ServerOptions {
  /** Stays open when the server closes: whoever opened it closes it. */
  readonly store: Store;
  /** 0: any free one. Left out: the usual one, or a free one if that is taken. */
  readonly port?: number | undefined;
  /** A name of this machine. */
  readonly host?: string | undefined;
  /** Where the built client lies; left out: the API alone. */
  readonly webFolder?: string | undefined;
  readonly logger?: Logger | undefined;
  readonly now?: (() => Date) | undefined;
}

export interface RunningServer {
  readonly url: string;
  readonly port: number;
  /** Ends streams and connected wrenches, then gives the port back. */
  readonly close: () => Promise<void>;
}

/** Serves the workshop on this machine. */
export async function startServer({
  host = '127.0.0.1',
  port,
  webFolder,
  ...options
}: ServerOptions): Promise<Result<RunningServer>> {
  if (!isLocalHost(host)) return invalid('host', `${host} is not this machine`, '127.0.0.1, localhost or [::1]');
  const closing = new AbortController();
  const deps = depsFor(options, closing.signal);
  const app = createApp(deps, webFolder);
  const listening = await listenAt(app.fetch, host, port);
  if (!listening.ok) return listening;
  watchChanges(deps);
  const resumedPorts = await resumePorts(deps);
  const resumed = resumedPorts.ok ? await startDevices(deps) : resumedPorts;
  const close = async (): Promise<void> => {
    closing.abort();
    await deps.devices.close();
    await deps.ports.close();
    await stopListening(listening.value.server);
  };
  if (!resumed.ok) {
    await close();
    return resumed;
  }
  return ok({ url: `http://${host}:${listening.value.port}`, port: listening.value.port, close });
}

/** What the routes rely on, taken from the real world. */
export function depsFor(
  { store, logger = pino({ level: 'warn' }, pino.destination(2)), now = () => new Date() }: Omit<ServerOptions, 'port'>,
  closing: AbortSignal,
): Deps {
  // Every listening screen waits for the end, and there may be many.
  setMaxListeners(0, closing);
  const deps: Deps = {
    store,
    now,
    random: (count) => randomBytes(count),
    attempts: attempts(),
    listeners: listeners(),
    readings: listeners(),
    ports: wrenchPorts((wrench, taken, event) => heard(wrench, taken, event)),
    devices: deviceRuns(() => deps),
    dataFolder: store.folder,
    logger,
    closing,
  };
  const heard = hearing(deps);
  return deps;
}

/** The port that was asked for and no other; without a wish the usual one, and if that is taken a free one. */
async function listenAt(
  fetch: Parameters<typeof listen>[0],
  host: string,
  port: number | undefined,
): ReturnType<typeof listen> {
  const listening = await listen(fetch, host, port ?? DEFAULT_PORT);
  return listening.ok || port !== undefined ? listening : listen(fetch, host, 0);
}
