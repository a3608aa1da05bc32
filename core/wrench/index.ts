export { assessTool } from './assess.ts';
export * from './calibration-state.ts';
export { toolNotices } from './notices.ts';
export type { Notice, Objection } from './objection.ts';
export * from './uncertainty.ts';
export * from './wrench.ts';
