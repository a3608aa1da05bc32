import { newOwnRowSchema, ownRowSchema } from '@clampwright/core/fastener';
import { jointContentSchema, jointRevisionSchema } from '@clampwright/core/joint';
import { layoutSchema } from '@clampwright/core/layout';
import { stageSchema } from '@clampwright/core/procedure';
import {
  assetSchema,
  commandSchema,
  entrySchema,
  jobSheetSchema,
  judgementSchema,
  personRefSchema,
  pullSchema,
  recordFileSchema,
  sealSchema,
  traceSchema,
} from '@clampwright/core/record';
import {
  adapterSchema,
  beforeUseCheckSchema,
  calibrationSchema,
  calibrationSummarySchema,
  extensionSchema,
  recallSchema,
  recheckSchema,
  referenceStandardSchema,
  toolSchema,
  wrenchSchema,
} from '@clampwright/core/wrench';
import type { z } from 'zod';
import * as contract from './contract.ts';

/** Shapes that stand under a name of their own in the OpenAPI document. */
export const NAMED_SHAPES: Readonly<Record<string, z.ZodType>> = {
  Adapter: adapterSchema,
  Asset: assetSchema,
  BeforeUseCheck: beforeUseCheckSchema,
  Calibration: calibrationSchema,
  CalibrationSummary: calibrationSummarySchema,
  Command: commandSchema,
  CommandResult: contract.commandResultSchema,
  Entry: entrySchema,
  Extension: extensionSchema,
  ImportResult: contract.importResultSchema,
  Job: contract.jobSchema,
  JobListItem: contract.jobListItemSchema,
  JobSheet: jobSheetSchema,
  JointContent: jointContentSchema,
  JointHistory: contract.jointHistorySchema,
  JointListItem: contract.jointListItemSchema,
  JointRevision: jointRevisionSchema,
  Judgement: judgementSchema,
  Layout: layoutSchema,
  LiveEvent: contract.liveEventSchema,
  NewJob: contract.newJobSchema,
  NewOwnRow: newOwnRowSchema,
  NewPerson: contract.newPersonSchema,
  OwnRow: ownRowSchema,
  Person: contract.personSchema,
  PersonRef: personRefSchema,
  Problem: contract.problemSchema,
  Pull: pullSchema,
  RecordFile: recordFileSchema,
  Recall: recallSchema,
  Recheck: recheckSchema,
  ReferenceStandard: referenceStandardSchema,
  Seal: sealSchema,
  Session: contract.sessionSchema,
  Stage: stageSchema,
  Today: contract.todaySchema,
  Tool: toolSchema,
  Toolbox: contract.toolboxSchema,
  Trace: traceSchema,
  Wrench: wrenchSchema,
};
