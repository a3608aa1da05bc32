export { checkJoint } from './check.ts';
export * from './derivation.ts';
export { type DerivedTarget, deriveTarget, type TargetWanted } from './derive-target.ts';
export * from './joint.ts';
export { type StepShown, stepShownSchema } from './step-shown.ts';
export { type JointWarning, warnJoint } from './warn.ts';
export { type Warning, warningSchema } from './warning.ts';
