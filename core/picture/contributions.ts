import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import { showShare } from '../quantity/show-quantity.ts';
import type { Scribe } from './scribe.ts';

const contributionsSchema = z.object({
  contributions: z.array(z.object({ quantity: z.string(), share: z.number() })),
});

/** What the uncertainty comes from, the largest first. */
export function contributions(output: unknown, { field, language }: Scribe): readonly Picture[] {
  const read = contributionsSchema.safeParse(output);
  if (!read.success) return [];
  const parts = read.data.contributions
    .filter(({ share }) => share > 0)
    .toSorted((a, b) => b.share - a.share)
    .map(({ quantity, share }) => ({ name: field(quantity), share, text: showShare(share, language) }));
  return parts.length === 0 ? [] : [{ kind: 'bars', title: sayMechanics(language, 'plot.contributions'), parts }];
}
