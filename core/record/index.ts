export { canonical } from './canonical.ts';
export type { FoldOptions } from './cell.ts';
export {
  type CertificateHand,
  type Certified,
  type CertifiedRun,
  certificateDocument,
} from './certificate-document.ts';
export { type ChainHead, chain, headAfter, type Link, links, startOfChain } from './chain.ts';
export { type ClosingRound, closingRounds, isLeftOut, isUnsettled } from './closing.ts';
export * from './command.ts';
export { decide } from './decide.ts';
export type { DecisionContext } from './decision-context.ts';
export { digestOf, type Sha256, sha256Hex } from './digest.ts';
export * from './document.ts';
export { sayTyped } from './document-limits.ts';
export * from './entry.ts';
export { exportRecord, recordFile, recordText } from './export.ts';
export * from './file.ts';
export { findCell, fold, foldOn } from './fold.ts';
export { uuidV7, uuidV8 } from './identity.ts';
export { openJob } from './open.ts';
export { plotCaption, plotTable } from './plot-table.ts';
export { type PredictedForces, predictedForces } from './predicted-forces.ts';
export { type RecallShown, recallDocument } from './recall-document.ts';
export { recordDocument } from './record-document.ts';
export { keyFingerprint, publicKeyOf, sealChain, sealHolds } from './seal.ts';
export type { Attempt, CellState, JobState, JointState, Need } from './state.ts';

export { acceptedFigures, expectedOf } from './trace-evidence.ts';
export { type GroundCurve, groundCurve, type ShownTrace, shownTrace } from './trace-shown.ts';
export { type RecordFault, type Verification, verifyRecord } from './verify.ts';
