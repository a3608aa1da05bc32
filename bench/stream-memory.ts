import { setTimeout as pause } from 'node:timers/promises';
import { residentMb } from './resident.ts';
import type { BenchResult } from './result.ts';
import { type StreamingWorkshop, streamingWorkshop } from './streaming-workshop.ts';
import { linesOfPull, SAMPLES_PER_SECOND, type StreamingWrench, wrenchesOnPtys } from './wrench-streams.ts';

const WRENCHES = 1;
/** A pull of 6 s, again and again for an hour. */
const PULLS = 600;
const SAMPLES = 6 * SAMPLES_PER_SECOND;
const STAGES = 3;

/** Resident memory of the server while an hour's worth of streams is replayed as fast as it takes them. */
export async function run(): Promise<readonly BenchResult[]> {
  const wrenches = await wrenchesOnPtys(WRENCHES);
  const workshop = await streamingWorkshop(wrenches, STAGES);
  const startMs = performance.now();
  const seenMb: number[] = [];
  for (const share of [0, 0.1, 0.25, 0.5, 0.75, 1]) {
    await replayUntil(workshop, wrenches, Math.round(share * PULLS));
    seenMb.push(residentMb(workshop.pid));
  }
  const tookS = (performance.now() - startMs) / 1000;
  const { taken, wrong } = await workshop.told();
  await workshop.end();
  for (const { pty } of wrenches) await pty.close();
  const [, tenth = 0] = seenMb;
  const end = seenMb.at(-1) ?? 0;
  return [
    {
      name: `memory over an hour of a stream`,
      ours: end,
      peer: tenth,
      unit: 'MB',
      ratio: end / tenth,
      note: `Peer: the same server after a tenth of it. At the start and after 10, 25, 50, 75 and 100 %: ${seenMb.map((mb) => mb.toFixed(0)).join(', ')} MB. ${(WRENCHES * PULLS * SAMPLES).toLocaleString('en')} samples in ${tookS.toFixed(0)} s; ${taken} pulls with traces stored, ${wrong} lines or pulls refused.`,
    },
  ];
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
    if (taken + wrong >= WRENCHES * pulls) return;
    await pause(100);
  }
}
