import { type ChildProcess, spawn } from 'node:child_process';
import { constants, type FileHandle, open, writeFile } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import { failed, invalid, ok, type Result } from '@clampwright/core/failure';
import type { SimulatedPull } from '../simulated/index.ts';
import { linesOf, type PullStamp } from './write.ts';

export type Pace = 'at-once' | 'live';

/** The simulated wrench at the far end of a pseudo-terminal. */
export interface WrenchOnPty {
  /** What `openSerial` is to open. */
  readonly path: string;
  /** Sends a pull; `live`: each sample at its own time, as a hand would make it. */
  readonly send: (pull: SimulatedPull, stamp: PullStamp, pace: Pace) => Promise<Result<void>>;
  /** Sends any bytes, for what a bad cable or another device may say. */
  readonly sendBytes: (bytes: Uint8Array) => Promise<Result<void>>;
  /** Ends the pair of terminals: to the reader the wrench is unplugged. */
  readonly close: () => Promise<void>;
}

export interface PtyOptions {
  /** Name under which the reader's end stays to be found when the pair is made anew. */
  readonly link?: string;
  /** The program that makes the pair. */
  readonly socat?: string;
}

const REMEDY = 'Install it (Debian: apt-get install socat), or use the simulated wrench in process.';

/**
 * Puts the simulated wrench behind a real pseudo-terminal: `socat` makes a pair of them and passes bytes across.
 *
 * @returns refused when `socat` is missing or does not make the pair
 */
export async function simulatedOnPty({ link, socat = 'socat' }: PtyOptions = {}): Promise<Result<WrenchOnPty>> {
  if (link !== undefined && !/^[\w./-]+$/.test(link))
    return invalid('link', 'The name holds other characters.', 'letters, digits, . / - _');
  const readerEnd = `pty,raw,echo=0${link === undefined ? '' : `,link=${link}`}`;
  const child = spawn(socat, ['-d', '-d', 'pty,raw,echo=0', readerEnd], { stdio: ['ignore', 'ignore', 'pipe'] });
  const end = () => child.kill();
  process.once('exit', end);
  const gone = new Promise<void>((resolve) => child.once('close', () => resolve()));
  void gone.then(() => process.off('exit', end));
  const paths = await terminalsOf(child, socat);
  if (!paths.ok) {
    end();
    return paths;
  }
  const [wrenchPath, readerPath] = paths.value;
  const wrench = await open(wrenchPath, constants.O_WRONLY | constants.O_NOCTTY);
  return ok({
    path: link ?? readerPath,
    send: (pull, stamp, pace) => send(wrench, pull, stamp, pace),
    sendBytes: (bytes) => write(wrench, bytes),
    close: async () => {
      end();
      await gone;
      await wrench.close();
    },
  });
}

const REMEDY_GONE = 'The simulated wrench was closed; put it on a new terminal.';

/** Waits until `socat` has told the names of both terminals. */
function terminalsOf(child: ChildProcess, program: string): Promise<Result<readonly [string, string]>> {
  return new Promise((resolve) => {
    let said = '';
    const refuse = (message: string) => resolve(failed({ kind: 'unavailable', message, remedy: REMEDY }));
    child.once('error', (error) =>
      refuse(`The program socat, which makes pseudo-terminals, could not be started: ${error.message}.`),
    );
    child.once('close', () =>
      refuse(`${program} ended before it made the pair of terminals: ${said.trim().slice(-200)}`),
    );
    child.stderr?.on('data', (chunk: Buffer) => {
      said = (said + chunk.toString('utf8')).slice(-10_000);
      const [first, second] = [...said.matchAll(/PTY is (\S+)\n/g)].map((match) => match[1]);
      if (first && second) resolve(ok([first, second]));
    });
  });
}

const BATCH_S = 0.05;

async function send(wrench: FileHandle, pull: SimulatedPull, stamp: PullStamp, pace: Pace): Promise<Result<void>> {
  const lines = linesOf(pull, stamp);
  if (pace === 'at-once') return write(wrench, Buffer.from(lines.join('')));
  const { timeS } = pull.trace;
  let sent = 0;
  for (let dueS = BATCH_S; sent < timeS.length; dueS += BATCH_S) {
    const from = sent;
    while (sent < timeS.length && timeS[sent]! < dueS) sent++;
    const written = await write(wrench, Buffer.from(lines.slice(from, sent).join('')));
    if (!written.ok) return written;
    await pause(1000 * BATCH_S);
  }
  return write(wrench, Buffer.from(lines.slice(sent).join('')));
}

/** A terminal takes a few kilobytes at a time; what is left over is offered again. */
async function write(wrench: FileHandle, bytes: Uint8Array): Promise<Result<void>> {
  try {
    await writeFile(wrench, bytes);
    return ok(undefined);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return failed({ kind: 'unavailable', message: `The terminal takes no more: ${message}`, remedy: REMEDY_GONE });
  }
}
