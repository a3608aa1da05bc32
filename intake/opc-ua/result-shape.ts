import { z } from 'zod';
import { engineeringUnitsSchema } from './units.ts';

/*
 * The structures of a result, as far as they are read here. Names as node-opcua gives them: those of the standard with
 * a small first letter. Sources: OPC 40001-101 (ResultDataType), OPC 40450-1, clause 10 (all others).
 */

const figures = z.custom<ArrayLike<number>>((value) => Array.isArray(value) || ArrayBuffer.isView(value));
const listOf = <T extends z.ZodType>(item: T) => z.array(item).nullish();

export const resultValueSchema = z.object({
  measuredValue: z.number(),
  valueTag: z.number().nullish(),
  physicalQuantity: z.number().nullish(),
  engineeringUnits: engineeringUnitsSchema.nullish(),
});
export type ResultValue = z.infer<typeof resultValueSchema>;

const traceContentSchema = z.object({
  values: figures,
  physicalQuantity: z.number().nullish(),
  engineeringUnits: engineeringUnitsSchema.nullish(),
});
export type TraceContent = z.infer<typeof traceContentSchema>;

const stepTraceSchema = z.object({
  numberOfTracePoints: z.number(),
  /** Milliseconds. */
  samplingInterval: z.number().nullish(),
  startTimeOffset: z.number().nullish(),
  stepTraceContent: listOf(traceContentSchema),
});
export type StepTrace = z.infer<typeof stepTraceSchema>;

export const joiningResultSchema = z.object({
  overallResultValues: listOf(resultValueSchema),
  stepResults: listOf(z.object({ stepResultValues: listOf(resultValueSchema) })),
  trace: z.object({ stepTraces: listOf(stepTraceSchema) }).nullish(),
});
export type JoiningResult = z.infer<typeof joiningResultSchema>;

export const metaDataSchema = z.object({
  resultId: z.string().min(1),
  isPartial: z.boolean().nullish(),
  isSimulated: z.boolean().nullish(),
  creationTime: z.date().nullish(),
  processingTimes: z.object({ endTime: z.date().nullish() }).nullish(),
  classification: z.number().nullish(),
  associatedEntities: listOf(z.object({ entityId: z.string().nullish(), entityOriginId: z.string().nullish() })),
});
export type MetaData = z.infer<typeof metaDataSchema>;

/** A result whole: the last of its contents that is one of a joining operation counts. */
export const resultSchema = z.object({
  resultMetaData: metaDataSchema,
  resultContent: listOf(z.object({ value: z.unknown() })),
});
export type Result = z.infer<typeof resultSchema>;

/** PhysicalQuantity (OPC 40450-1, 9.1). */
export const QUANTITY = { time: 1, torque: 2, angle: 3 } as const;
/** ValueTag of the figure that the result ends with (OPC 40450-1, 10.3). */
export const FINAL_TAG = 1;
/** Classification (OPC 40450-1, 10.1): a group of results tells its parts one by one as well. */
export const SINGLE_RESULT = 1;
export const UNDEFINED_RESULT = 0;
