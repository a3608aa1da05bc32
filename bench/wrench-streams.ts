import { sha256Hex, uuidV8 } from '@clampwright/core/record';
import { linesOf, simulatedOnPty, type WrenchOnPty } from '@clampwright/intake/serial';

/** A wrench that streams, at the far end of a pseudo-terminal of its own. */
export interface StreamingWrench {
  readonly serial: string;
  readonly pty: WrenchOnPty;
}

export const SAMPLES_PER_SECOND = 100;
const TICK_MS = 1000 / SAMPLES_PER_SECOND;
const TARGET_NM = 42;

export const serialOf = (index: number): string => `KH-S${index}`;

/** Real pseudo-terminals, one for each wrench. */
export async function wrenchesOnPtys(count: number): Promise<readonly StreamingWrench[]> {
  const wrenches: StreamingWrench[] = [];
  for (let index = 0; index < count; index++) {
    const pty = await simulatedOnPty();
    if (!pty.ok) throw new Error(JSON.stringify(pty.failure));
    wrenches.push({ serial: serialOf(index), pty: pty.value });
  }
  return wrenches;
}

export const pullId = (run: string, serial: string, number: number): string =>
  uuidV8(sha256Hex(`${run} ${serial} ${number}`));

/** A run-up and a straight line to the target, within 25 degrees; its lines as the simulated wrench sends them. */
export function linesOfPull(run: string, serial: string, number: number, samples: number): readonly string[] {
  const share = Array.from({ length: samples }, (_, i) => i / (samples - 1));
  const angleDeg = share.map((part) => Number((25 * part).toFixed(1)));
  const torqueNm = share.map((part) =>
    Number((part < 0.3 ? 2 : 2 + ((TARGET_NM - 2) * (part - 0.3)) / 0.7).toFixed(1)),
  );
  const timeS = share.map((_, i) => i / SAMPLES_PER_SECOND);
  const pull = {
    trace: { timeS, torqueNm, angleDeg },
    shownTorqueNm: TARGET_NM,
    shownAngleDeg: 25,
    fastestDegPerS: 25,
  };
  const id = pullId(run, serial, number);
  return linesOf(pull, { pull: number, id, takenAt: new Date().toISOString(), serial });
}

export interface Streaming {
  readonly run: string;
  readonly pulls: number;
  /** Each pull lasts so many samples; all wrenches are at different places of theirs. */
  readonly samples: number;
}

/**
 * Lets every wrench send a line each hundredth of a second, the result of a pull in the tick of its last sample.
 *
 * @returns when the last byte of each pull was handed to its terminal, by identity, ms since 1970
 */
export async function streamAll(
  wrenches: readonly StreamingWrench[],
  { run, pulls, samples }: Streaming,
  sent = new Map<string, number>(),
): Promise<ReadonlyMap<string, number>> {
  const ways = wrenches.map(({ serial, pty }, index) => ({
    serial,
    pty,
    from: Math.floor((samples * index) / wrenches.length),
    lines: [''] as readonly string[],
  }));
  const startMs = performance.now();
  for (let tick = 0; tick < (pulls + 1) * samples; tick++) {
    for (const way of ways) {
      const at = tick - way.from;
      const number = Math.floor(at / samples);
      if (at < 0 || number >= pulls) continue;
      if (at % samples === 0) way.lines = linesOfPull(run, way.serial, number, samples);
      const isLast = at % samples === samples - 1;
      if (isLast) sent.set(pullId(run, way.serial, number), now());
      const text = isLast ? way.lines.slice(-2).join('') : (way.lines[at % samples] ?? '');
      void way.pty.sendBytes(Buffer.from(text));
    }
    const dueMs = startMs + (tick + 1) * TICK_MS;
    await until(dueMs);
  }
  return sent;
}

/** By a clock that other processes read too, ms since 1970. */
export const now = (): number => performance.timeOrigin + performance.now();

const until = (dueMs: number): Promise<void> =>
  new Promise((go) => setTimeout(go, Math.max(0, dueMs - performance.now())));
