export * from './sample-job.ts';
