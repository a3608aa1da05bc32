import { z } from 'zod';
import { directionSchema } from './wrench.ts';

/** One look at a checker before work. Appended, never changed. */
export const beforeUseCheckSchema = z.strictObject({
  id: z.uuid(),
  wrenchId: z.uuid(),
  at: z.iso.datetime({ precision: 3 }),
  by: z.string().trim().min(1).max(200),
  /** The checker, by name and serial number. */
  checker: z.string().trim().min(1).max(200),
  direction: directionSchema,
  /** What the wrench showed or was set to, N·m. */
  indicatedNm: z.number().positive(),
  /** What the checker showed, N·m. */
  referenceNm: z.number().positive(),
  /** Expanded relative uncertainty of the checker, k = 2, percent. */
  expandedUncertaintyPercent: z.number().min(0).max(100).optional(),
});
export type BeforeUseCheck = z.infer<typeof beforeUseCheckSchema>;

/** Deviation of the wrench from the checker, percent of the checker's value (ISO 6789-1:2017). */
export const checkDeviationPercent = ({
  indicatedNm,
  referenceNm,
}: Pick<BeforeUseCheck, 'indicatedNm' | 'referenceNm'>): number => ((indicatedNm - referenceNm) / referenceNm) * 100;
