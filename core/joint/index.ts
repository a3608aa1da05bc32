export * from './joint.ts';
