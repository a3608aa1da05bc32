export * from './wrench.ts';
