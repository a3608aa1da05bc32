export { checkJoint } from './check.ts';
export * from './joint.ts';
