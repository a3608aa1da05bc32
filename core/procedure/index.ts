export { type AimingTool, aimOf, type StepAim } from './aim.ts';
export * from './procedure.ts';
export { readWindow } from './read-window.ts';
export * from './setting.ts';
export * from './step.ts';
export * from './steps.ts';
export * from './torsional-stiffness.ts';
export * from './wind-up.ts';
