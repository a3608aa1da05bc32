import { z } from 'zod';
import { percent } from '../shown-figure.ts';
import type { BenchFigure } from './figure.ts';
import type { Scribe } from './scribe.ts';

const givingWaySchema = z.object({
  boltSections: z.array(z.object({ part: z.string(), share: z.number() })),
  partSections: z.array(z.object({ part: z.string(), share: z.number() })),
});

/** Which sections of bolt and parts give way most. */
export function givingWay(output: unknown, { say, value, language }: Scribe): readonly BenchFigure[] {
  const read = givingWaySchema.safeParse(output);
  if (!read.success) return [];
  const parts = (sections: readonly { readonly part: string; readonly share: number }[]) =>
    sections.map(({ part, share }, index) => ({
      name: `${index + 1} ${value(part)}`,
      share,
      text: percent(share, language),
    }));
  return [
    { kind: 'bars', title: say('bolt-sections'), parts: parts(read.data.boltSections) },
    { kind: 'bars', title: say('part-sections'), parts: parts(read.data.partSections) },
  ];
}
