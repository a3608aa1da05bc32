import { z } from 'zod';

export const jobParams = z.object({ id: z.uuid().describe('identity of the job') });
