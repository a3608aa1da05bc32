export * from './procedure.ts';
export * from './step.ts';
