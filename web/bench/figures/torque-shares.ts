import { z } from 'zod';
import { percent } from '../shown-figure.ts';
import type { BenchFigure } from './figure.ts';
import type { Scribe } from './scribe.ts';

const sharesSchema = z.object({ shares: z.object({ pitch: z.number(), thread: z.number(), bearing: z.number() }) });

/** Where the torque goes: only the pitch stretches the bolt. */
export function torqueShares(output: unknown, { say, language }: Scribe): readonly BenchFigure[] {
  const read = sharesSchema.safeParse(output);
  if (!read.success) return [];
  const { pitch, thread, bearing } = read.data.shares;
  const part = (name: string, share: number) => ({ name, share, text: percent(share, language) });
  const parts = [
    part(say('share-pitch'), pitch),
    part(say('share-thread'), thread),
    part(say('share-bearing'), bearing),
  ];
  return [{ kind: 'shares', title: say('shares'), parts }];
}
