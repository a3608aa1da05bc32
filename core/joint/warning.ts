import { z } from 'zod';
import { remarkSchema } from '../language/mechanics/remark.ts';

/** Something that the figures stand in spite of; the reader must know it. */
export const warningSchema = remarkSchema.extend({
  field: z.string().describe('the field of the input that it is about'),
});
export type Warning = z.infer<typeof warningSchema>;
