export type { Outcome, Refusal } from './api/problem.ts';
export { hashPin } from './guard/pin.ts';
export { type FileTaken, type FileTaking, takeFile } from './imports/take-file.ts';
export { recordFileName } from './records/file-name.ts';
export { jobRecord } from './records/job-record.ts';
export { DEFAULT_PORT, type RunningServer, type ServerOptions, startServer } from './start.ts';
