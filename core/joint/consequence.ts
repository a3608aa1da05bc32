import { z } from 'zod';

/** What follows when a joint fails: CC3 high, CC2 medium, CC1 low (EN 1990:2002, annex B, table B.1). */
export const CONSEQUENCE_CLASSES = ['CC3', 'CC2', 'CC1'] as const;
export const consequenceClassSchema = z.enum(CONSEQUENCE_CLASSES);
export type ConsequenceClass = z.infer<typeof consequenceClassSchema>;
