export { assessTool, sayObjection } from './assess.ts';
export * from './calibration-state.ts';
export { sayNotice, toolNotices } from './notices.ts';
export type { Notice, Objection } from './objection.ts';
export * from './uncertainty.ts';
export * from './wrench.ts';
