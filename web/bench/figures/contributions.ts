import { z } from 'zod';
import { percent } from '../shown-figure.ts';
import type { BenchFigure } from './figure.ts';
import type { Scribe } from './scribe.ts';

const contributionsSchema = z.object({
  contributions: z.array(z.object({ quantity: z.string(), share: z.number() })),
});

/** What the uncertainty comes from, the largest first. */
export function contributions(output: unknown, { say, field, language }: Scribe): readonly BenchFigure[] {
  const read = contributionsSchema.safeParse(output);
  if (!read.success) return [];
  const parts = read.data.contributions
    .filter(({ share }) => share > 0)
    .toSorted((a, b) => b.share - a.share)
    .map(({ quantity, share }) => ({ name: field(quantity), share, text: percent(share, language) }));
  return parts.length === 0 ? [] : [{ kind: 'bars', title: say('contributions'), parts }];
}
