export * from './workshop.ts';
