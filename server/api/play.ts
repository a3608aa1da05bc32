import { setTimeout as pause } from 'node:timers/promises';
import type { Trace } from '@clampwright/core/record';
import type { Deps } from '../deps.ts';

const FRAME_MS = 50;
const LONGEST_MS = 2000;

/** A trace with the angle as the display counts it. */
type Shown = Readonly<Record<keyof Trace, readonly number[]>>;

/** Shows a pull while it is being made to whoever looks at the job, in its own time but no longer than two seconds. */
export async function play(
  { listeners, closing }: Deps,
  jobId: string,
  jointRef: string,
  { timeS, torqueNm, angleDeg }: Shown,
): Promise<void> {
  const lastMs = 1000 * (timeS.at(-1) ?? 0);
  const frames = Math.ceil(Math.min(lastMs, LONGEST_MS) / FRAME_MS);
  for (let frame = 1; frame <= frames && listeners.isHeard(jobId) && !closing.aborted; frame++) {
    const sample = Math.min(timeS.length - 1, Math.floor((frame / frames) * (timeS.length - 1)));
    listeners.tell(jobId, {
      kind: 'torque',
      jointRef,
      torqueNm: torqueNm[sample] ?? 0,
      angleDeg: angleDeg[sample] ?? 0,
    });
    await pause(FRAME_MS);
  }
}
