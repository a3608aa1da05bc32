import type { Extremes } from './extremes.ts';
import type { Samples } from './samples.ts';

/** What a loosening curve says; torque as a positive figure. */
export interface Loosening {
  /** Torque that broke the fastener away, N·m. */
  readonly breakAway: { readonly index: number; readonly torqueNm: number; readonly angleDeg: number };
  /** Median torque afterwards, N·m. */
  readonly runOutNm: number;
  /** Torque came again and again and went at once: the socket or the bit slipped. */
  readonly slips: number;
}

/** Negative torque that outweighs the positive is loosening. */
export const isLoosening = ({ lowestNm, highestNm }: Pick<Extremes, 'lowestNm' | 'highestNm'>): boolean =>
  -lowestNm > Math.max(0, highestNm);

/** A further peak of this share of the highest, after torque had gone, is a slip. */
const AGAIN = 0.5;
const GONE = 0.2;

/** Break-away torque and angle, and slipping. Never a tightening. */
export function looseningOf({ angleDeg, torqueNm }: Samples): Loosening {
  let highest = 0;
  for (let i = 0; i < torqueNm.length; i++) if (torqueNm[i]! < torqueNm[highest]!) highest = i;
  const peakNm = -torqueNm[highest]!;
  let peaks = 0;
  let armed = true;
  for (let i = 0; i < torqueNm.length; i++) {
    const nm = -torqueNm[i]!;
    if (armed && nm >= AGAIN * peakNm) {
      peaks++;
      armed = false;
    } else if (nm <= GONE * peakNm) armed = true;
  }
  const after = Array.from({ length: torqueNm.length - highest - 1 }, (_, i) => -torqueNm[highest + 1 + i]!);
  after.sort((a, b) => a - b);
  return {
    breakAway: { index: highest, torqueNm: peakNm, angleDeg: angleDeg[highest]! },
    runOutNm: after[after.length >> 1] ?? 0,
    slips: Math.max(0, peaks - 1),
  };
}
