export { type JoiningSystemClient, type OpcUaOptions, openJoiningSystem } from './client.ts';
export type { JoiningSystemEvent, ResultTaker } from './event.ts';
