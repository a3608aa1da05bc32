export { type FastenerState, looseFastener, tightenedFastener } from './fastener.ts';
export { FAULTS, type Fault } from './fault.ts';
export type { Aim, HandModel, JointModel, SimulatedModel, WrenchModel } from './model.ts';
export { modelFor } from './model-for.ts';
export { type PullTask, type SimulatedPull, simulatePull } from './pull.ts';
