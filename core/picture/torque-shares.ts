import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import { showShare } from '../quantity/show-quantity.ts';
import type { Scribe } from './scribe.ts';

const sharesSchema = z.object({ shares: z.object({ pitch: z.number(), thread: z.number(), bearing: z.number() }) });

/** Where the torque goes: only the pitch stretches the bolt. */
export function torqueShares(output: unknown, { language }: Pick<Scribe, 'language'>): readonly Picture[] {
  const read = sharesSchema.safeParse(output);
  if (!read.success) return [];
  const { pitch, thread, bearing } = read.data.shares;
  const part = (name: string, share: number) => ({ name, share, text: showShare(share, language) });
  const parts = [
    part(sayMechanics(language, 'plot.share-pitch'), pitch),
    part(sayMechanics(language, 'plot.share-thread'), thread),
    part(sayMechanics(language, 'plot.share-bearing'), bearing),
  ];
  return [{ kind: 'shares', title: sayMechanics(language, 'plot.shares'), parts }];
}
