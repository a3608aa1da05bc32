export { type Catalogue, type Filling, fill, type Key, type Params, placeholders } from './catalogue.ts';
export { sayDate, sayInstant } from './dates.ts';
export { type Fact, sayDerivation } from './derivation.ts';
export { sayFailure } from './failures.ts';
export { sayJointWarning } from './joint-warnings.ts';
export { sayNotice, sayObjection } from './objections.ts';
export { sayReason } from './reasons.ts';
export { catalogue, say } from './say.ts';
export { sayCautions, sayNeed, sayRole, sayStage, sayVerdict } from './words.ts';
