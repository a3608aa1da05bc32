export * from './procedure.ts';
export * from './setting.ts';
export * from './step.ts';
export * from './steps.ts';
export * from './wind-up.ts';
export { type AimingTool, aimOf, type StepAim } from './aim.ts';
