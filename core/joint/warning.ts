import { z } from 'zod';

/** Something that the figures stand in spite of; the reader must know it. */
export const warningSchema = z.strictObject({
  field: z.string().describe('the field of the input that it is about'),
  message: z.string().describe('what is doubtful and why'),
});
export type Warning = z.infer<typeof warningSchema>;
