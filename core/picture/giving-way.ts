import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import { showShare } from '../quantity/show-quantity.ts';
import type { Scribe } from './scribe.ts';

const givingWaySchema = z.object({
  boltSections: z.array(z.object({ part: z.string(), share: z.number() })),
  partSections: z.array(z.object({ part: z.string(), share: z.number() })),
});

/** Which sections of bolt and parts give way most. */
export function givingWay(output: unknown, { value, language }: Scribe): readonly Picture[] {
  const read = givingWaySchema.safeParse(output);
  if (!read.success) return [];
  const parts = (sections: readonly { readonly part: string; readonly share: number }[]) =>
    sections.map(({ part, share }, index) => ({
      name: `${index + 1} ${value(part)}`,
      share,
      text: showShare(share, language),
    }));
  return [
    { kind: 'bars', title: sayMechanics(language, 'plot.bolt-sections'), parts: parts(read.data.boltSections) },
    { kind: 'bars', title: sayMechanics(language, 'plot.part-sections'), parts: parts(read.data.partSections) },
  ];
}
