import { setTimeout as pause } from 'node:timers/promises';
import { residentMb } from './resident.ts';
import type { BenchResult } from './result.ts';
import { type StreamingWorkshop, streamingWorkshop } from './streaming-workshop.ts';
import { linesOfPull, SAMPLES_PER_SECOND, type StreamingWrench, wrenchesOnPtys } from './wrench-streams.ts';

/** A pull of 6 s, again and again. */
const SAMPLES = 6 * SAMPLES_PER_SECOND;
const PULLS_AN_HOUR = 600;
const HOURS = 4;
const LOOKS_AN_HOUR = 10;
/** Each gives the wrench 200 positions. */
const STAGES = (HOURS * PULLS_AN_HOUR) / 200;
/** A heap that grows by less of itself in an hour, in which an open job got 600 pulls more to remember, is flat. */
const FLAT = 0.01;

/** What the server held at one moment. */
interface Look {
  readonly hour: number;
  readonly heapMb: number;
  readonly residentMb: number;
}

/** What the server holds over some hours of a stream, replayed as fast as it takes them. */
export async function run(): Promise<readonly BenchResult[]> {
  const wrenches = await wrenchesOnPtys(1);
  const workshop = await streamingWorkshop(wrenches, STAGES);
  const startMs = performance.now();
  const looks: Look[] = [];
  for (let look = 0; look <= HOURS * LOOKS_AN_HOUR; look++) {
    const hour = look / LOOKS_AN_HOUR;
    await replayUntil(workshop, wrenches, Math.round(hour * PULLS_AN_HOUR));
    looks.push({ hour, heapMb: await workshop.heapMb(), residentMb: residentMb(workshop.pid) });
  }
  const tookS = (performance.now() - startMs) / 1000;
  const { taken, wrong } = await workshop.told();
  await workshop.end();
  for (const { pty } of wrenches) await pty.close();
  const pulls = `${taken} pulls of ${SAMPLES} samples with their traces stored in ${tookS.toFixed(0)} s, ${wrong} lines or pulls refused`;
  return [...Array(HOURS).keys()].map((hour) => overHour(looks, hour, pulls));
}

function overHour(looks: readonly Look[], from: number, pulls: string): BenchResult {
  const within = looks.filter(({ hour }) => hour >= from && hour <= from + 1);
  const slopeMb = slopeOf(within);
  const [begin = Number.NaN] = within.map(({ heapMb }) => heapMb);
  const list = (of: (look: Look) => number, digits: number) =>
    within.map((look) => of(look).toFixed(digits)).join(', ');
  return {
    name: `heap over hour ${from + 1} of a stream`,
    ours: begin + slopeMb,
    peer: begin,
    unit: 'MB',
    ratio: (begin + slopeMb) / begin,
    note: `${slopeMb < FLAT * begin ? 'Flat' : 'Not flat'}: by the line of least squares it grows by ${(1024 * slopeMb).toFixed(0)} kB an hour, ${((1024 * slopeMb) / PULLS_AN_HOUR).toFixed(2)} kB a pull. Peer: the same heap when the hour begins. After forced collections, MB: ${list(({ heapMb }) => heapMb, 2)}; resident: ${list(({ residentMb: mb }) => mb, 0)}. In ${HOURS} hours ${pulls}.`,
  };
}

/** MB an hour, line of least squares. */
function slopeOf(looks: readonly Look[]): number {
  const mean = (of: (look: Look) => number): number => looks.reduce((sum, look) => sum + of(look), 0) / looks.length;
  const [middle, level] = [mean(({ hour }) => hour), mean(({ heapMb }) => heapMb)];
  const together = looks.reduce((sum, { hour, heapMb }) => sum + (hour - middle) * (heapMb - level), 0);
  return together / looks.reduce((sum, { hour }) => sum + (hour - middle) ** 2, 0);
}

const sent = { pulls: 0 };

async function replayUntil(workshop: StreamingWorkshop, wrenches: readonly StreamingWrench[], pulls: number) {
  const from = sent.pulls;
  sent.pulls = pulls;
  const replay = async ({ serial, pty }: StreamingWrench): Promise<void> => {
    for (let number = from; number < pulls; number++)
      await pty.sendBytes(Buffer.from(linesOfPull('hour', serial, number, SAMPLES).join('')));
  };
  await Promise.all(wrenches.map(replay));
  for (;;) {
    const { taken, wrong } = await workshop.told();
    if (taken + wrong >= wrenches.length * pulls) return;
    await pause(100);
  }
}
