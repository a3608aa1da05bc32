export { hashPin } from './guard/pin.ts';
export { type FileTaking, takeFile } from './imports/take-file.ts';
export { jobRecord } from './records/job-record.ts';
export { DEFAULT_PORT, type RunningServer, type ServerOptions, startServer } from './start.ts';
