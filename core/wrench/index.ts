export * from './calibration-state.ts';
export * from './uncertainty.ts';
export * from './wrench.ts';
